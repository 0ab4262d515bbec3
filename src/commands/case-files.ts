import { readFile } from "node:fs/promises";
import { isAbsolute, join } from "node:path";
import { type Document, isAlias, LineCounter, parseDocument, visit } from "yaml";
import { z } from "zod";
import type { CaseFile } from "../cases/case-file.ts";
import type { Problem, Result } from "../domain/result.ts";
import type { CommandIo } from "./io.ts";

const Words = z.union([z.string(), z.number(), z.boolean(), z.null()]);
const Facts = z.record(z.string(), z.union([Words, z.array(Words)])).nullish();
const List = z
  .union([z.string(), z.array(z.string())])
  .nullish()
  .transform((value) => (value === null || value === undefined ? [] : [value].flat()));

const Case = z.looseObject({
  id: z.union([z.string().min(1), z.number()]).transform(String),
  machine: z
    .looseObject({
      kind: z.string().nullish(),
      fuel: z.string().nullish(),
      volts: z.number().positive().nullish(),
      cylinders: z.number().positive().nullish(),
      hours: z.number().nonnegative().nullish(),
      ageYears: z.number().nonnegative().nullish(),
    })
    .nullish(),
  opening: z.string().nullish(),
  operator: Facts,
  technician: Facts,
  cause: List,
  group: List,
  strict: z.boolean().nullish(),
});

type Raw = z.infer<typeof Case>;

/** What an entry should have been; every entry that is not named here is a fact. */
const expectedAt: Readonly<Record<string, string>> = {
  id: "every case needs an id",
  machine: '"machine" must be a group of entries: kind, fuel, volts and so on',
  "machine.kind": '"machine.kind" must be text',
  "machine.fuel": '"machine.fuel" must be text',
  "machine.volts": '"machine.volts" must be a number above zero, without a unit',
  "machine.cylinders": '"machine.cylinders" must be a number above zero',
  "machine.hours": '"machine.hours" must be a number',
  "machine.ageYears": '"machine.ageYears" must be a number',
  opening: '"opening" must be text',
  operator: '"operator" must be a group of entries, each with a name of its own',
  technician: '"technician" must be a group of entries, each with a name of its own',
  cause: '"cause" must be an id or a list of ids',
  group: '"group" must be one group or a list of groups',
  strict: '"strict" must be true or false',
};

const dropEmpty = <T extends object>(value: T) =>
  Object.fromEntries(Object.entries(value).filter(([, one]) => one !== null && one !== undefined));

/** An entry without a value says nothing, and neither does one in a list. */
function factsOf(raw: Raw["operator"]): CaseFile["operator"] {
  const entries = Object.entries(dropEmpty(raw ?? {}));
  return Object.fromEntries(
    entries.map(([key, value]) => [
      key,
      Array.isArray(value) ? value.filter((one) => one !== null) : value,
    ]),
  );
}

function toCaseFile(raw: Raw): CaseFile {
  return {
    id: raw.id,
    machine: dropEmpty(raw.machine ?? {}),
    opening: raw.opening ?? "",
    operator: factsOf(raw.operator),
    technician: factsOf(raw.technician),
    cause: raw.cause,
    group: raw.group,
    strict: raw.strict ?? false,
  };
}

/** The text of a file named on the command line; `-` is what comes in from stdin. */
export async function readInput(name: string, io: CommandIo): Promise<string> {
  if (name === "-") return io.stdin();
  return readFile(isAbsolute(name) ? name : join(io.cwd, name), "utf8");
}

export interface CaseFiles {
  readonly cases: readonly CaseFile[];
  /** True where the file held a list, so that a list goes out again. */
  readonly isList: boolean;
}

/** Reads one case or a list of cases from YAML or JSON text. */
export function parseCases(text: string, file: string): Result<CaseFiles> {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, logLevel: "error" });
  const lineAt = (offset: number | null) => (offset === null ? 1 : lines.linePos(offset).line);
  const plain = plainData(document);
  if ("says" in plain) {
    const says = `this is not readable as YAML or JSON: ${plain.says}`;
    return { ok: false, problems: [{ file, line: lineAt(plain.offset), says }] };
  }
  const { data } = plain;
  const isList = Array.isArray(data);
  const items: readonly unknown[] = isList ? data : [data];
  const problems: Problem[] = [];
  const cases: CaseFile[] = [];
  items.forEach((item, index) => {
    const parsed = Case.safeParse(item);
    if (parsed.success) cases.push(toCaseFile(parsed.data));
    else {
      for (const { path } of parsed.error.issues) {
        const keys = path.map(String);
        const line = lineAt(offsetOf(document, isList ? [String(index), ...keys] : keys));
        problems.push({ file, line, at: keys.join("."), says: expected(keys) });
      }
    }
  });
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: { cases, isList } };
}

interface Broken {
  readonly says: string;
  readonly offset: number | null;
}

/** The data of a document, or the first thing that keeps it from being read at all. */
function plainData(document: Document.Parsed): { readonly data: unknown } | Broken {
  const [error] = document.errors;
  if (error !== undefined) {
    const [first = ""] = error.message.split("\n");
    const says = first.replace(/ at line \d+, column \d+:?$/, "").replace(/; please use .*/, "");
    return { says, offset: error.pos[0] };
  }
  try {
    return { data: document.toJS() };
  } catch (thrown) {
    // A name that stands for nothing, or names nested to fill the memory, show only here.
    const says = thrown instanceof Error ? thrown.message : String(thrown);
    return { says, offset: firstAlias(document) };
  }
}

function firstAlias(document: Document.Parsed): number | null {
  let offset: number | null = null;
  visit(document, (_, node) => {
    if (!isAlias(node) || node.resolve(document) !== undefined) return;
    offset = rangeOf(node);
    return visit.BREAK;
  });
  return offset;
}

function expected(path: readonly string[]): string {
  const at = path.join(".");
  if (at === "") return "a case is expected here, with at least an id";
  return expectedAt[at] ?? `"${at}" must be text, a number or a list of these`;
}

/** Where an entry stands, or the nearest thing around it that is there. */
function offsetOf(document: Document.Parsed, path: readonly string[]): number | null {
  for (let length = path.length; length > 0; length -= 1) {
    const offset = rangeOf(document.getIn(path.slice(0, length), true));
    if (offset !== null) return offset;
  }
  return rangeOf(document.contents);
}

function rangeOf(node: unknown): number | null {
  if (typeof node !== "object" || node === null || !("range" in node)) return null;
  const { range } = node;
  return Array.isArray(range) && typeof range[0] === "number" ? range[0] : null;
}

/** Problems as plain lines: file, line and a sentence. */
export function problemLines(problems: readonly Problem[]): string {
  return problems
    .map(
      ({ file, line, says }) =>
        `${[file, line].filter((one) => one !== undefined).join(":")}: ${says}\n`,
    )
    .join("");
}
