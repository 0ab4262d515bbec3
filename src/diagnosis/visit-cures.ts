import type { Act, Remedy } from "../domain/knowledge.ts";
import { remediesOf } from "./fault-repair.ts";
import type { Model } from "./model.ts";
import type { Cure, HiddenCause, RepairAction } from "./repair-problem.ts";
import type { Troubles } from "./visit-troubles.ts";

export interface CureOf {
  readonly access: readonly string[];
  readonly onBoard: ReadonlySet<string>;
}

/** The remedies of the troubles' faults, as actions of a plan. */
export function remedyActions(troubles: Troubles, of: CureOf): readonly RepairAction[] {
  return remediesIn(troubles).map((remedy) => ({
    id: remedy.id,
    kind: "remedy",
    cost: remedy.minutes,
    access: remedy.access === undefined ? -1 : of.access.indexOf(remedy.access),
    away: remedy.parts.some((part) => !onBoard(troubles.model, of.onBoard, part)),
    after: [],
    group: -1,
    effect: cureOf(troubles, remedy.minutes, (fault) =>
      troubles.model.knowledge.faults.get(fault)?.remedies.includes(remedy.id) === true
        ? remedy.cures
        : 0,
    ),
  }));
}

/** Acts that may cure, such as moving a control; what only hides the trouble is no repair. */
export function actActions(troubles: Troubles, acts: readonly Act[]): readonly RepairAction[] {
  return acts.flatMap((act) => {
    const effect = cureOf(troubles, act.minutes, (fault) => act.cures.get(fault) ?? 0);
    if (effect.troubles.length === 0) return [];
    const fixed = { access: -1, away: false, after: [], group: -1 };
    return [{ ...fixed, id: act.id, kind: "act" as const, cost: act.minutes, effect }];
  });
}

function remediesIn({ model, hypotheses }: Troubles): readonly Remedy[] {
  const { first, second, faults } = model.hypotheses;
  const remedies = new Map<string, Remedy>();
  for (const h of hypotheses) {
    for (const f of [first[h] ?? -1, second[h] ?? -1]) {
      const fault = model.knowledge.faults.get(faults[f] ?? "");
      if (fault === undefined) continue;
      for (const remedy of remediesOf(model.knowledge, fault)) remedies.set(remedy.id, remedy);
    }
  }
  return [...remedies.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** What an action works on, by its chance to cure each fault. */
function cureOf(troubles: Troubles, minutes: number, chanceOf: (fault: string) => number): Cure {
  const cured = curedBy(troubles, chanceOf);
  const hiddenBy = new Map<number, number[]>();
  for (const { trouble, hidden } of cured) {
    if (hidden >= 0) hiddenBy.set(hidden, [...(hiddenBy.get(hidden) ?? []), trouble]);
  }
  return {
    kind: "cure",
    troubles: Int32Array.from(cured, ({ trouble }) => trouble),
    chance: Float64Array.from(cured, ({ chance }) => chance),
    leaves: Int32Array.from(cured, ({ leaves }) => leaves),
    hidden: [...hiddenBy].map(hiddenCause(troubles.model, minutes)),
  };
}

/** The troubles it works on, its chance, what it leaves of each, and the cause it may hide. */
function curedBy({ model, hypotheses, localOf }: Troubles, chanceOf: (fault: string) => number) {
  const { first, second, faults } = model.hypotheses;
  const cured: { trouble: number; chance: number; leaves: number; hidden: number }[] = [];
  for (const [trouble, h] of hypotheses.entries()) {
    const present = [first[h] ?? -1, second[h] ?? -1].filter((f) => f >= 0);
    const chances = present.map((f) => chanceOf(faults[f] ?? ""));
    const [left = -1, ...more] = present.filter((_, k) => chances[k] === 0);
    if (more.length > 0 || (left >= 0 && present.length === 1)) continue;
    // One deed that cures both does so at once: the less certain of the two decides.
    const chance = Math.min(...chances.filter((value) => value > 0));
    const hides = left >= 0 && blocksNothing(model, left);
    const leaves = left < 0 || hides ? -1 : (localOf.get(left + 1) ?? -1);
    cured.push({ trouble, chance, leaves, hidden: hides ? left : -1 });
  }
  return cured;
}

/** A cause that lets the machine run for now: left behind, it brings the trouble back. */
function hiddenCause(model: Model, minutes: number) {
  return ([fault, troubles]: readonly [number, number[]]): HiddenCause => {
    const repair = model.repairs[fault];
    const fixCost = repair?.fixMinutes ?? 0;
    return {
      troubles,
      lookCost: repair?.lookMinutes ?? 0,
      fixCost,
      comebackCost: model.knowledge.rates.secondTripMinutes + fixCost + minutes,
      lookCheck: repair?.lookCheck ?? null,
    };
  };
}

function blocksNothing(model: Model, fault: number): boolean {
  return model.knowledge.faults.get(model.hypotheses.faults[fault] ?? "")?.blocks === "none";
}

function onBoard(model: Model, carried: ReadonlySet<string>, part: string): boolean {
  const stock = model.knowledge.parts.get(part);
  return (
    carried.has(part) ||
    stock?.universal === true ||
    (stock?.alternates.some((other) => carried.has(other)) ?? false)
  );
}
