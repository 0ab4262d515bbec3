import type { Pattern } from "../domain/reading.ts";
import type { Clauses } from "./clauses.ts";
import type { Lexicon } from "./language.ts";

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
  /** Every owner's best match at every place; overlaps are kept. */
  all(text: Clauses): readonly Match<Owner>[];
  /** Longest matches first, none overlapping, in the order of the text. */
  longest(text: Clauses): readonly Match<Owner>[];
}

type Piece =
  | {
      readonly kind: "words";
      readonly any: readonly (readonly string[])[];
      readonly optional: boolean;
    }
  | { readonly kind: "gap"; readonly upTo: number }
  | { readonly kind: "edge" };

interface Entry<Owner> {
  readonly owner: Owner;
  readonly pieces: readonly Piece[];
}

/** Stemmed patterns, looked up by their first word. */
export function createPatternIndex<Owner>(
  lexicon: Lexicon,
  owned: Iterable<readonly [Owner, readonly Pattern[]]>,
): PatternIndex<Owner> {
  const byFirst = new Map<string, Entry<Owner>[]>();
  for (const [owner, patterns] of owned) {
    for (const pattern of patterns) {
      const entry = { owner, pieces: stemPieces(lexicon, pattern) };
      for (const first of firstStems(entry.pieces)) {
        const there = byFirst.get(first);
        if (there === undefined) byFirst.set(first, [entry]);
        else there.push(entry);
      }
    }
  }
  const all = (text: Clauses): readonly Match<Owner>[] => {
    const found: Match<Owner>[] = [];
    for (let at = 0; at < text.tokens.length; at += 1) {
      for (const entry of byFirst.get(text.tokens[at]?.stem ?? "") ?? []) {
        const end = match(text, entry.pieces, { piece: 0, at, words: 0, denied: false });
        if (end !== null && end.at > at) {
          const { words, denied } = end;
          found.push({ owner: entry.owner, from: at, to: end.at, words, denied });
        }
      }
    }
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

function stemPieces(lexicon: Lexicon, pattern: Pattern): readonly Piece[] {
  return pattern.map((piece) =>
    piece.kind === "words" ? { ...piece, any: piece.any.map(lexicon.stems) } : piece,
  );
}

/** Stems a match can begin with: those of the first words, and on past optional ones. */
function firstStems(pieces: readonly Piece[]): ReadonlySet<string> {
  const first = new Set<string>();
  for (const piece of pieces) {
    if (piece.kind !== "words") continue;
    for (const [stem] of piece.any) if (stem !== undefined) first.add(stem);
    if (!piece.optional) break;
  }
  return first;
}

interface Place {
  readonly piece: number;
  readonly at: number;
  readonly words: number;
  readonly denied: boolean;
}

/** The furthest end of the pattern from here, or null. Depth and width are bounded by the pattern. */
function match(text: Clauses, pieces: readonly Piece[], place: Place): Place | null {
  const piece = pieces[place.piece];
  if (piece === undefined) return place;
  const next = { ...place, piece: place.piece + 1 };
  if (piece.kind === "edge") return text.edge(place.at) ? match(text, pieces, next) : null;
  if (piece.kind === "gap") return matchGap(text, pieces, { place, upTo: piece.upTo });
  let best: Place | null = piece.optional ? match(text, pieces, next) : null;
  for (const stems of piece.any) {
    if (!wordsAt(text, place, stems)) continue;
    const after = { ...next, at: place.at + stems.length, words: place.words + 1 };
    const end = match(text, pieces, after);
    if (end !== null && (best === null || end.at > best.at)) best = end;
  }
  return best;
}

function wordsAt(text: Clauses, place: Place, stems: readonly string[]): boolean {
  return stems.every((stem, offset) => {
    const at = place.at + offset;
    // A phrase does not run on over a comma or a full stop.
    const joined = at === place.at && place.words === 0 ? true : text.joined(at);
    return joined && text.tokens[at]?.stem === stem;
  });
}

function matchGap(
  text: Clauses,
  pieces: readonly Piece[],
  gap: { readonly place: Place; readonly upTo: number },
): Place | null {
  const { place, upTo } = gap;
  let denied = place.denied;
  for (let skipped = 0; skipped <= upTo; skipped += 1) {
    const at = place.at + skipped;
    if (skipped > 0) {
      if (at > text.tokens.length || !text.joined(at - 1)) return null;
      denied = denied !== text.isDenial(at - 1);
    }
    const end = match(text, pieces, { ...place, piece: place.piece + 1, at, denied });
    if (end !== null) return end;
  }
  return null;
}
