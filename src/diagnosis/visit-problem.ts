import type { Evidence, Situation } from "../domain/evidence.ts";
import type { Check, Remedy } from "../domain/knowledge.ts";
import { candidates } from "./candidates.ts";
import { channelOf, seenNow } from "./channel.ts";
import { pricesOf } from "./cost-to-go.ts";
import { accessMinutes, remediesOf } from "./fault-repair.ts";
import { type Model, NOTHING_WRONG } from "./model.ts";
import type { HiddenCause, RepairAction, RepairProblem } from "./repair-problem.ts";
import { shortlist } from "./shortlist.ts";

/** Troubles kept apart in a plan; the rest is one lump that only help ends. */
const MOST_TROUBLES = 48;

/** A case as a repair problem, with what is needed to put it back into the words of the trade. */
export interface VisitProblem {
  readonly problem: RepairProblem;
  /** Ids of access groups, as indexed by `RepairAction.access`. */
  readonly access: readonly string[];
  /** P(nothing is wrong any more). */
  readonly runs: number;
}

/** The troubles of a plan: hypotheses by local index, the lump last. */
interface Troubles {
  readonly model: Model;
  readonly hypotheses: readonly number[];
  readonly localOf: ReadonlyMap<number, number>;
  readonly weights: Float64Array;
  readonly lumped: Int32Array;
  readonly probability: Float64Array;
}

/**
 * What a technician standing at the machine can do: checks not yet made, and the remedies of the
 * probable causes.
 * @param onBoard parts carried, universal stock apart
 */
export function visitProblem(
  model: Model,
  evidence: Evidence,
  at: {
    readonly situation: Situation;
    readonly probability: Float64Array;
    readonly onBoard: ReadonlySet<string>;
  },
): VisitProblem {
  const situation: Situation = { ...at.situation, performer: "technician", place: "at-machine" };
  const { probability } = at;
  const seen = seenNow(model, evidence);
  const troubles = troublesOf(model, probability);
  const access = [...model.knowledge.accessGroups.keys()];
  const { checks, waiting } = candidates({ model, evidence, situation, probability, seen });
  const prices = pricesOf(model, shortlist(model, probability), situation);
  const cures = remediesIn(troubles).map((remedy) =>
    cureOf(troubles, { remedy, access, onBoard: at.onBoard }),
  );
  const all = [...checks, ...waiting];
  const placeOf = new Map(all.map((check, index) => [check.id, cures.length + index]));
  const tests = all.map((check) => ({
    ...testOf(troubles, seen, { check, access }),
    after: check.after.flatMap((id) => placeOf.get(id) ?? []),
  }));
  return {
    problem: {
      weights: troubles.weights,
      actions: [...cures, ...tests],
      helpCost: prices.helpMinutes / prices.perMinute,
      secondTripCost: model.knowledge.rates.secondTripMinutes,
      accessCosts: access.map((id) => accessMinutes(model.knowledge, id)),
    },
    access,
    runs: probability[NOTHING_WRONG] ?? 0,
  };
}

function troublesOf(model: Model, probability: Float64Array): Troubles {
  const { first, second, count } = model.hypotheses;
  const ranked = [...probability.keys()]
    .filter((h) => h !== NOTHING_WRONG && h !== count - 1 && (probability[h] ?? 0) > 0)
    .sort((a, b) => (probability[b] ?? 0) - (probability[a] ?? 0))
    .slice(0, MOST_TROUBLES);
  const kept = new Set(ranked);
  // What is left of a pair when one of the two is cured must be a trouble of its own.
  for (const h of ranked) {
    if ((second[h] ?? -1) >= 0) kept.add((first[h] ?? 0) + 1).add((second[h] ?? 0) + 1);
  }
  const hypotheses = [...kept];
  const lumped: number[] = [];
  for (let h = 1; h < count; h++) if (!kept.has(h)) lumped.push(h);
  const weights = Float64Array.from([...hypotheses, -1], (h) =>
    h < 0 ? 0 : (probability[h] ?? 0),
  );
  weights[hypotheses.length] = lumped.reduce((sum, h) => sum + (probability[h] ?? 0), 0);
  return {
    model,
    hypotheses,
    localOf: new Map(hypotheses.map((h, i) => [h, i])),
    weights,
    lumped: Int32Array.from(lumped),
    probability,
  };
}

function testOf(
  { model, hypotheses, weights, lumped, probability }: Troubles,
  seen: ReturnType<typeof seenNow>,
  of: { readonly check: Check; readonly access: readonly string[] },
): RepairAction {
  const { check } = of;
  const channel = channelOf(model, seen, { observation: check.yields, reporter: "technician" });
  const results = channel.outcomes.map((id, outcome) => {
    const chance = new Float64Array(weights.length);
    for (const [i, h] of hypotheses.entries()) chance[i] = channel.chance(h, outcome);
    chance[hypotheses.length] = channel.lumpChance(lumped, probability, outcome);
    return { id, chance };
  });
  return {
    id: check.id,
    kind: "check",
    cost: check.minutes,
    access: check.access === undefined ? -1 : of.access.indexOf(check.access),
    away: false,
    after: [],
    group: model.observations.get(check.yields)?.group ?? -1,
    effect: { kind: "test", results },
  };
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

interface CureOf {
  readonly remedy: Remedy;
  readonly access: readonly string[];
  readonly onBoard: ReadonlySet<string>;
}

function cureOf(troubles: Troubles, of: CureOf): RepairAction {
  const { model } = troubles;
  const { remedy } = of;
  const cured = curedBy(troubles, remedy);
  const hiddenBy = new Map<number, number[]>();
  for (const { trouble, hidden } of cured) {
    if (hidden >= 0) hiddenBy.set(hidden, [...(hiddenBy.get(hidden) ?? []), trouble]);
  }
  return {
    id: remedy.id,
    kind: "remedy",
    cost: remedy.minutes,
    access: remedy.access === undefined ? -1 : of.access.indexOf(remedy.access),
    away: remedy.parts.some((part) => !onBoard(model, of.onBoard, part)),
    after: [],
    group: -1,
    effect: {
      kind: "cure",
      troubles: Int32Array.from(cured, ({ trouble }) => trouble),
      chance: new Float64Array(cured.length).fill(remedy.cures),
      leaves: Int32Array.from(cured, ({ leaves }) => leaves),
      hidden: [...hiddenBy].map(hiddenCause(model, remedy)),
    },
  };
}

/** What a remedy works on: the troubles, what it leaves of each, and the cause it may hide. */
function curedBy({ model, hypotheses, localOf }: Troubles, remedy: Remedy) {
  const { first, second, faults } = model.hypotheses;
  const curable = (f: number): boolean =>
    model.knowledge.faults.get(faults[f] ?? "")?.remedies.includes(remedy.id) === true;
  const cured: { trouble: number; leaves: number; hidden: number }[] = [];
  for (const [trouble, h] of hypotheses.entries()) {
    const present = [first[h] ?? -1, second[h] ?? -1].filter((f) => f >= 0);
    const [left = -1, ...more] = present.filter((f) => !curable(f));
    if (more.length > 0 || (left >= 0 && present.length === 1)) continue;
    const hides = left >= 0 && blocksNothing(model, left);
    const leaves = left < 0 || hides ? -1 : (localOf.get(left + 1) ?? -1);
    cured.push({ trouble, leaves, hidden: hides ? left : -1 });
  }
  return cured;
}

/** A cause that lets the machine run for now: left behind, it brings the trouble back. */
function hiddenCause(model: Model, remedy: Remedy) {
  return ([fault, troubles]: readonly [number, number[]]): HiddenCause => {
    const repair = model.repairs[fault];
    const fixCost = repair?.fixMinutes ?? 0;
    return {
      troubles,
      lookCost: repair?.lookMinutes ?? 0,
      fixCost,
      comebackCost: model.knowledge.rates.secondTripMinutes + fixCost + remedy.minutes,
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
