import type { SignMeaning } from "../domain/phrases.ts";
import type { Clauses } from "./clauses.ts";
import type { Language } from "./grammar.ts";
import { longestOf, type Match } from "./patterns.ts";

/** Where the words against a sign stand in one clause: the first ends, the last begins. */
interface Against {
  firstEnd: number;
  lastBegin: number;
}

/**
 * The signs in a text, longest first, none overlapping. One is left out where a word beside it in
 * its clause makes it something else: "no click *from the fuel valve*" is not the starter's. A word
 * inside the sign itself does not: there it was meant.
 */
export function signMatches(text: Clauses, language: Language): readonly Match<SignMeaning>[] {
  const against = againstSigns(text, language.otherwise.all(text));
  const isOther = ({ owner, from, to }: Match<SignMeaning>): boolean => {
    const words = against.get(text.clauses[from] ?? 0)?.get(owner);
    return words !== undefined && (words.firstEnd <= from || words.lastBegin >= to);
  };
  return longestOf(language.signs.all(text).filter((match) => !isOther(match)));
}

/** By clause and sign, so that the work stays linear in the text. */
function againstSigns(
  text: Clauses,
  matches: readonly Match<SignMeaning>[],
): ReadonlyMap<number, ReadonlyMap<SignMeaning, Against>> {
  const clauses = new Map<number, Map<SignMeaning, Against>>();
  for (const { owner, from, to } of matches) {
    const clause = text.clauses[from] ?? 0;
    const signs = clauses.get(clause) ?? new Map<SignMeaning, Against>();
    clauses.set(clause, signs);
    const there = signs.get(owner) ?? { firstEnd: to, lastBegin: from };
    signs.set(owner, {
      firstEnd: Math.min(there.firstEnd, to),
      lastBegin: Math.max(there.lastBegin, from),
    });
  }
  return clauses;
}
