import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { z } from "zod";
import type { Problem, Result } from "../domain/result.ts";
import type { Urgency, UrgencyFacts } from "../domain/urgency.ts";
import { MachineKindId } from "../domain/vocabulary.ts";
import { checkShape } from "./explain-issue.ts";
import { readYaml } from "./read-yaml.ts";
import { Id, Line, listOf, Source } from "./schema-words.ts";
import { problemIn } from "./source-file.ts";

const When = z
  .strictObject({
    stated: z.enum(["high", "normal", "low"]).optional(),
    kinds: listOf(MachineKindId).optional(),
    months: listOf(z.number().int().min(1).max(12)).optional(),
    flags: listOf(Id).optional(),
    comeback: z.boolean().optional(),
    "waited-hours": z.number().min(0).optional(),
  })
  .refine((when) => Object.keys(when).length > 0, {
    error: "Say when the rule holds: stated, kinds, months, flags, comeback or waited-hours.",
  });

/** The section `urgency:` of `flows/shared/urgency.yaml`. */
export const UrgencyText = z.strictObject({
  levels: z.strictObject({ high: z.number(), normal: z.number() }),
  rules: z.record(Id, z.strictObject({ when: When, points: z.number().int(), because: Line })),
});
export type UrgencyRules = z.infer<typeof UrgencyText>;

const UrgencyFile = z.strictObject({ source: Source, urgency: UrgencyText });

/**
 * Reads the rules of urgency.
 * @param folder the `flows/` folder
 * @param flags red flags that rules may name; null leaves them unchecked
 * @returns the rules, or every mistake with file and line
 * @throws what the file system throws when the file cannot be read
 */
export async function loadUrgency(
  folder: string,
  flags: ReadonlySet<string> | null,
): Promise<Result<UrgencyRules>> {
  const path = join(folder, "shared", "urgency.yaml");
  return readUrgency(await readFile(path, "utf8"), flags);
}

/** The part of `loadUrgency` that touches no disk. */
export function readUrgency(text: string, flags: ReadonlySet<string> | null): Result<UrgencyRules> {
  const { source, problems } = readYaml("flows/shared/urgency.yaml", "shared", text);
  if (problems.length > 0) return { ok: false, problems };
  const shape = checkShape(source, UrgencyFile);
  if (shape.value === undefined) return { ok: false, problems: shape.problems };
  const { urgency } = shape.value;
  const found: Problem[] = Object.entries(urgency.rules).flatMap(([id, { when }]) =>
    (when.flags ?? [])
      .filter((flag) => flags !== null && !flags.has(flag))
      .map((flag) =>
        problemIn(source, ["urgency", "rules", id, "when"], `There is no red flag "${flag}".`),
      ),
  );
  if (urgency.levels.high <= urgency.levels.normal) {
    found.push(
      problemIn(source, ["urgency", "levels"], "High must begin at more points than normal."),
    );
  }
  return found.length > 0 ? { ok: false, problems: found } : { ok: true, value: urgency };
}

type Rules = UrgencyRules["rules"];
interface Listed {
  readonly entries: readonly [string, Rules[string]][];
  /** Hours of waiting at which any rule begins to hold. */
  readonly steps: readonly number[];
}
/** Each set of rules as a list: a list of calls asks for it once for every call. */
const listed = new WeakMap<Rules, Listed>();

function listOfRules(rules: Rules): Listed {
  const known = listed.get(rules);
  if (known !== undefined) return known;
  const steps = Object.values(rules).flatMap(({ when }) => when["waited-hours"] ?? []);
  const list = { entries: Object.entries(rules), steps: steps.sort((a, b) => a - b) };
  listed.set(rules, list);
  return list;
}

/** Adds up the rules that hold. @returns the level, the points, each reason, and how long it stays so */
export function urgencyOf({ levels, rules }: UrgencyRules, facts: UrgencyFacts): Urgency {
  const { entries, steps } = listOfRules(rules);
  const reasons = entries
    .filter(([, { when }]) => holds(when, facts))
    .map(([rule, { points }]) => ({ rule, points }))
    .sort((a, b) => b.points - a.points);
  const points = reasons.reduce((sum, reason) => sum + reason.points, 0);
  const level = points >= levels.high ? "high" : points >= levels.normal ? "normal" : "low";
  const untilHours = steps.find((hours) => hours > facts.waitedHours) ?? Number.POSITIVE_INFINITY;
  return { level, points, reasons, untilHours };
}

function holds(when: z.infer<typeof When>, facts: UrgencyFacts): boolean {
  const waited = when["waited-hours"];
  return (
    (when.stated === undefined || when.stated === facts.stated) &&
    (when.kinds === undefined || when.kinds.includes(facts.kind)) &&
    (when.months === undefined || when.months.includes(facts.month)) &&
    (when.flags === undefined || when.flags.some((flag) => facts.flags.includes(flag))) &&
    (when.comeback === undefined || when.comeback === facts.comeback) &&
    (waited === undefined || facts.waitedHours >= waited)
  );
}
