import { readFile } from "node:fs/promises";
import { isAbsolute, join } from "node:path";
import { LineCounter, parseDocument } from "yaml";
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
  id: z.union([z.string(), z.number()]).transform(String),
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

const dropEmpty = <T extends object>(value: T) =>
  Object.fromEntries(Object.entries(value).filter(([, one]) => one !== null && one !== undefined));

function toCaseFile(raw: Raw): CaseFile {
  return {
    id: raw.id,
    machine: dropEmpty(raw.machine ?? {}),
    opening: raw.opening ?? "",
    operator: raw.operator ?? {},
    technician: raw.technician ?? {},
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
  const document = parseDocument(text, { lineCounter: lines });
  const broken = document.errors[0];
  if (broken !== undefined) {
    const says = `this is not readable as YAML or JSON: ${broken.message.split("\n")[0] ?? ""}`;
    return { ok: false, problems: [{ file, line: lines.linePos(broken.pos[0]).line, says }] };
  }
  const data: unknown = document.toJS();
  const isList = Array.isArray(data);
  const items: readonly unknown[] = isList ? data : [data];
  const problems: Problem[] = [];
  const cases: CaseFile[] = [];
  items.forEach((item, index) => {
    const parsed = Case.safeParse(item);
    if (parsed.success) cases.push(toCaseFile(parsed.data));
    else problems.push(...parsed.error.issues.map((issue) => problem(issue.path, index)));
  });
  function problem(path: readonly PropertyKey[], index: number): Problem {
    const keys = isList ? [index, ...path] : [...path];
    const node = document.getIn(keys.map(String), true);
    const range = rangeOf(node) ?? rangeOf(document.contents);
    const at = path.map(String).join(".");
    const says =
      at === ""
        ? "a case is expected here, with at least an id"
        : at === "id"
          ? "every case needs an id"
          : `"${at}" is of the wrong kind: text, a number or a list is expected`;
    return { file, line: range === null ? 1 : lines.linePos(range).line, at, says };
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: { cases, isList } };
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
