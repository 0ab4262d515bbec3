import type { z } from "zod";
import type { Problem } from "../domain/result.ts";
import { checkShape } from "./explain-issue.ts";
import type { Path, SourceFile } from "./source-file.ts";

/** What is left of a file when its broken items are set aside. */
export interface Salvaged<T> {
  /** Undefined where nothing of the file can be used. */
  readonly value: T | undefined;
  readonly problems: readonly Problem[];
  /** Ids of what was set aside: mentioning them elsewhere is no mistake of its own. */
  readonly broken: readonly string[];
}

/** Sections that are one thing and not a list of items. */
const undivided: readonly string[] = ["rates", "words", "negations"];

/** Checks a file item by item, so that one mistake does not hide those in the rest of the file. */
export function salvage<T>(source: SourceFile, schema: z.ZodType<T>): Salvaged<T> {
  const whole = checkShape(source, schema);
  if (whole.value !== undefined) return { ...whole, broken: [] };
  const { data, broken } = withoutItems(source.data, whole.places);
  const rest = checkShape({ ...source, data }, schema);
  return rest.value === undefined
    ? { value: undefined, problems: whole.problems, broken: idsIn(source.data) }
    : { value: rest.value, problems: whole.problems, broken };
}

/** Everything that a file may define: its sections, and the ids in them. */
export function idsIn(data: unknown): string[] {
  if (!isRecord(data)) return [];
  return Object.entries(data).flatMap(([key, items]) => [
    key,
    ...(isRecord(items) ? Object.keys(items) : []),
  ]);
}

function withoutItems(
  data: unknown,
  places: readonly Path[],
): { data: unknown; broken: readonly string[] } {
  if (!isRecord(data)) return { data, broken: [] };
  const kept: Record<string, unknown> = { ...data };
  const broken: string[] = [];
  for (const [section, id] of places) {
    const name = String(section ?? "");
    const items = kept[name];
    if (id === undefined || undivided.includes(name) || !isRecord(items)) {
      broken.push(name, ...(isRecord(items) ? Object.keys(items) : []));
      delete kept[name];
    } else {
      const { [String(id)]: _, ...others } = items;
      kept[name] = others;
      broken.push(String(id));
    }
  }
  return { data: kept, broken };
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
