import type { Clauses } from "./clauses.ts";
import type { Language } from "./grammar.ts";
import type { Quantity } from "./quantity.ts";

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
