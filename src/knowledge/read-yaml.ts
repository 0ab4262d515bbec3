import { type Document, LineCounter, parseDocument, type YAMLError } from "yaml";
import type { Problem } from "../domain/result.ts";
import { idsIn } from "./salvage.ts";
import { lineFinder, type SourceFile } from "./source-file.ts";
import { findTraps } from "./yaml-traps.ts";

/** Plain sentences for what the YAML parser refuses, by its own codes. */
const sentences: Readonly<Record<string, string>> = {
  DUPLICATE_KEY: "The same key stands twice in one place; remove one of the two.",
  TAB_AS_INDENT: "A tab is used for indenting; use spaces.",
  BAD_INDENT: "This line is not indented like its neighbours; line it up with them.",
  MISSING_CHAR: "Something is missing here: a colon, a comma, a bracket or a closing quote.",
  BLOCK_AS_IMPLICIT_KEY:
    'There are two colons in this line; put the text in quotes if it holds ": ".',
  MULTILINE_IMPLICIT_KEY: "A key must stand on one line, with a colon behind it.",
  BAD_SCALAR_START: "A text cannot begin with this sign; put the text in quotes.",
  UNEXPECTED_TOKEN: "This does not belong here; is a quote or a bracket missing before it?",
  BAD_DQ_ESCAPE: 'A backslash inside double quotes must be doubled ("\\\\").',
  MULTIPLE_DOCS: 'A file holds one document; remove the line "---".',
  BLOCK_IN_FLOW: "Inside { } or [ ] everything must stand between commas, not on indented lines.",
};

/**
 * Reads one knowledge file.
 * @param file name shown to people · @param folder below `flows/` · @param text its content
 * @returns the file, everything the parser or the trap finder refuses, all at once, and what a
 *   refused file would have defined
 */
export function readYaml(
  file: string,
  folder: string,
  text: string,
): { source: SourceFile; problems: Problem[]; ids: readonly string[] } {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, version: "1.2", schema: "core" });
  const problems = ownMistakes(document.errors).map((error) =>
    yamlProblem(file, error, { lines, text }),
  );
  if (problems.length === 0) problems.push(...findTraps(file, document, lines));
  const data: unknown = problems.length === 0 ? document.toJS() : undefined;
  const id = (file.split("/").at(-1) ?? file).replace(/\.yaml$/, "");
  const ids = problems.length === 0 ? [] : [id, ...idsIn(bestEffort(document))];
  return { source: { file, id, folder, data, lineOf: lineFinder(document, lines) }, problems, ids };
}

/** After one mistake the parser stumbles on, so of those only the first is told. */
function ownMistakes(errors: readonly YAMLError[]): readonly YAMLError[] {
  const first =
    errors.find((error) => error.code === "TAB_AS_INDENT") ??
    errors.find((error) => error.code !== "DUPLICATE_KEY");
  return first === undefined ? errors : [first];
}

/** What can be read of a text with mistakes; an undefined reference makes even that fail. */
function bestEffort(document: Document): unknown {
  try {
    return document.toJS();
  } catch {
    return undefined;
  }
}

function yamlProblem(
  file: string,
  error: YAMLError,
  { lines, text }: { readonly lines: LineCounter; readonly text: string },
): Problem {
  const plain = sentences[error.code] ?? "This cannot be read; check quotes, colons and indenting.";
  const { line } = lines.linePos(error.pos[0]);
  if (!/closing .quote/.test(error.message)) return { file, line, says: plain };
  return { file, line: openQuote(text) ?? line, says: "The closing quote is missing here." };
}

/** The parser misses a quote at the end of the file; people forget it on the line of the first. */
function openQuote(text: string): number | undefined {
  const odd = text
    .split("\n")
    .findIndex((line) => (line.match(/(?<!\\)"/g)?.length ?? 0) % 2 === 1);
  return odd < 0 ? undefined : odd + 1;
}
