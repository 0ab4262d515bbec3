import type { Problem } from "../domain/result.ts";
import type { LocaleEntry } from "./locale-entries.ts";

/** What every other language is held against. */
export interface English {
  /** Messages of the chat by key. */
  readonly chat: ReadonlyMap<string, LocaleEntry>;
  /** Words of the knowledge by key. */
  readonly words: ReadonlyMap<string, { readonly text: string; readonly digest: string }>;
}

export interface Translation {
  readonly language: string;
  readonly chat: readonly LocaleEntry[];
  readonly words: readonly LocaleEntry[];
  /** Whether there is a file with words of the knowledge at all. */
  readonly hasWords: boolean;
}

export interface Comparison {
  readonly missing: number;
  readonly stale: number;
  readonly problems: readonly Problem[];
}

/** Holds a translation against its English; terms are each language's own affair. */
export function compareWithEnglish(english: English, translation: Translation): Comparison {
  const chat = withoutTerms(translation.chat);
  const words = withoutTerms(translation.words);
  const missingInChat = missingChat(english, chat, translation.language);
  const pairs = [
    ...chat.map((entry) => ({ entry, digest: english.chat.get(entry.key)?.digest })),
    ...words.map((entry) => ({ entry, digest: english.words.get(entry.key)?.digest })),
  ];
  const stale = pairs.flatMap(({ entry, digest }) =>
    digest === undefined || digest === entry.madeFrom ? [] : [staleProblem(entry, digest)],
  );
  const extra = pairs.flatMap(({ entry, digest }) =>
    digest === undefined ? [at(entry, "English has no such text; remove it or mend its key.")] : [],
  );
  const lacking = english.words.size - words.filter(({ key }) => english.words.has(key)).length;
  return {
    missing: missingInChat.length + lacking,
    stale: stale.length,
    problems: [
      ...missingInChat,
      ...missingWords(english, words, translation),
      ...extra,
      ...stale,
      ...chat.flatMap((entry) => variableProblems(entry, english.chat.get(entry.key))),
      ...words.flatMap((entry) => plainProblems(entry)),
    ],
  };
}

function withoutTerms(entries: readonly LocaleEntry[]): LocaleEntry[] {
  return entries.filter(({ key }) => !key.startsWith("-"));
}

function at({ file, line, key }: LocaleEntry, says: string): Problem {
  return { file, line, at: key, says };
}

function missingChat(english: English, chat: readonly LocaleEntry[], language: string): Problem[] {
  const there = new Set(chat.map(({ key }) => key));
  return [...english.chat.values()]
    .filter(({ key }) => !key.startsWith("-") && !there.has(key))
    .map(({ key, file, digest }) => ({
      file: file.replace("locales/en/", `locales/${language}/`),
      at: key,
      says: `"${key}" is missing. Add it below a line "# en: ${digest}".`,
    }));
}

function missingWords(
  english: English,
  words: readonly LocaleEntry[],
  { language, hasWords }: Translation,
): Problem[] {
  const file = `locales/${language}/knowledge.ftl`;
  if (!hasWords) {
    const says = `The words of the knowledge are missing: ${english.words.size} texts.`;
    return english.words.size === 0 ? [] : [{ file, says }];
  }
  const there = new Set(words.map(({ key }) => key));
  return [...english.words]
    .filter(([key]) => !there.has(key))
    .map(([key, { text, digest }]) => ({
      file,
      at: key,
      says: `"${key}" is missing ("${text}"). Add it below a line "# en: ${digest}".`,
    }));
}

function staleProblem(entry: LocaleEntry, digest: string): Problem {
  const why =
    entry.madeFrom === null
      ? "nothing says which English text this was made from"
      : "the English text has changed since this was translated";
  return at(entry, `Compare it with the English: ${why}. Then write "# en: ${digest}" above it.`);
}

function variableProblems(entry: LocaleEntry, english: LocaleEntry | undefined): Problem[] {
  if (english === undefined) return [];
  const problems: Problem[] = [];
  for (const name of english.variables) {
    if (!entry.variables.has(name)) problems.push(at(entry, `It leaves out { $${name} }.`));
  }
  for (const name of entry.variables) {
    if (!english.variables.has(name)) {
      problems.push(at(entry, `It uses { $${name} }, which the English does not have.`));
    }
  }
  for (const [name, forms] of english.forms) {
    const own = entry.forms.get(name) ?? new Set();
    const lacks = [...forms].filter((form) => !own.has(form));
    if (entry.variables.has(name) && lacks.length > 0) {
      problems.push(at(entry, `Its forms for { $${name} } lack [${lacks.join("], [")}].`));
    }
  }
  return problems;
}

/** Words of the knowledge stand for themselves: nobody gives them variables. */
function plainProblems(entry: LocaleEntry): Problem[] {
  if (entry.plain !== null) return [];
  return [at(entry, "A word of the knowledge is plain text; it takes no variables or forms.")];
}
