import type { Pattern } from "../domain/phrases.ts";
import type { Clauses } from "./clauses.ts";
import type { Lexicon } from "./language.ts";
import { createNeededWords, type NeededWords } from "./needed-words.ts";
import {
  createWords,
  firstWords,
  neededWords,
  nextStems,
  type Piece,
  type Words,
} from "./pattern-pieces.ts";
import { matchFrom } from "./walk-pattern.ts";

/** A pattern found in the text: tokens `from` (inclusive) to `to` (exclusive). */
export interface Match<Owner> {
  readonly owner: Owner;
  readonly from: number;
  readonly to: number;
  /** Words of the pattern that were found; breaks ties between matches of one length. */
  readonly words: number;
  /** True where a gap of the pattern passed over a denial: "the petrol is not that old". */
  readonly denied: boolean;
}

/** Many patterns, found all at once. */
export interface PatternIndex<Owner> {
  /** Every pattern's match at every place; overlaps are kept. */
  all(text: Clauses): readonly Match<Owner>[];
  /** Longest matches first, none overlapping, in the order of the text. */
  longest(text: Clauses): readonly Match<Owner>[];
}

interface Entry<Owner> {
  readonly owner: Owner;
  /** Place in the file: of matches alike in everything, the first written stands. */
  readonly order: number;
  readonly pieces: readonly Piece[];
  /** Numbers of the sets of words that must be there as well. */
  readonly needs: readonly number[];
  /** Stems of which one must follow the first word; null where that is not certain. */
  readonly next: ReadonlySet<string> | null;
}

/** Patterns that begin with the same words and all need the same other ones. */
interface Shelf<Owner> {
  readonly needs: number;
  readonly entries: Entry<Owner>[];
}

/** Shelves of one first word; what they need stands apart, close together, as it is all looked at. */
interface Rack<Owner> {
  readonly needs: Int32Array;
  readonly shelves: readonly Shelf<Owner>[];
}

interface Compiled<Owner> {
  readonly byFirst: ReadonlyMap<string, Rack<Owner>>;
  readonly needed: NeededWords;
}

/** Stemmed patterns, looked up by their first word; made ready when a text is first searched. */
export function createPatternIndex<Owner>(
  lexicon: Lexicon,
  owned: Iterable<readonly [Owner, readonly Pattern[]]>,
): PatternIndex<Owner> {
  let compiled: Compiled<Owner> | null = null;
  const all = (text: Clauses): readonly Match<Owner>[] => {
    compiled ??= compile(lexicon, owned);
    return matchesIn(text, compiled);
  };
  return { all, longest: (text) => longestOf(all(text)) };
}

function compile<Owner>(
  lexicon: Lexicon,
  owned: Iterable<readonly [Owner, readonly Pattern[]]>,
): Compiled<Owner> {
  const shelves = new Map<Words, Map<number, Shelf<Owner>>>();
  const needed = createNeededWords();
  const wordsOf = createWords(lexicon);
  let order = 0;
  for (const [owner, patterns] of owned) {
    for (const pattern of patterns) {
      const pieces = pattern.map((piece) => (piece.kind === "words" ? wordsOf(piece) : piece));
      // The last word rules out more than the first, which is known to be there.
      const [last = NONE, ...needs] = neededWords(pieces).map(needed.number).reverse();
      order += 1;
      const entry = { owner, order, pieces, needs, next: nextStems(pieces) };
      for (const first of firstWords(pieces)) shelfOf(shelves, first, last).entries.push(entry);
    }
  }
  const byFirst = new Map<string, Shelf<Owner>[]>();
  for (const [first, itsShelves] of shelves) {
    for (const stem of first.starts) {
      const there = byFirst.get(stem);
      if (there === undefined) byFirst.set(stem, [...itsShelves.values()]);
      else there.push(...itsShelves.values());
    }
  }
  const racks = [...byFirst].map(
    ([stem, own]) =>
      [stem, { needs: Int32Array.from(own, (one) => one.needs), shelves: own }] as const,
  );
  return { byFirst: new Map(racks), needed };
}

/** Of a pattern that needs no words: the loader refuses them. */
const NONE = -1;

function shelfOf<Owner>(
  shelves: Map<Words, Map<number, Shelf<Owner>>>,
  first: Words,
  needs: number,
): Shelf<Owner> {
  const itsShelves = shelves.get(first) ?? new Map<number, Shelf<Owner>>();
  shelves.set(first, itsShelves);
  const there = itsShelves.get(needs);
  if (there !== undefined) return there;
  const shelf = { needs, entries: [] };
  itsShelves.set(needs, shelf);
  return shelf;
}

function matchesIn<Owner>(text: Clauses, compiled: Compiled<Owner>): readonly Match<Owner>[] {
  const found: Match<Owner>[] = [];
  const held = compiled.needed.heldBy(text.tokens);
  const possible = new Map<string, readonly Entry<Owner>[]>();
  text.tokens.forEach((token, from) => {
    const entries = possible.get(token.stem) ?? possibleFrom(token.stem, compiled, held);
    possible.set(token.stem, entries);
    const follows = text.tokens[from + 1]?.stem ?? "";
    for (const { owner, pieces, next } of entries) {
      if (next !== null && !next.has(follows)) continue;
      const end = matchFrom(text, pieces, from);
      if (end !== null) found.push({ owner, from, ...end });
    }
  });
  return found;
}

/** Patterns that may begin with this word, as far as the words of the text tell; in file order. */
function possibleFrom<Owner>(
  stem: string,
  { byFirst }: Compiled<Owner>,
  held: Uint8Array,
): readonly Entry<Owner>[] {
  const possible: Entry<Owner>[] = [];
  const rack = byFirst.get(stem);
  rack?.needs.forEach((number, at) => {
    if (held[number] !== 1) return;
    for (const entry of rack.shelves[at]?.entries ?? []) {
      if (entry.needs.every((one) => held[one] === 1)) possible.push(entry);
    }
  });
  possible.sort((a, b) => a.order - b.order);
  // A pattern whose first word may be missing can stand on two shelves.
  return possible.filter((entry, at) => entry !== possible[at - 1]);
}

/** Longest matches first, none overlapping, in the order of the text. */
export function longestOf<Owner>(found: readonly Match<Owner>[]): readonly Match<Owner>[] {
  const order = [...found].sort(
    (a, b) => b.to - b.from - (a.to - a.from) || b.words - a.words || a.from - b.from,
  );
  const taken = new Set<number>();
  const kept: Match<Owner>[] = [];
  for (const candidate of order) {
    let free = true;
    for (let at = candidate.from; at < candidate.to && free; at += 1) free = !taken.has(at);
    if (!free) continue;
    for (let at = candidate.from; at < candidate.to; at += 1) taken.add(at);
    kept.push(candidate);
  }
  return kept.sort((a, b) => a.from - b.from);
}
