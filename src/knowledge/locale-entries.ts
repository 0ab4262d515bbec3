import { createHash } from "node:crypto";
import {
  type Entry,
  type Expression,
  FluentParser,
  FluentSerializer,
  lineOffset,
  type Message,
  type Pattern,
  type SelectExpression,
  type Term,
} from "@fluent/syntax";
import type { Problem } from "../domain/result.ts";

/** One message of a locale file, as far as it can be compared with its English. */
export interface LocaleEntry {
  /** Terms, which only other messages use, begin with a dash. */
  readonly key: string;
  readonly file: string;
  readonly line: number;
  readonly variables: ReadonlySet<string>;
  /** The forms a message has for each text variable, the forms for numbers left out. */
  readonly forms: ReadonlyMap<string, ReadonlySet<string>>;
  /** Messages and terms it draws in. */
  readonly references: readonly string[];
  /** UTF-16 units of its longest form, what stands in for variables left out. */
  readonly length: number;
  /** Of its own text. */
  readonly digest: string;
  /** The digest of the English it was made from, from the comment above it. */
  readonly madeFrom: string | null;
  /** The text of a message without variables or forms; null for the others. */
  readonly plain: string | null;
}

export interface LocaleFile {
  readonly entries: readonly LocaleEntry[];
  readonly problems: readonly Problem[];
  /** What the line `# reviewed: …` at the head says; null where there is none. */
  readonly reviewed: string | null;
}

/** What a translation carries above it: `# en: 1a2b3c4d`. */
const MADE_FROM = /^en: ?([0-9a-f]{8})$/m;
const REVIEWED = /^reviewed: *(\S.*)$/m;

/** CLDR names of the forms that numbers take. */
const numberForms = new Set(["zero", "one", "two", "few", "many", "other"]);
const knownFunctions = new Set(["NUMBER", "DATETIME"]);

/** @returns eight hex digits that change whenever the text does */
export function textDigest(text: string): string {
  return createHash("sha256").update(text.trim()).digest("hex").slice(0, 8);
}

/**
 * Reads a Fluent file.
 * @param file its name as people know it · @param text its content
 * @returns its messages; what cannot be read as a problem each, nothing thrown
 */
export function readLocaleFile(file: string, text: string): LocaleFile {
  const resource = new FluentParser().parse(text);
  const lineAt = (entry: Entry) => lineOffset(text, startOf(entry)) + 1;
  const problems: Problem[] = [];
  const entries: LocaleEntry[] = [];
  let reviewed: string | null = null;
  for (const entry of resource.body) {
    if (entry.type === "Junk") problems.push(junkProblem(entry, { file, text }));
    else if (entry.type === "Message" || entry.type === "Term") {
      const { value, problems: found } = readEntry(entry, { file, line: lineAt(entry) });
      entries.push(value);
      problems.push(...found);
    } else if (entries.length === 0) reviewed ??= REVIEWED.exec(entry.content)?.[1] ?? null;
  }
  return { entries, problems, reviewed };
}

function startOf(entry: Entry): number {
  const node = entry.type === "Message" || entry.type === "Term" ? entry.id : entry;
  return node.span?.start ?? 0;
}

function junkProblem(
  entry: Extract<Entry, { type: "Junk" }>,
  { file, text }: { file: string; text: string },
): Problem {
  const [annotation] = entry.annotations;
  const start = entry.content.split("\n")[0]?.trim() ?? "";
  const why = annotation?.message ?? "it is no message";
  return {
    file,
    line: lineOffset(text, entry.span?.start ?? 0) + 1,
    says: `The message that begins with "${start}" cannot be read and would be missing: ${why}.`,
  };
}

interface Found {
  readonly variables: Set<string>;
  readonly forms: Map<string, Set<string>>;
  readonly references: string[];
  readonly functions: string[];
}

function readEntry(entry: Message | Term, place: { file: string; line: number }) {
  const found: Found = { variables: new Set(), forms: new Map(), references: [], functions: [] };
  const key = entry.type === "Term" ? `-${entry.id.name}` : entry.id.name;
  const length = entry.value === null ? 0 : patternLength(entry.value, found);
  const bare = entry.clone();
  bare.comment = null;
  const problems: Problem[] = found.functions
    .filter((name) => !knownFunctions.has(name))
    .map((name) => ({ ...place, at: key, says: `There is no function ${name}().` }));
  if (entry.value === null) {
    problems.push({ ...place, at: key, says: "This message has no text." });
  }
  const value: LocaleEntry = {
    key,
    ...place,
    variables: found.variables,
    forms: found.forms,
    references: found.references,
    length,
    digest: textDigest(new FluentSerializer().serializeEntry(bare)),
    madeFrom: MADE_FROM.exec(entry.comment?.content ?? "")?.[1] ?? null,
    plain: entry.value === null ? null : plainText(entry.value),
  };
  return { value, problems };
}

function plainText(pattern: Pattern): string | null {
  let text = "";
  for (const element of pattern.elements) {
    if (element.type === "TextElement") text += element.value;
    else if (element.expression.type === "StringLiteral") text += element.expression.parse().value;
    else return null;
  }
  return text;
}

/** Length of the longest form; on the way notes what the pattern uses. */
function patternLength(pattern: Pattern, found: Found): number {
  let length = 0;
  for (const element of pattern.elements) {
    length +=
      element.type === "TextElement"
        ? element.value.length
        : expressionLength(element.expression, found);
  }
  return length;
}

function expressionLength(expression: Expression, found: Found): number {
  switch (expression.type) {
    case "StringLiteral":
      return expression.parse().value.length;
    case "VariableReference":
      found.variables.add(expression.id.name);
      return 0;
    case "MessageReference":
      found.references.push(expression.id.name);
      return 0;
    case "TermReference":
      found.references.push(`-${expression.id.name}`);
      return 0;
    case "FunctionReference":
      found.functions.push(expression.id.name);
      for (const argument of expression.arguments.positional) expressionLength(argument, found);
      return 0;
    case "Placeable":
      return expressionLength(expression.expression, found);
    case "SelectExpression":
      return selectLength(expression, found);
    default:
      return 0;
  }
}

function selectLength(select: SelectExpression, found: Found): number {
  expressionLength(select.selector, found);
  if (select.selector.type === "VariableReference") {
    const { name } = select.selector.id;
    const forms = found.forms.get(name) ?? new Set();
    found.forms.set(name, forms);
    for (const { key } of select.variants) {
      if (key.type === "Identifier" && !numberForms.has(key.name)) forms.add(key.name);
    }
  }
  return Math.max(...select.variants.map((variant) => patternLength(variant.value, found)));
}
