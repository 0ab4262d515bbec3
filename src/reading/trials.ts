import type { ReadingResult, Understood } from "../domain/reading.ts";
import type { Clauses } from "./clauses.ts";
import type { Language } from "./grammar.ts";

/** Words before what came of it: "it runs", "still the same". */
const WORDS_BEFORE = 1;

/** True where a text begins by telling what came of something tried: "runs", "no change". */
export function tellsOutcome(text: Clauses, language: Language): boolean {
  const { cured, noChange } = language.phrases.outcomes;
  const [first] = language.signs.longest(text);
  if (first === undefined || first.from > WORDS_BEFORE) return false;
  return [...cured, ...noChange].some(({ sign }) => sign === first.owner.id);
}

/**
 * Where an entry tells what came of a trial ("fuel tap nearly shut: keeps running"), its name tells
 * how things were set for it and not how they were found. What was done or happened stays.
 *
 * @param end of the name, as a place in the text
 * @param isList true for observations that hold things done and things that happened
 */
export function withoutSettings(
  result: ReadingResult,
  end: number,
  isList: (observation: string) => boolean,
): ReadingResult {
  const stays = (one: Understood): boolean => one.span[1] > end || isList(one.observation);
  const understood = result.understood.filter(stays);
  return { ...result, understood, denied: result.denied.filter(stays) };
}
