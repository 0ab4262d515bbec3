import { type Document, isMap, isPair, isScalar, isSeq, type LineCounter } from "yaml";
import type { Problem } from "../domain/result.ts";

/** A step into the data of a file: a key, or a position in a list. */
export type Path = readonly (string | number)[];

/** A knowledge file that was read: its data, and where in the text each part of it stands. */
export interface SourceFile {
  /** As shown to people, for example `flows/systems/cranking.yaml`. */
  readonly file: string;
  /** File name without its ending: the id of the system, machine or questionnaire. */
  readonly id: string;
  /** Folder below `flows/`: systems, questions, shared or machines. */
  readonly folder: string;
  readonly data: unknown;
  /** Line (from 1) of the deepest part of the path that exists in the text. */
  readonly lineOf: (path: Path) => number;
}

/** Something read from a file together with its place. */
export interface Placed<T> {
  readonly id: string;
  readonly value: T;
  readonly source: SourceFile;
  readonly path: Path;
  /** Where its figures come from: its own source, or the file's; empty where neither is given. */
  readonly basis: string;
}

/**
 * A problem at a placed thing, or at a part of it.
 * @param inside path below the thing
 */
export function problemAt(place: Placed<unknown>, says: string, inside: Path = []): Problem {
  return problemIn(place.source, [...place.path, ...inside], says);
}

/** A problem at a path of a file. */
export function problemIn(source: SourceFile, path: Path, says: string): Problem {
  const at = path.join(".");
  return { file: source.file, line: source.lineOf(path), ...(at === "" ? {} : { at }), says };
}

/** Makes the line finder of a parsed document. */
export function lineFinder(document: Document, lines: LineCounter): (path: Path) => number {
  return (path) => {
    let node: unknown = document.contents;
    let offset = 0;
    for (const step of path) {
      const next = child(node, step);
      if (next === undefined) break;
      offset = next.offset ?? offset;
      node = next.node;
    }
    return Math.max(1, lines.linePos(offset).line);
  };
}

function child(
  node: unknown,
  step: string | number,
): { offset?: number; node: unknown } | undefined {
  if (isMap(node)) {
    const pair = node.items.find(
      (item) => isScalar(item.key) && String(item.key.value) === `${step}`,
    );
    if (!isPair(pair) || !isScalar(pair.key)) return undefined;
    return { ...startOf(pair.key), node: pair.value };
  }
  if (isSeq(node) && typeof step === "number" && step < node.items.length) {
    const item: unknown = node.items[step];
    return { ...startOf(item), node: item };
  }
  return undefined;
}

function startOf(node: unknown): { offset?: number } {
  const range = isScalar(node) || isMap(node) || isSeq(node) ? node.range : undefined;
  return range ? { offset: range[0] } : {};
}
