import type { Token } from "./language.ts";

/** Sets of words of which a text must hold one, each with a number. */
export interface NeededTable {
  readonly size: number;
  /** The numbers of the sets that a stem is in. */
  readonly byStem: ReadonlyMap<string, readonly number[]>;
}

/** Sets of words being numbered; the same set has the same number. */
export interface NeededWords {
  number(stems: ReadonlySet<string>): number;
  /** All that were numbered so far. */
  table(): NeededTable;
}

export function createNeededWords(): NeededWords {
  const numbers = new Map<string, number>();
  const byStem = new Map<string, number[]>();
  const seen = new Map<ReadonlySet<string>, number>();
  const number = (stems: ReadonlySet<string>): number => {
    const same = seen.get(stems);
    if (same !== undefined) return same;
    const key = [...stems].sort().join(" ");
    const there = numbers.get(key);
    const next = there ?? numbers.size;
    seen.set(stems, next);
    if (there !== undefined) return there;
    numbers.set(key, next);
    for (const stem of stems) {
      const list = byStem.get(stem);
      if (list === undefined) byStem.set(stem, [next]);
      else list.push(next);
    }
    return next;
  };
  return { number, table: () => ({ size: numbers.size, byStem }) };
}

/**
 * Most patterns are ruled out by a word that the text does not hold; looked up once for the whole
 * text, that keeps reading fast however many patterns there are.
 * @returns for each number 1 where the text holds one of its words, else 0
 */
export function heldBy(tokens: readonly Token[], { size, byStem }: NeededTable): Uint8Array {
  const held = new Uint8Array(size);
  for (const stem of new Set(tokens.map((token) => token.stem))) {
    for (const one of byStem.get(stem) ?? []) held[one] = 1;
  }
  return held;
}
