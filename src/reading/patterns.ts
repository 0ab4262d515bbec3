import type { Pattern } from "../domain/phrases.ts";
import type { Clauses } from "./clauses.ts";
import type { Lexicon } from "./language.ts";
import { createNeededWords } from "./needed-words.ts";
import { fold } from "./tokens.ts";

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

interface Words {
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

type Piece = Words | { readonly kind: "gap"; readonly upTo: number } | { readonly kind: "edge" };

interface Entry<Owner> {
  readonly owner: Owner;
  readonly pieces: readonly Piece[];
  /** Numbers of the sets of words that must be there beside the first. */
  readonly needs: readonly number[];
  /** Stems of which one must follow the first word; null where that is not certain. */
  readonly next: ReadonlySet<string> | null;
}

/** Stemmed patterns, looked up by their first word. */
export function createPatternIndex<Owner>(
  lexicon: Lexicon,
  owned: Iterable<readonly [Owner, readonly Pattern[]]>,
): PatternIndex<Owner> {
  const byFirst = new Map<string, Entry<Owner>[]>();
  const needed = createNeededWords();
  const wordsOf = createWords(lexicon);
  for (const [owner, patterns] of owned) {
    for (const pattern of patterns) {
      const pieces = pattern.map((piece) => (piece.kind === "words" ? wordsOf(piece) : piece));
      const needs = [...new Set(neededSets(pieces).map(needed.number))];
      const entry = { owner, pieces, needs, next: nextStems(pieces) };
      for (const first of firstStems(entry.pieces)) {
        const there = byFirst.get(first);
        if (there === undefined) byFirst.set(first, [entry]);
        else there.push(entry);
      }
    }
  }
  const all = (text: Clauses): readonly Match<Owner>[] => {
    const found: Match<Owner>[] = [];
    const held = needed.heldBy(text.tokens);
    const possible = new Map<string, readonly Entry<Owner>[]>();
    const possibleFrom = (stem: string): readonly Entry<Owner>[] => {
      const there = possible.get(stem);
      if (there !== undefined) return there;
      const all = byFirst.get(stem) ?? [];
      const left = all.filter((entry) => entry.needs.every((one) => held[one] === 1));
      possible.set(stem, left);
      return left;
    };
    text.tokens.forEach((token, from) => {
      const follows = text.tokens[from + 1]?.stem ?? "";
      for (const { owner, pieces, next } of possibleFrom(token.stem)) {
        if (next !== null && !next.has(follows)) continue;
        const end = matchFrom(text, pieces, from);
        if (end !== null) found.push({ owner, from, ...end });
      }
    });
    return found;
  };
  return { all, longest: (text) => longestOf(all(text)) };
}

function longestOf<Owner>(found: readonly Match<Owner>[]): readonly Match<Owner>[] {
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

/** The same words stand in many patterns; they are stemmed once, so that starting stays quick. */
function createWords(lexicon: Lexicon): (piece: WordsWritten) => Words {
  const made = new Map<string, Words>();
  return (piece) => {
    const key = `${piece.optional} ${piece.any.join("|")}`;
    const before = made.get(key);
    if (before !== undefined) return before;
    const words = stemmed(lexicon, piece);
    made.set(key, words);
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

/** For each word that may not be missing, the stems its ways of being said begin with. */
function neededSets(pieces: readonly Piece[]): readonly ReadonlySet<string>[] {
  return pieces
    .flatMap((piece) => (piece.kind === "words" && !piece.optional ? [piece] : []))
    .map((piece) => piece.starts)
    .reverse();
}

function nextStems(pieces: readonly Piece[]): ReadonlySet<string> | null {
  const [first, second] = pieces;
  if (first?.kind !== "words" || second?.kind !== "words") return null;
  const isOneWord = first.several.length === 0 && first.exact.size === 0;
  if (!isOneWord || first.optional || second.optional) return null;
  return second.starts;
}

/** Stems a match can begin with: those of the first words, and on past optional ones. */
function firstStems(pieces: readonly Piece[]): ReadonlySet<string> {
  const first = new Set<string>();
  for (const piece of pieces) {
    if (piece.kind !== "words") continue;
    for (const stem of piece.starts) first.add(stem);
    if (!piece.optional) break;
  }
  return first;
}

interface End {
  readonly to: number;
  readonly words: number;
  readonly denied: boolean;
}

/** The end of a pattern that begins at a token, or null. */
function matchFrom(text: Clauses, pieces: readonly Piece[], from: number): End | null {
  const state: Walk = { text, pieces, from, words: 0, denied: false };
  const to = walk(state, 0, from);
  return to <= from ? null : { to, words: state.words, denied: state.denied };
}

/** Words found and denials passed so far; set back whenever a way turns out to lead nowhere. */
interface Walk {
  readonly text: Clauses;
  readonly pieces: readonly Piece[];
  readonly from: number;
  words: number;
  denied: boolean;
}

const NOWHERE = -1;

/** Depth is the pattern's length and width its gaps and options, both bounded by the loader. */
function walk(state: Walk, place: number, at: number): number {
  const piece = state.pieces[place];
  if (piece === undefined) return at;
  if (piece.kind === "edge") return state.text.edge(at) ? walk(state, place + 1, at) : NOWHERE;
  if (piece.kind === "gap") return walkGap(state, { place, upTo: piece.upTo }, at);
  const end = walkWords(state, { piece, place }, at);
  return end === NOWHERE && piece.optional ? walk(state, place + 1, at) : end;
}

function walkWords(
  state: Walk,
  { piece, place }: { readonly piece: Words; readonly place: number },
  at: number,
): number {
  const token = state.text.tokens[at];
  if (token === undefined || !(at === state.from || state.text.joined(at))) return NOWHERE;
  state.words += 1;
  const one =
    piece.single.has(token.stem) || piece.exact.has(token.text)
      ? walk(state, place + 1, at + 1)
      : NOWHERE;
  if (one !== NOWHERE) return one;
  for (const stems of piece.several) {
    const end = isAt(state, stems, at) ? walk(state, place + 1, at + stems.length) : NOWHERE;
    if (end !== NOWHERE) return end;
  }
  state.words -= 1;
  return NOWHERE;
}

function isAt({ text }: Walk, stems: readonly string[], at: number): boolean {
  return stems.every(
    (stem, offset) =>
      text.tokens[at + offset]?.stem === stem && (offset === 0 || text.joined(at + offset)),
  );
}

function walkGap(
  state: Walk,
  { place, upTo }: { readonly place: number; readonly upTo: number },
  from: number,
): number {
  const before = state.denied;
  for (let skipped = 0; skipped <= upTo; skipped += 1) {
    const at = from + skipped;
    if (skipped > 0) {
      // A phrase does not run on over a comma or a full stop.
      if (at > state.text.tokens.length || !state.text.joined(at - 1)) break;
      if (state.text.isDenial(at - 1)) state.denied = !state.denied;
    }
    const end = walk(state, place + 1, at);
    if (end !== NOWHERE) return end;
  }
  state.denied = before;
  return NOWHERE;
}
