import {
  type Document,
  isAlias,
  isPair,
  isScalar,
  type LineCounter,
  type Scalar,
  visit,
} from "yaml";
import type { Problem } from "../domain/result.ts";

type Report = (offset: number, says: string) => void;

/**
 * Places where YAML would silently read something else than what was meant: text cut off at a `#`,
 * numbers that lose their zeros, references from one place of the file to another.
 */
export function findTraps(file: string, document: Document, lines: LineCounter): Problem[] {
  const problems: Problem[] = [];
  const report: Report = (offset, says) =>
    problems.push({ file, line: lines.linePos(offset).line, says });
  visit(document, (key, node) => {
    if (isAlias(node)) {
      report(
        node.range?.[0] ?? 0,
        `"*${node.source}" refers to another place of the file; write the text out, or put ` +
          `it in quotes if it should begin with a star.`,
      );
    } else if (isScalar(node)) {
      scalarTraps(node, key === "key", report);
    } else if (!isPair(node) && hasAnchor(node)) {
      report(node.range?.[0] ?? 0, anchorSays(node.anchor));
    }
  });
  return problems;
}

function hasAnchor(node: unknown): node is { anchor: string; range?: readonly number[] | null } {
  return typeof node === "object" && node !== null && "anchor" in node && Boolean(node.anchor);
}

function anchorSays(name: string): string {
  return `"&${name}" names a place to copy from; write the text out instead, or put it in quotes.`;
}

function scalarTraps(node: Scalar, isKey: boolean, report: Report): void {
  const offset = node.range?.[0] ?? 0;
  if (node.anchor) report(offset, anchorSays(node.anchor));
  const cut = cutText(node);
  if (cut !== undefined) {
    report(
      offset,
      `The text after "#" is thrown away here ("#${cut}"); put the whole text in quotes, or ` +
        `the remark on a line of its own.`,
    );
  }
  if (node.type === "PLAIN" && typeof node.value === "number") numberTraps(node, isKey, report);
}

function numberTraps(node: Scalar, isKey: boolean, report: Report): void {
  const written = node.source ?? "";
  const offset = node.range?.[0] ?? 0;
  if (/^[-+]?0\d/.test(written) || /^0[xo]/.test(written) || /^[-+]?\.(inf|nan)$/i.test(written)) {
    report(
      offset,
      `"${written}" would be read as the number ${String(node.value)}; write the number ` +
        `plainly, or put it in quotes if it is a text.`,
    );
  } else if (isKey && written !== String(node.value)) {
    report(offset, `"${written}" would be read as ${String(node.value)}; put it in quotes.`);
  }
}

/**
 * The remark that was cut from a plain text: any remark glued to its `#` (`Pull fuse #3`), and any
 * remark at all behind a text of several words.
 */
function cutText(node: Scalar): string | undefined {
  const remark = node.comment;
  if (remark === undefined || remark === null || node.type !== "PLAIN") return undefined;
  const first = remark.split("\n")[0] ?? "";
  const glued = first !== "" && !first.startsWith(" ");
  const severalWords = typeof node.value === "string" && /\s/.test(node.value);
  return glued || severalWords ? first : undefined;
}
