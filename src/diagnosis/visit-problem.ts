import type { Evidence, Situation } from "../domain/evidence.ts";
import { candidates } from "./candidates.ts";
import { channelOf, seenNow } from "./channel.ts";
import { pricesOf } from "./cost-to-go.ts";
import { accessMinutes } from "./fault-repair.ts";
import { type Model, NOTHING_WRONG } from "./model.ts";
import type { RepairAction, RepairProblem } from "./repair-problem.ts";
import { shortlist } from "./shortlist.ts";
import { actActions, remedyActions } from "./visit-cures.ts";
import { type Troubles, troublesOf } from "./visit-troubles.ts";

/** A case as a repair problem, with what is needed to put it back into the words of the trade. */
export interface VisitProblem {
  readonly problem: RepairProblem;
  /** Ids of access groups, as indexed by `RepairAction.access`. */
  readonly access: readonly string[];
  /** P(nothing is wrong any more). */
  readonly runs: number;
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
  const done = new Set(evidence.acts.map((act) => act.act));
  const probability = leftOver(model, at.probability, done);
  const seen = seenNow(model, evidence);
  const troubles = troublesOf(model, probability);
  const access = [...model.knowledge.accessGroups.keys()];
  const { checks, waiting, acts } = candidates({ model, evidence, situation, probability, seen });
  const prices = pricesOf(model, shortlist(model, probability), situation);
  const cures = [
    ...remedyActions(troubles, { access, onBoard: at.onBoard }).filter(({ id }) => !done.has(id)),
    ...actActions(
      troubles,
      acts.filter((act) => act.yields === undefined),
    ),
  ];
  const all = [...checks, ...waiting];
  const placeOf = new Map(all.map((check, index) => [check.id, cures.length + index]));
  const tests = all.map((check) => ({
    ...testOf(troubles, seen, { id: check.id, yields: check.yields }),
    cost: check.minutes,
    access: check.access === undefined ? -1 : access.indexOf(check.access),
    after: check.after.flatMap((id) => placeOf.get(id) ?? []),
  }));
  const trials = acts.flatMap((act) => {
    const { id, yields, minutes } = act;
    if (yields === undefined || !model.observations.has(yields)) return [];
    return [{ ...testOf(troubles, seen, { id, yields }), kind: "act" as const, cost: minutes }];
  });
  return {
    problem: {
      weights: troubles.weights,
      actions: [...cures, ...tests, ...trials],
      helpCost: prices.helpMinutes / prices.perMinute,
      secondTripCost: model.knowledge.rates.secondTripMinutes,
      accessCosts: access.map((id) => accessMinutes(model.knowledge, id)),
    },
    access,
    runs: probability[NOTHING_WRONG] ?? 0,
  };
}

/**
 * Belief over what is left after repairs that did not end the trouble: of a pair with one fault
 * repaired, the other.
 */
function leftOver(
  model: Model,
  probability: Float64Array,
  done: ReadonlySet<string>,
): Float64Array {
  const { faults, first, second, count } = model.hypotheses;
  const repaired = faults.map(
    (id) => model.knowledge.faults.get(id)?.remedies.some((remedy) => done.has(remedy)) === true,
  );
  if (!repaired.includes(true)) return probability;
  const left = Float64Array.from(probability);
  for (let h = 1 + faults.length; h < count - 1; h++) {
    const a = first[h] ?? 0;
    const b = second[h] ?? 0;
    if (repaired[a] === repaired[b]) continue;
    const other = 1 + (repaired[a] === true ? b : a);
    left[other] = (left[other] ?? 0) + (left[h] ?? 0);
    left[h] = 0;
  }
  return left;
}

function testOf(
  { model, hypotheses, weights, lumped, probability }: Troubles,
  seen: ReturnType<typeof seenNow>,
  of: { readonly id: string; readonly yields: string },
): RepairAction {
  const channel = channelOf(model, seen, { observation: of.yields, reporter: "technician" });
  const results = channel.outcomes.map((id, outcome) => {
    const chance = new Float64Array(weights.length);
    for (const [i, h] of hypotheses.entries()) chance[i] = channel.chance(h, outcome);
    chance[hypotheses.length] = channel.lumpChance(lumped, probability, outcome);
    return { id, chance };
  });
  return {
    id: of.id,
    kind: "check",
    cost: 0,
    access: -1,
    away: false,
    after: [],
    group: model.observations.get(of.yields)?.group ?? -1,
    effect: { kind: "test", results },
  };
}
