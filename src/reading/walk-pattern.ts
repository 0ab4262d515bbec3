import type { Clauses } from "./clauses.ts";
import type { Piece, Words } from "./pattern-pieces.ts";

/** Where a match ends and what it passed on its way. */
export interface End {
  readonly to: number;
  readonly words: number;
  readonly denied: boolean;
}

/** The end of a pattern that begins at a token, or null. */
export function matchFrom(text: Clauses, pieces: readonly Piece[], from: number): End | null {
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
