import type { Span } from "../domain/reading.ts";
import type { Clauses } from "./clauses.ts";

/** A stretch of tokens, from inclusive, to exclusive. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** The stretch of the text that some tokens take up. */
export function spanOf(text: Clauses, { from, to }: Stretch): Span {
  return [text.tokens[from]?.from ?? 0, text.tokens[to - 1]?.to ?? 0];
}

/** All tokens within any of the stretches. */
export function coverage(text: Clauses, stretches: readonly Stretch[]): ReadonlySet<number> {
  const covered = new Set<number>();
  for (const { from, to } of stretches) {
    for (let at = from; at < Math.min(to, text.tokens.length); at += 1) covered.add(at);
  }
  return covered;
}

/** True where two stretches share a token. */
export function overlaps(one: Stretch, other: Stretch): boolean {
  return one.from < other.to && other.from < one.to;
}
