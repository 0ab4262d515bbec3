import type { Pattern, PatternPiece } from "../domain/phrases.ts";

/** Words one gap may skip. */
const GAP = 3;
/** More gaps would let a phrase match nearly anything, and make matching slow. */
const MOST_GAPS = 2;
const MOST_PIECES = 10;
const WORD = /^=?[\p{L}\p{M}\p{N}'’]+(?:-[\p{L}\p{M}\p{N}'’]+)*$/u;

export type Classes = ReadonlyMap<string, readonly string[]>;

/** Pieces already read, by how they are written: the same word is then one object everywhere. */
export type KnownPieces = Map<string, PatternPiece>;

const EDGE: PatternPiece = { kind: "edge" };
const BLANK: PatternPiece = { kind: "gap", upTo: GAP };

/**
 * Reads one phrase: words with blanks between them; `a|b` one or the other, `a-b` two words as one
 * of them, `=a` exactly this form; `word?` may be left out; `$name` any word of a class; `..` up to
 * three words of any kind; `^` a clause's edge.
 *
 * @param pieces of the same classes, read before; those of this phrase are added
 * @returns the pattern, or plain sentences about every mistake
 */
export function parsePattern(
  text: string,
  classes: Classes,
  pieces: KnownPieces = new Map(),
): { readonly pattern: Pattern; readonly mistakes: readonly string[] } {
  const pattern: PatternPiece[] = [];
  const mistakes: string[] = [];
  for (const part of text.trim().split(/\s+/)) {
    const known = pieces.get(part);
    if (part === "..") pattern.push(BLANK);
    else if (part === "^") pattern.push(EDGE);
    else if (known !== undefined) pattern.push(known);
    else {
      const before = mistakes.length;
      const piece = wordsPiece(part, { classes, mistakes, text });
      if (mistakes.length === before) pieces.set(part, piece);
      pattern.push(piece);
    }
  }
  const first = pattern.find((piece) => piece.kind !== "edge");
  const needed = pattern.some((piece) => piece.kind === "words" && !piece.optional);
  if (!needed) mistakes.push(`The phrase "${text}" needs at least one word that must be there.`);
  if (first?.kind === "gap" || pattern.at(-1)?.kind === "gap") {
    mistakes.push(`The phrase "${text}" must not begin or end with "..".`);
  }
  if (pattern.filter((piece) => piece.kind === "gap").length > MOST_GAPS) {
    mistakes.push(`The phrase "${text}" has more than ${MOST_GAPS} gaps "..".`);
  }
  if (pattern.length > MOST_PIECES) {
    mistakes.push(`The phrase "${text}" has more than ${MOST_PIECES} words; shorten it.`);
  }
  return { pattern, mistakes };
}

function wordsPiece(
  part: string,
  into: { readonly classes: Classes; readonly mistakes: string[]; readonly text: string },
): PatternPiece {
  const optional = part.endsWith("?");
  const body = optional ? part.slice(0, -1) : part;
  const any = body.split("|").flatMap((word) => {
    if (word.startsWith("$")) {
      const members = into.classes.get(word.slice(1));
      if (members !== undefined) return members;
      into.mistakes.push(`There is no class "${word}" for the phrase "${into.text}".`);
      return [];
    }
    if (!WORD.test(word)) {
      into.mistakes.push(`"${word}" in the phrase "${into.text}" is not a word.`);
      return [];
    }
    return [word];
  });
  return { kind: "words", any, optional };
}
