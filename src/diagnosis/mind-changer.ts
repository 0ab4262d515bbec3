import type { Evidence } from "../domain/evidence.ts";
import type { Ranking } from "../domain/triage.ts";
import type { Belief } from "./belief.ts";
import type { Prospects } from "./channel.ts";
import type { Model } from "./model.ts";
import { type Shortlist, shortlist } from "./shortlist.ts";
import { answersOn } from "./value.ts";

/** Answers less likely than this are no honest prospect. */
const LEAST_CHANCE = 0.02;

/**
 * The observation and state that would most overturn the leading cause: the possible answer, by a
 * technician, that leaves the leader with the least, among those that put another cause first.
 * Null where no single answer can.
 */
export function wouldChangeMind(
  model: Model,
  given: { readonly evidence: Evidence; readonly belief: Belief; readonly prospects: Prospects },
): Ranking["wouldChangeMind"] {
  const { evidence, belief, prospects } = given;
  const list = shortlist(model, belief.probability);
  const tally = tallyOf(model, list);
  const leader = indexOfLargest(tally(list.weights));
  const known = new Set(evidence.reports.map((report) => report.observation));
  let best: { observation: string; state: string; left: number } | null = null;
  for (const observation of askable(model)) {
    if (known.has(observation)) continue;
    const channel = prospects(observation);
    for (const [outcome, answer] of answersOn(list, channel).entries()) {
      const state = channel.outcomes[outcome] ?? "";
      const joint = answer.map((chance, i) => chance * (list.weights[i] ?? 0));
      const chance = joint.reduce((sum, value) => sum + value, 0);
      if (state === "" || chance < LEAST_CHANCE) continue;
      const faults = tally(joint);
      const left = (faults[leader] ?? 0) / chance;
      if (indexOfLargest(faults) === leader || (best !== null && left >= best.left)) continue;
      best = { observation, state, left };
    }
  }
  return best === null ? null : { observation: best.observation, state: best.state };
}

/** Sums weights over a shortlist by cause: a declared pair for its root, others half each. */
function tallyOf(model: Model, list: Shortlist): (weights: Float64Array) => Float64Array {
  const { faults, first, second, declared } = model.hypotheses;
  return (weights) => {
    const sums = new Float64Array(faults.length);
    for (const [i, h] of list.hypotheses.entries()) {
      const a = first[h] ?? -1;
      const b = second[h] ?? -1;
      if (a < 0) continue;
      const weight = weights[i] ?? 0;
      const shared = b >= 0 && declared[h] === 0;
      sums[a] = (sums[a] ?? 0) + (shared ? weight / 2 : weight);
      if (shared) sums[b] = (sums[b] ?? 0) + weight / 2;
    }
    return sums;
  };
}

/** Observations that some check yields, in a fixed order. */
function askable(model: Model): readonly string[] {
  const ids = new Set([...model.knowledge.checks.values()].map((check) => check.yields));
  return [...ids].filter((id) => model.observations.has(id)).sort();
}

function indexOfLargest(values: Float64Array): number {
  let best = 0;
  for (let i = 1; i < values.length; i++) if ((values[i] ?? 0) > (values[best] ?? 0)) best = i;
  return best;
}
