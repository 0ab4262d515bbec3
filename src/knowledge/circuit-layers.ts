import type { Problem } from "../domain/result.ts";
import type { SourceFile } from "./source-file.ts";

/** A circuit file with those it is based on, the most special first. */
export interface Layers {
  readonly id: string;
  readonly files: readonly SourceFile[];
  /** The files laid over each other: maps join key by key, everything else is replaced. */
  readonly data: Record<string, unknown>;
}

/** Keys that a file says for itself and never hands on. */
const OWN_KEYS: ReadonlySet<string> = new Set([
  "id",
  "title",
  "for",
  "weighed-unstated",
  "abstract",
  "based-on",
]);

export function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/**
 * Follows `based-on` down to the bottom and lays the files over each other.
 * @param files every circuit file by id
 * @returns the layers, or nothing after adding to `problems`
 */
export function layerFiles(
  id: string,
  files: ReadonlyMap<string, SourceFile>,
  problems: Problem[],
): Layers | undefined {
  const chain: SourceFile[] = [];
  let data: Record<string, unknown> = {};
  let next: unknown = id;
  while (next !== undefined) {
    const above = chain.at(-1);
    const file = typeof next === "string" ? files.get(next) : undefined;
    if (file === undefined || chain.includes(file) || !isRecord(file.data)) {
      const says = `based-on names "${String(next)}", which is no circuit file of its own`;
      problems.push(problemAtPath(above === undefined ? [] : [above], ["based-on"], says));
      return undefined;
    }
    const inherited = chain.length === 0 ? file.data : withoutOwn(file.data);
    data = layOver(inherited, data);
    // What an upper file removes must not come back from a lower one.
    chain.push(file);
    next = file.data["based-on"];
  }
  return { id, files: chain, data: withRemovals(data, chain) };
}

function withoutOwn(data: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(data).filter(([key]) => !OWN_KEYS.has(key)));
}

function layOver(
  under: Record<string, unknown>,
  over: Record<string, unknown>,
): Record<string, unknown> {
  const joined = { ...under };
  for (const [key, value] of Object.entries(over)) {
    const below = joined[key];
    joined[key] = isRecord(below) && isRecord(value) ? layOver(below, value) : value;
  }
  return joined;
}

/** Takes out of every section the ids that any of the files removes. */
function withRemovals(
  data: Record<string, unknown>,
  chain: readonly SourceFile[],
): Record<string, unknown> {
  const gone = new Set<string>();
  for (const { data: own } of chain) {
    const list = isRecord(own) ? own["remove"] : undefined;
    if (Array.isArray(list)) for (const name of list) gone.add(String(name));
  }
  return Object.fromEntries(
    Object.entries(data).map(([key, value]) => [
      key,
      isRecord(value)
        ? Object.fromEntries(Object.entries(value).filter(([name]) => !gone.has(name)))
        : value,
    ]),
  );
}

/** A problem at a path: in the most special file that holds the whole path, else the nearest. */
export function problemAtPath(
  files: readonly SourceFile[],
  path: readonly PropertyKey[],
  says: string,
): Problem {
  const steps = path.map((step) => (typeof step === "number" ? step : String(step)));
  let best: SourceFile | undefined;
  let deepest = -1;
  for (const file of files) {
    const depth = depthOf(file.data, steps);
    if (depth > deepest) {
      best = file;
      deepest = depth;
    }
  }
  if (best === undefined) return { says };
  return { file: best.file, line: best.lineOf(steps), at: steps.join("."), says };
}

function depthOf(data: unknown, path: readonly (string | number)[]): number {
  let here = data;
  let depth = 0;
  for (const step of path) {
    if (isRecord(here)) here = here[String(step)];
    else if (Array.isArray(here)) here = here[Number(step)];
    else here = undefined;
    if (here === undefined) break;
    depth += 1;
  }
  return depth;
}
