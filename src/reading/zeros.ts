import type { SignMeaning } from "../domain/phrases.ts";
import type { Clauses } from "./clauses.ts";
import type { Language } from "./grammar.ts";
import type { Match } from "./patterns.ts";
import type { Quantity } from "./quantity.ts";
import { overlaps, type Stretch } from "./span.ts";

/** Readings of nothing told in words: "no volts at the coil". They count only where a place is named. */
export function zerosIn(text: Clauses, language: Language): readonly Quantity[] {
  return language.zeros.longest(text).map(({ owner, from, to }) => ({
    value: 0,
    spread: 0,
    unit: owner.unit,
    saidUnit: owner.unit,
    decimal: false,
    none: true,
    from,
    to,
  }));
}

/**
 * A longer phrase that says it otherwise stands over "nothing" as a reading; not where it is longer
 * by the word that leads to a place alone: "no power *at* the coil".
 */
export function isPlainest(
  text: Clauses,
  matches: readonly Match<SignMeaning>[],
  { words }: Language,
): (zero: Quantity) => boolean {
  const wordsIn = ({ from, to }: Stretch): number => {
    let end = to;
    while (end > from && words.at.has(text.tokens[end - 1]?.stem ?? "")) end -= 1;
    return end - from;
  };
  return (zero) => !matches.some((one) => overlaps(one, zero) && wordsIn(one) > wordsIn(zero));
}
