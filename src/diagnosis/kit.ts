import type { Evidence, Situation } from "../domain/evidence.ts";
import type { Kit, KitItem } from "../domain/triage.ts";
import { type Belief, updateBelief } from "./belief.ts";
import { remediesOf } from "./fault-repair.ts";
import { type Model, somethingElseOf } from "./model.ts";

export interface KitOptions {
  /** Most parts that can be loaded; absent: as many as pay. */
  readonly capacity?: number;
  readonly belief?: Belief;
}

/** Parts needed with less than this chance are not worth a line. */
const WORTH_A_LINE = 0.01;

/** Tools are taken for causes from this probability on. */
const TOOLS_FROM = 0.02;

/**
 * The parts and tools to load: a part goes along when the second trip it may save is worth more
 * than loading, carrying and bringing it back. Parts that only help together are weighed together.
 * Universal stock is on every van and costs nothing. Nothing covers "something else".
 */
export function packKit(
  model: Model,
  evidence: Evidence,
  _situation: Situation,
  options: KitOptions = {},
): Kit {
  const { probability } = options.belief ?? updateBelief(model, evidence);
  const needs = needsOf(model, probability);
  const carried = chooseParts(model, needs, options.capacity ?? Infinity);
  const covers = covered(model, needs, carried);
  const items = [...chances(needs)]
    .map(([part, chance]): KitItem => {
      const carry = carried.has(part);
      const other = new Set(carried);
      if (carry) other.delete(part);
      else other.add(part);
      return { part, chance, carry, adds: Math.abs(covered(model, needs, other) - covers) };
    })
    .filter((item) => item.chance >= WORTH_A_LINE || item.carry)
    .sort((a, b) => b.chance - a.chance || (a.part < b.part ? -1 : 1));
  return { items, tools: toolsOf(model, probability), universal: universalOf(model), covers };
}

/** What the repair of one hypothesis needs that is not on every van. */
interface Need {
  readonly probability: number;
  readonly parts: readonly string[];
  /** Nothing known repairs it, so no part covers it. */
  readonly unknown: boolean;
}

function needsOf(model: Model, probability: Float64Array): readonly Need[] {
  const { first, second, count } = model.hypotheses;
  const needs: Need[] = [];
  for (let h = 0; h < count; h++) {
    const chance = probability[h] ?? 0;
    if (chance <= 0) continue;
    const repairs = [first[h] ?? -1, second[h] ?? -1].flatMap((f) => model.repairs[f] ?? []);
    const parts = [...new Set(repairs.flatMap((repair) => repair.parts))];
    const unknown =
      h === somethingElseOf(model.hypotheses) || repairs.some((repair) => repair.remedy === null);
    needs.push({ probability: chance, parts, unknown });
  }
  return needs;
}

function chances(needs: readonly Need[]): ReadonlyMap<string, number> {
  const chance = new Map<string, number>();
  for (const need of needs) {
    for (const part of need.parts) {
      chance.set(part, (chance.get(part) ?? 0) + need.probability);
    }
  }
  return chance;
}

function covered(model: Model, needs: readonly Need[], kit: ReadonlySet<string>): number {
  const onBoard = (part: string): boolean =>
    kit.has(part) ||
    (model.knowledge.parts.get(part)?.alternates.some((other) => kit.has(other)) ?? false);
  return needs.reduce(
    (sum, need) => (!need.unknown && need.parts.every(onBoard) ? sum + need.probability : sum),
    0,
  );
}

/** Adds the bundle with the best gain until none pays. */
function chooseParts(model: Model, needs: readonly Need[], capacity: number): ReadonlySet<string> {
  const bundles = new Map(
    needs
      .filter((need) => need.parts.length > 0)
      .map((need) => [[...need.parts].sort().join(" "), need.parts] as const),
  );
  let kit: ReadonlySet<string> = new Set();
  for (;;) {
    const before = covered(model, needs, kit);
    let best: { readonly kit: ReadonlySet<string>; readonly gain: number } | null = null;
    for (const [, parts] of [...bundles].sort(([a], [b]) => (a < b ? -1 : 1))) {
      const added = parts.filter((part) => !kit.has(part));
      if (added.length === 0 || kit.size + added.length > capacity) continue;
      const next = new Set([...kit, ...added]);
      const saved =
        (covered(model, needs, next) - before) * model.knowledge.rates.secondTripMinutes;
      const gain = saved - added.reduce((sum, part) => sum + carryMinutes(model, part), 0);
      if (gain > (best?.gain ?? 0)) best = { kit: next, gain };
    }
    if (best === null) return kit;
    kit = best.kit;
  }
}

function carryMinutes(model: Model, part: string): number {
  return model.knowledge.parts.get(part)?.carryMinutes ?? 0;
}

function universalOf(model: Model): readonly string[] {
  return [...model.knowledge.parts.values()]
    .filter((part) => part.universal)
    .map((part) => part.id)
    .sort();
}

function toolsOf(model: Model, probability: Float64Array): readonly string[] {
  const { first, second, count } = model.hypotheses;
  const likely = new Set<number>();
  for (let h = 1; h < count - 1; h++) {
    if ((probability[h] ?? 0) >= TOOLS_FROM) likely.add(first[h] ?? -1).add(second[h] ?? -1);
  }
  return [...new Set([...likely].flatMap((fault) => toolsFor(model, fault)))].sort();
}

function toolsFor(model: Model, index: number): readonly string[] {
  const fault = model.knowledge.faults.get(model.hypotheses.faults[index] ?? "");
  if (fault === undefined) return [];
  const look = model.knowledge.checks.get(model.repairs[index]?.lookCheck ?? "");
  const [remedy] = remediesOf(model.knowledge, fault);
  return [...(remedy?.tools ?? []), ...(look?.tools ?? [])];
}
