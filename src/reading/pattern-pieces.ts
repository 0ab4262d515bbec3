import type { Pattern } from "../domain/phrases.ts";
import type { Lexicon } from "./language.ts";
import { fold } from "./tokens.ts";

/** Words of a pattern by their stems. */
export interface Words {
  readonly kind: "words";
  /** Alternatives of one word, and those of several. */
  readonly single: ReadonlySet<string>;
  readonly several: readonly (readonly string[])[];
  /** Words that must stand exactly so. */
  readonly exact: ReadonlySet<string>;
  /** Stems that any way of saying it begins with. */
  readonly starts: ReadonlySet<string>;
  readonly optional: boolean;
}

/** One piece of a pattern, ready to be compared with a text. */
export type Piece =
  | Words
  | { readonly kind: "gap"; readonly upTo: number }
  | { readonly kind: "edge" };

/** The same words stand in many patterns; they are stemmed once, so that starting stays quick. */
export function createWords(lexicon: Lexicon): (piece: WordsWritten) => Words {
  const made = new Map<WordsWritten, Words>();
  return (piece) => {
    const before = made.get(piece);
    if (before !== undefined) return before;
    const words = stemmed(lexicon, piece);
    made.set(piece, words);
    return words;
  };
}

type WordsWritten = Extract<Pattern[number], { readonly kind: "words" }>;

function stemmed(lexicon: Lexicon, piece: WordsWritten): Words {
  const exact = new Set(piece.any.filter(isExact).map((word) => fold(word.slice(1))));
  const stems = piece.any.filter((word) => !isExact(word)).map(lexicon.stems);
  const single = new Set(stems.flatMap((one) => (one.length === 1 ? one : [])));
  const several = stems.filter((one) => one.length > 1);
  const runs = [...several, ...[...exact].map(lexicon.stems)];
  const begins = runs.flatMap(([stem]) => (stem === undefined ? [] : [stem]));
  const starts = new Set([...single, ...begins]);
  return { kind: "words", single, several, exact, starts, optional: piece.optional };
}

function isExact(word: string): boolean {
  return word.startsWith("=");
}

/** For each word that may not be missing, the stems its ways of being said begin with; no twins. */
export function neededWords(pieces: readonly Piece[]): readonly ReadonlySet<string>[] {
  const needed = new Set<ReadonlySet<string>>();
  for (const piece of pieces) {
    if (piece.kind === "words" && !piece.optional) needed.add(piece.starts);
  }
  return [...needed];
}

/** Stems of which one must follow the first word of a pattern; null where that is not certain. */
export function nextStems(pieces: readonly Piece[]): ReadonlySet<string> | null {
  const [first, second] = pieces;
  if (first?.kind !== "words" || second?.kind !== "words") return null;
  const isOneWord = first.several.length === 0 && first.exact.size === 0;
  if (!isOneWord || first.optional || second.optional) return null;
  return second.starts;
}

/** The words a match can begin with: the first, and on past optional ones. */
export function firstWords(pieces: readonly Piece[]): readonly Words[] {
  const first: Words[] = [];
  for (const piece of pieces) {
    if (piece.kind !== "words") continue;
    first.push(piece);
    if (!piece.optional) break;
  }
  return first;
}
