import { z } from "zod";
import type { Problem } from "../domain/result.ts";
import { suggestion } from "./nearest-word.ts";
import { type Path, problemIn, type SourceFile } from "./source-file.ts";

/**
 * Checks a file's data against its schema; every mistake becomes a plain sentence with its line.
 * A schema that knows better says so itself (its own `error` text wins over the table below).
 * @returns the value, or the mistakes and the paths at which they stand
 */
export function checkShape<T>(
  source: SourceFile,
  schema: z.ZodType<T>,
): { value: T | undefined; problems: Problem[]; places: Path[] } {
  const parsed = schema.safeParse(source.data, { error: (issue) => explainIssue(issue) });
  if (parsed.success) return { value: parsed.data, problems: [], places: [] };
  const places: Path[] = [];
  const problems = parsed.error.issues.flatMap((issue) => {
    const path = issue.path.map((step) => (typeof step === "symbol" ? String(step) : step));
    places.push(path);
    if (issue.code !== "unrecognized_keys") return [problemIn(source, path, issue.message)];
    if (path.length < 2) places.push(...issue.keys.map((key) => [...path, key]));
    const known = issue.message === "" ? [] : issue.message.split(" ");
    return issue.keys.map((key) =>
      problemIn(
        source,
        [...path, key],
        `"${key}" is not a key that belongs here.${suggestion(key, known)}`,
      ),
    );
  });
  return { value: undefined, problems, places };
}

/** One sentence per kind of mistake: what was expected, what came. */
function explainIssue(issue: z.core.$ZodRawIssue): string {
  switch (issue.code) {
    case "invalid_type":
      return wrongType(issue.expected, issue.input);
    case "invalid_value":
      return (
        `${quoted(issue.input)} is not one of the words allowed ` +
        `here.${suggestion(String(issue.input), issue.values.map(String))}`
      );
    case "unrecognized_keys":
      return knownKeys(issue.inst).join(" ");
    case "invalid_key":
      return (
        `${quoted(issue.input)} cannot stand here as a key: use one of the known words, or for ` +
        `an id small letters, digits and ` +
        `hyphens.${suggestion(String(issue.input), knownKeys(issue.inst))}`
      );
    case "too_small":
      return issue.origin === "string" || issue.origin === "array"
        ? "This must not be empty."
        : `This must be ${issue.inclusive === false ? "more than" : "at least"} ${issue.minimum}.`;
    case "too_big":
      return issue.origin === "string"
        ? `This text is too long: ${String(issue.input).length} letters, at most ` +
            `${issue.maximum} fit on the screen.`
        : `This must be at most ${issue.maximum}.`;
    case "invalid_format":
      return (
        `${quoted(issue.input)} is not written as expected: an id has small letters, digits ` +
        `and hyphens and begins with a letter.`
      );
    case "invalid_union":
      return `${quoted(issue.input)} is not one of the forms that can stand here.`;
    default:
      return "This is not written as expected here; compare with the template.";
  }
}

const typeNames: Readonly<Record<string, string>> = {
  string: "a text",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  array: "a list",
  object: "keys with values below it",
  record: "keys with values below it",
};

function wrongType(expected: string, input: unknown): string {
  const wanted = typeNames[expected] ?? expected;
  if (input === undefined) return `This is missing: ${wanted} is needed.`;
  if (input === null) return `Nothing stands here, but ${wanted} is needed.`;
  if (expected === "string" && typeof input !== "object") {
    return `A text is needed here, but this is read as ${quoted(input)}; put it in quotes.`;
  }
  const comma = typeof input === "string" && /^-?\d+,\d+$/.test(input);
  const hint = comma ? ` Write it with a point: ${input.replace(",", ".")}.` : "";
  return `Here ${wanted} is needed, not ${quoted(input)}.${hint}`;
}

function quoted(input: unknown): string {
  if (Array.isArray(input)) return "a list";
  if (typeof input === "object" && input !== null) return "keys with values";
  return typeof input === "string" ? `"${input}"` : String(input);
}

function knownKeys(schema: unknown): string[] {
  if (schema instanceof z.ZodObject) return Object.keys(schema.shape);
  if (schema instanceof z.ZodRecord && schema.keyType instanceof z.ZodEnum) {
    return schema.keyType.options.map(String);
  }
  return [];
}
