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

/** Which of the sets some words are in. */
export interface HeldWords {
  /** Forgets what was looked at before, and looks at these tokens. */
  look(tokens: readonly Token[]): void;
  /** True where the tokens looked at hold a word of the set with this number. */
  has(number: number): boolean;
}

/**
 * Most patterns are ruled out by a word that the text does not hold; looked up once for many
 * patterns, that keeps reading fast however many there are.
 */
export function createHeldWords({ size, byStem }: NeededTable): HeldWords {
  // The round of looking in which a set was last held, so that nothing need be wiped.
  const rounds = new Int32Array(size);
  let round = 0;
  return {
    look: (tokens) => {
      round += 1;
      for (const { stem } of tokens) for (const one of byStem.get(stem) ?? []) rounds[one] = round;
    },
    has: (number) => rounds[number] === round,
  };
}
