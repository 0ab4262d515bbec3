import type { Knowledge } from "../domain/knowledge.ts";
import type { Problem } from "../domain/result.ts";
import { compareWithEnglish, type English } from "./locale-compare.ts";
import { type LocaleEntry, readLocaleFile, textDigest } from "./locale-entries.ts";
import { KNOWLEDGE_FILE, type LocaleTexts, readLocales } from "./locale-files.ts";
import { lengthProblem, limitProblems } from "./locale-limits.ts";
import { expectedWords } from "./locale-words.ts";

export interface LocaleReport {
  /** Per language: texts it lacks, and texts made from an English that has changed since. */
  readonly words: Readonly<Record<string, { readonly missing: number; readonly stale: number }>>;
  readonly problems: readonly Problem[];
}

/**
 * Checks every language: messages that cannot be read, that are missing, left over, doubled, too
 * long, older than their English, or that use other variables; the same for the words of the
 * knowledge.
 * @param folder the `locales/` folder
 */
export async function checkLocales(folder: string, knowledge: Knowledge): Promise<LocaleReport> {
  const words = expectedWords(knowledge);
  const locales = await readLocales(folder);
  const english = locales.find(({ language }) => language === "en");
  if (english === undefined) {
    const says = "There is no English: the folder locales/en is missing.";
    return { words: {}, problems: [{ file: "locales/en", says }] };
  }
  const own = checkEnglish(english, words);
  const others = locales
    .filter((locale) => locale !== english)
    .map((locale) => ({ language: locale.language, ...checkLanguage(locale, own.english) }));
  return {
    words: Object.fromEntries([
      ["en", { missing: 0, stale: 0 }],
      ...others.map(({ language, missing, stale }) => [language, { missing, stale }]),
    ]),
    problems: [...own.problems, ...others.flatMap(({ problems }) => problems)],
  };
}

function checkEnglish(locale: LocaleTexts, words: ReadonlyMap<string, string>) {
  const { entries, problems } = readChat(locale);
  const extra: Problem[] =
    locale.knowledge === null
      ? []
      : [
          {
            file: fileName("en", KNOWLEDGE_FILE),
            says: "English words of the knowledge stand in flows/, beside the facts; remove this file.",
          },
        ];
  const long = [...words].flatMap(([key, text]) => lengthProblem({ key }, text.length));
  const english: English = {
    chat: new Map(entries.map((entry) => [entry.key, entry])),
    words: new Map([...words].map(([key, text]) => [key, { text, digest: textDigest(text) }])),
  };
  return { english, problems: [...problems, ...extra, ...long] };
}

function checkLanguage(locale: LocaleTexts, english: English) {
  const { language } = locale;
  const chat = readChat(locale);
  const file = fileName(language, KNOWLEDGE_FILE);
  const knowledge = readLocaleFile(file, locale.knowledge ?? "");
  const compared = compareWithEnglish(english, {
    language,
    chat: chat.entries,
    words: knowledge.entries,
    hasWords: locale.knowledge !== null,
  });
  const unsigned = locale.knowledge !== null && knowledge.reviewed === null;
  return {
    ...compared,
    problems: [
      ...chat.problems,
      ...knowledge.problems,
      ...doubled(knowledge.entries),
      ...limitProblems(knowledge.entries),
      ...(unsigned ? [unsignedProblem(file)] : []),
      ...compared.problems,
    ],
  };
}

function readChat(locale: LocaleTexts) {
  const files = Object.entries(locale.chat).map(([name, text]) => {
    const file = fileName(locale.language, name);
    return { file, ...readLocaleFile(file, text) };
  });
  const entries = files.flatMap((file) => file.entries);
  const unsigned = files.filter(({ reviewed }) => reviewed === null && locale.language !== "en");
  const problems = [
    ...files.flatMap((file) => file.problems),
    ...unsigned.map(({ file }) => unsignedProblem(file)),
    ...doubled(entries),
    ...danglingReferences(entries),
    ...limitProblems(entries),
  ];
  return { entries, problems };
}

function fileName(language: string, name: string): string {
  return `locales/${language}/${name}`;
}

function unsignedProblem(file: string): Problem {
  return {
    file,
    line: 1,
    says: 'Begin the file with who has reviewed the translation, "# reviewed: name, date", or with "# reviewed: nobody yet".',
  };
}

function doubled(entries: readonly LocaleEntry[]): Problem[] {
  const first = new Map<string, LocaleEntry>();
  return entries.flatMap((entry) => {
    const earlier = first.get(entry.key);
    first.set(entry.key, earlier ?? entry);
    if (earlier === undefined) return [];
    const says = `"${entry.key}" stands twice; the first is in ${earlier.file}, line ${earlier.line}.`;
    return [{ file: entry.file, line: entry.line, at: entry.key, says }];
  });
}

function danglingReferences(entries: readonly LocaleEntry[]): Problem[] {
  const keys = new Set(entries.map(({ key }) => key));
  return entries.flatMap(({ key, file, line, references }) =>
    references
      .filter((reference) => !keys.has(reference))
      .map((reference) => ({ file, line, at: key, says: `There is no message "${reference}".` })),
  );
}
