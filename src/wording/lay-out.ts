import type { Line } from "../domain/effects.ts";
import type { TextEntity } from "../domain/rendered.ts";

/** A line whose words are chosen. */
export interface WordedLine {
  readonly text: string;
  readonly style?: Line["style"];
  readonly gap?: boolean;
}

/** Words and forms that the marks of the lines need, in the language of the message. */
export interface Marks {
  /** Stands before a caution: a word, so that it also warns where signs and colours are not seen. */
  readonly caution: () => string;
  /** A number as it stands before a step. */
  readonly number: (value: number) => string;
}

export interface LaidOut {
  readonly text: string;
  readonly entities: readonly TextEntity[];
}

const BULLET = "• ";
const LONE_STEP = "▸ ";

/**
 * Lays lines out as plain text and the stretches that are shown differently. Lines without text are
 * left out; several steps under one heading are numbered.
 * @returns text without white space at its ends, and entities sorted by offset
 */
export function layOut(lines: readonly WordedLine[], marks: Marks): LaidOut {
  const entities: TextEntity[] = [];
  let text = "";
  let gap = false;
  const prefixes = stepPrefixes(lines, marks);
  for (const [index, line] of lines.entries()) {
    gap ||= line.gap === true;
    const words = line.text.trim();
    if (words === "") continue;
    if (text !== "") text += gap ? "\n\n" : "\n";
    gap = false;
    const prefix = line.style === "step" ? (prefixes.get(index) ?? "") : markOf(line, marks);
    entities.push(...entitiesOf(line, text.length, { prefix, words }));
    text += prefix + words;
  }
  return { text, entities };
}

function markOf(line: WordedLine, marks: Marks): string {
  if (line.style === "bullet") return BULLET;
  return line.style === "caution" ? `${marks.caution()} ` : "";
}

function entitiesOf(
  line: WordedLine,
  offset: number,
  { prefix, words }: { prefix: string; words: string },
): TextEntity[] {
  if (line.style === "heading") return [{ type: "bold", offset, length: words.length }];
  if (line.style === "quote") return [{ type: "blockquote", offset, length: words.length }];
  if (line.style !== "caution") return [];
  const length = prefix.trimEnd().length;
  return length === 0 ? [] : [{ type: "bold", offset, length }];
}

/** Numbers for the steps between two headings; a step that stands alone needs none. */
function stepPrefixes(lines: readonly WordedLine[], marks: Marks): ReadonlyMap<number, string> {
  const prefixes = new Map<number, string>();
  let group: number[] = [];
  const close = () => {
    for (const [place, index] of group.entries()) {
      prefixes.set(index, group.length === 1 ? LONE_STEP : `${marks.number(place + 1)}. `);
    }
    group = [];
  };
  for (const [index, line] of lines.entries()) {
    if (line.style === "heading") close();
    if (line.style === "step" && line.text.trim() !== "") group.push(index);
  }
  close();
  return prefixes;
}
