import type { Pattern } from "../domain/phrases.ts";
import type { Lexicon } from "./language.ts";
import { createNeededWords, type NeededTable } from "./needed-words.ts";
import {
  createWords,
  firstWords,
  neededWords,
  nextStems,
  type Piece,
  type Words,
} from "./pattern-pieces.ts";

/** One pattern, ready to be compared with a text. */
export interface Entry<Owner> {
  readonly owner: Owner;
  /** Place in the file: of matches alike in everything, the first written stands. */
  readonly order: number;
  readonly pieces: readonly Piece[];
  /** Numbers of the sets of words that must be there beside the first and the last. */
  readonly needs: readonly number[];
  /** Stems of which one must follow the first word; null where that is not certain. */
  readonly next: ReadonlySet<string> | null;
}

/** Lists of numbers, written one behind the other. */
export interface NumberLists {
  /** Where each list begins, and where the last one ends. */
  readonly starts: Int32Array;
  readonly numbers: Int32Array;
}

/**
 * Many patterns as plain data. There are tens of thousands, of which a text needs a few dozen, so
 * they stand as numbers that are read back and looked through faster than objects, and each is
 * unpacked when it is first needed.
 */
export interface PatternTable<Owner> {
  readonly owners: readonly Owner[];
  /** All different words of the patterns. */
  readonly words: readonly Words[];
  /** By stem the positions, in `words`, of what may begin with it. */
  readonly byFirst: ReadonlyMap<string, readonly number[]>;
  /**
   * For each position in `words` the patterns that begin there, in shelves that need the same last
   * word: the number of the needed set, how many patterns, their positions; and so on.
   */
  readonly shelves: NumberLists;
  /** For each pattern its owner, the number of its pieces, the pieces, and what else it needs. */
  readonly patterns: NumberLists;
  readonly needed: NeededTable;
}

/** Of a pattern that needs no words: the loader refuses them. */
const NONE = -1;
/** How an edge is written among positions of words. */
const EDGE = -1;
/** How a gap is written that skips nothing; one that skips more, less by as much. */
const GAP = -2;

/** Stems the patterns and packs them, each with the one whose it is. */
export function packPatterns<Owner>(
  lexicon: Lexicon,
  owned: Iterable<readonly [Owner, readonly Pattern[]]>,
): PatternTable<Owner> {
  const wordsOf = createWords(lexicon);
  const needed = createNeededWords();
  const places = new Map<Words, number>();
  const placeOf = (words: Words) => there(places, words, () => places.size);
  const owners: Owner[] = [];
  const patterns: number[][] = [];
  const shelves = new Map<number, Map<number, number[]>>();
  for (const [owner, its] of owned) {
    for (const pattern of its) {
      const pieces = pattern.map((piece) => (piece.kind === "words" ? wordsOf(piece) : piece));
      // The last word rules out more than the first, which is known to be there.
      const [last = NONE, ...needs] = neededWords(pieces).map(needed.number).reverse();
      for (const first of firstWords(pieces)) {
        const shelf = there(shelves, placeOf(first), () => new Map<number, number[]>());
        there(shelf, last, () => []).push(patterns.length);
      }
      const codes = pieces.map((piece) => codeOf(piece, placeOf));
      patterns.push([owners.length, codes.length, ...codes, ...needs]);
    }
    owners.push(owner);
  }
  const words = [...places.keys()];
  const byFirst = new Map<string, number[]>();
  for (const place of shelves.keys()) {
    for (const stem of words[place]?.starts ?? []) there(byFirst, stem, () => []).push(place);
  }
  const packed = words.map((_, place) =>
    [...(shelves.get(place) ?? [])].flatMap(([need, its]) => [need, its.length, ...its]),
  );
  return {
    ...{ owners, words, byFirst, needed: needed.table() },
    shelves: listsOf(packed),
    patterns: listsOf(patterns),
  };
}

/** A pattern of the table; nothing for a position that it does not have. */
export function unpackPattern<Owner>(
  { owners, words, patterns }: PatternTable<Owner>,
  order: number,
): Entry<Owner> | undefined {
  const [place = NONE, count = 0, ...codes] = listAt(patterns, order);
  const owner = owners[place];
  if (owner === undefined) return undefined;
  const pieces = codes.slice(0, count).flatMap((code) => pieceOf(code, words));
  return { owner, order, pieces, needs: codes.slice(count), next: nextStems(pieces) };
}

/** One of the lists; empty for a position that there is not. */
export function listAt({ starts, numbers }: NumberLists, place: number): Int32Array {
  return numbers.subarray(starts[place] ?? 0, starts[place + 1] ?? 0);
}

function codeOf(piece: Piece, placeOf: (words: Words) => number): number {
  if (piece.kind === "words") return placeOf(piece);
  return piece.kind === "edge" ? EDGE : GAP - piece.upTo;
}

function pieceOf(code: number, words: readonly Words[]): readonly Piece[] {
  if (code === EDGE) return [{ kind: "edge" }];
  if (code <= GAP) return [{ kind: "gap", upTo: GAP - code }];
  return words.slice(code, code + 1);
}

function listsOf(lists: readonly (readonly number[])[]): NumberLists {
  const starts = new Int32Array(lists.length + 1);
  lists.forEach((list, place) => {
    starts[place + 1] = (starts[place] ?? 0) + list.length;
  });
  const numbers = new Int32Array(starts.at(-1) ?? 0);
  lists.forEach((list, place) => void numbers.set(list, starts[place] ?? 0));
  return { starts, numbers };
}

/** What a map holds under a key; put there first where it is missing. */
function there<Key, Value>(map: Map<Key, Value>, key: Key, make: () => Value): Value {
  const before = map.get(key);
  if (before !== undefined) return before;
  const value = make();
  map.set(key, value);
  return value;
}
