import type { ReaderModel } from "../domain/reading.ts";
import { type Clauses, cutClauses } from "./clauses.ts";
import type { Language } from "./grammar.ts";
import { tokenise } from "./tokens.ts";

/** The observation that a label names, or null. */
export type LabelReader = (label: string) => string | null;

/** Longer ones are sentences. */
const LONGEST_LABEL = 6;

/**
 * Which observation a label means that somebody put before an answer: "flywheel key: sheared". A
 * label is the words of its id or of its title, or what people call the thing, with no other
 * word beside it but "the", "my" and the like.
 */
export function createLabelReader(language: Language, model: ReaderModel): LabelReader {
  const { lexicon } = language;
  const keyOf = (text: string): string =>
    [...new Set(lexicon.tokens(tokenise(text)).map((token) => token.stem))].sort().join(" ");
  const byWords = new Map<string, string | null>();
  for (const { id, title } of model.observations.values()) {
    for (const key of new Set([keyOf(id.replaceAll("-", " ")), keyOf(title)])) {
      // Words that name two things name neither.
      byWords.set(key, byWords.has(key) ? null : id);
    }
  }
  return (label) => {
    if (model.observations.has(label)) return label;
    const clauses = cutClauses(lexicon.tokens(tokenise(label)), language.words);
    if (clauses.tokens.length > LONGEST_LABEL) return null;
    return called(clauses, { language, model }) ?? byWords.get(keyOf(label)) ?? null;
  };
}

function called(
  clauses: Clauses,
  { language, model }: { readonly language: Language; readonly model: ReaderModel },
): string | null {
  const matches = language.names.longest(clauses);
  const ids = new Set(matches.map((match) => match.owner));
  const [id] = ids;
  if (id === undefined || ids.size > 1 || !model.observations.has(id)) return null;
  const isBeside = clauses.tokens.some(
    (token, at) =>
      !language.words.politeness.has(token.stem) &&
      !matches.some(({ from, to }) => at >= from && at < to),
  );
  return isBeside ? null : id;
}

/** True for "after cleaning": what follows was so only once something had been done. */
export function isAfterwards(label: string, { lexicon, words }: Language): boolean {
  const [first] = lexicon.tokens(tokenise(label));
  return first !== undefined && words.after.has(first.stem);
}

/** True for "fixed by" and "new relay": the entry tells what put the machine right. */
export function tellsRemedy(label: string, language: Language): boolean {
  const tokens = language.lexicon.tokens(tokenise(label));
  return language.remedy.all(cutClauses(tokens, language.words)).length > 0;
}
