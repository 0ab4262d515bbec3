import type { Font } from "./font.ts";

export interface BlockShape {
  readonly font: Font;
  /** Type size, px. */
  readonly size: number;
  /** Room for a line, px. */
  readonly width: number;
  /** Lines at most; what does not fit is cut with "…". */
  readonly lines: number;
}

const MORE = "…";
/** Splits a word into what people take for one character; costly to make. */
const characters = new Intl.Segmenter();

/**
 * Breaks a text into lines between words; a word that is longer than a line is broken.
 * @returns at least one line, each at most as wide as there is room, unless a single letter is wider
 */
export function breakLines(text: string, shape: BlockShape): string[] {
  const fits = (line: string) => shape.font.width(line) * shape.size <= shape.width;
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/[ \n\t]+/).filter((part) => part !== "")) {
    if (line !== "" && fits(`${line} ${word}`)) {
      line = `${line} ${word}`;
      continue;
    }
    if (line !== "") lines.push(line);
    const pieces = breakWord(word, fits);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? "";
  }
  lines.push(line);
  if (lines.length <= shape.lines) return lines;
  return [...lines.slice(0, shape.lines - 1), shorten(lines[shape.lines - 1] ?? "", fits)];
}

function breakWord(word: string, fits: (line: string) => boolean): string[] {
  const pieces: string[] = [];
  let piece = "";
  for (const { segment } of characters.segment(word)) {
    if (piece !== "" && !fits(piece + segment)) {
      pieces.push(piece);
      piece = "";
    }
    piece += segment;
  }
  return [...pieces, piece];
}

function shorten(line: string, fits: (line: string) => boolean): string {
  let kept = line;
  while (kept !== "" && !fits(kept + MORE)) {
    kept = kept.includes(" ") ? kept.replace(/ [^ ]*$/, "") : [...kept].slice(0, -1).join("");
  }
  return kept + MORE;
}
