import type { Clauses } from "./clauses.ts";
import type { Aside, Language } from "./grammar.ts";
import type { Match } from "./patterns.ts";

interface Named {
  readonly parts: readonly Match<Aside>[];
  /** What is said of the machine. */
  readonly signs: readonly Match<unknown>[];
}

/**
 * The parts of a text that names nothing but parts: under the name of what put the machine right
 * ("fixed by: battery and relay") they were replaced, though no word says so.
 *
 * @returns none where another telling word stands beside them ("result: battery flat")
 */
export function partsAlone(
  text: Clauses,
  { parts, signs }: Named,
  language: Language,
): readonly Match<Aside>[] {
  const remedies = language.remedy.all(text);
  const isWithin = (at: number, stretch: Match<unknown>): boolean =>
    at >= stretch.from && at < stretch.to;
  const isTelling = text.tokens.some(({ stem }, at) => {
    if ([...parts, ...remedies].some((one) => isWithin(at, one))) return false;
    const isQuiet = language.lexicon.isOrdinary(stem) || language.words.politeness.has(stem);
    return !isQuiet || signs.some((one) => isWithin(at, one));
  });
  return isTelling ? [] : parts;
}
