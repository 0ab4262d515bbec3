import type { Pattern } from "../domain/phrases.ts";
import type { Clauses } from "./clauses.ts";
import type { Lexicon } from "./language.ts";
import { createHeldWords, type HeldWords } from "./needed-words.ts";
import { type Entry, type PatternTable, packPatterns, unpackPattern } from "./pattern-table.ts";
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
  /** What they are found with, as plain data that can be kept; see `openPatternIndex`. */
  table(): PatternTable<Owner>;
}

/** Stemmed patterns, looked up by their first word; made ready when a text is first searched. */
export function createPatternIndex<Owner>(
  lexicon: Lexicon,
  owned: Iterable<readonly [Owner, readonly Pattern[]]>,
): PatternIndex<Owner> {
  let packed: PatternTable<Owner> | null = null;
  return indexOf(() => {
    packed ??= packPatterns(lexicon, owned);
    return packed;
  });
}

/** The index whose table this is. */
export function openPatternIndex<Owner>(table: PatternTable<Owner>): PatternIndex<Owner> {
  return indexOf(() => table);
}

function indexOf<Owner>(table: () => PatternTable<Owner>): PatternIndex<Owner> {
  let unpacked: Unpacked<Owner> | null = null;
  const all = (text: Clauses) => {
    unpacked ??= unpacking(table());
    return matchesIn(text, table(), unpacked);
  };
  return { all, longest: (text) => longestOf(all(text)), table };
}

/** The patterns of a table, unpacked as they are needed. */
type Unpacked<Owner> = (order: number) => Entry<Owner> | undefined;

function unpacking<Owner>(table: PatternTable<Owner>): Unpacked<Owner> {
  const unpacked: (Entry<Owner> | undefined)[] = [];
  return (order) => {
    unpacked[order] ??= unpackPattern(table, order);
    return unpacked[order];
  };
}

/**
 * A phrase does not run on over a comma or a full stop, so each run of words between them is looked
 * through alone: that rules out nearly every pattern by a word that the run does not hold.
 */
function matchesIn<Owner>(
  text: Clauses,
  table: PatternTable<Owner>,
  unpacked: Unpacked<Owner>,
): readonly Match<Owner>[] {
  const { tokens } = text;
  const found: Match<Owner>[] = [];
  const held = createHeldWords(table.needed);
  let end = 0;
  for (let from = 0; from < tokens.length; from += 1) {
    if (from === end) {
      end = runEnd(text, from);
      held.look(tokens.slice(from, end));
    }
    const follows = tokens[from + 1]?.stem ?? "";
    for (const entry of possibleFrom(tokens[from]?.stem ?? "", { table, unpacked, held })) {
      if (entry.next !== null && !entry.next.has(follows)) continue;
      const match = matchFrom(text, entry.pieces, from);
      if (match !== null) found.push({ owner: entry.owner, from, ...match });
    }
  }
  return found;
}

function runEnd(text: Clauses, from: number): number {
  let end = from + 1;
  while (end < text.tokens.length && text.joined(end)) end += 1;
  return end;
}

interface Search<Owner> {
  readonly table: PatternTable<Owner>;
  readonly unpacked: Unpacked<Owner>;
  readonly held: HeldWords;
}

/** Patterns that may begin with this word, as far as the words around it tell; in file order. */
function possibleFrom<Owner>(stem: string, search: Search<Owner>): readonly Entry<Owner>[] {
  const possible: Entry<Owner>[] = [];
  for (const place of search.table.byFirst.get(stem) ?? []) addPossible(place, search, possible);
  if (possible.length < 2) return possible;
  possible.sort((a, b) => a.order - b.order);
  // A pattern whose first word may be missing can stand on two shelves.
  return possible.filter((entry, at) => entry !== possible[at - 1]);
}

function addPossible<Owner>(
  place: number,
  { table, unpacked, held }: Search<Owner>,
  possible: Entry<Owner>[],
): void {
  const { starts, numbers } = table.shelves;
  const end = starts[place + 1] ?? 0;
  let at = starts[place] ?? 0;
  while (at < end) {
    const first = at + 2;
    const next = first + (numbers[at + 1] ?? 0);
    const isHeld = held.has(numbers[at] ?? 0);
    for (at = first; isHeld && at < next; at += 1) {
      const entry = unpacked(numbers[at] ?? 0);
      if (entry?.needs.every(held.has)) possible.push(entry);
    }
    at = next;
  }
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
