import type { Evidence } from "../domain/evidence.ts";
import type { Ranking } from "../domain/triage.ts";
import type { Belief } from "./belief.ts";
import { channelOf, seenNow } from "./channel.ts";
import { marginalsOf } from "./marginals.ts";
import type { Model } from "./model.ts";

/** Answers less likely than this are no honest prospect. */
const LEAST_CHANCE = 0.02;

/**
 * The observation and state that would most overturn the leading cause: the possible answer, by a
 * technician, that leaves the leader with the least, among those that put another cause first.
 * Null where no single answer can.
 */
export function wouldChangeMind(
  model: Model,
  evidence: Evidence,
  belief: Belief,
): Ranking["wouldChangeMind"] {
  const leader = highest(marginalsOf(model, belief.probability).faults);
  const seen = seenNow(model, evidence);
  const known = new Set(evidence.reports.map((report) => report.observation));
  let best: { observation: string; state: string; left: number } | null = null;
  for (const observation of askable(model)) {
    if (known.has(observation)) continue;
    const channel = channelOf(model, seen, { observation, reporter: "technician" });
    for (const [outcome, state] of channel.outcomes.entries()) {
      if (state === "") continue;
      const joint = belief.probability.map((p, h) => (p > 0 ? p * channel.chance(h, outcome) : 0));
      const chance = joint.reduce((sum, value) => sum + value, 0);
      if (chance < LEAST_CHANCE) continue;
      const { faults } = marginalsOf(model, joint);
      const left = (faults[leader] ?? 0) / chance;
      if (highest(faults) === leader || (best !== null && left >= best.left)) continue;
      best = { observation, state, left };
    }
  }
  return best === null ? null : { observation: best.observation, state: best.state };
}

/** Observations that some check yields, in a fixed order. */
function askable(model: Model): readonly string[] {
  const ids = new Set([...model.knowledge.checks.values()].map((check) => check.yields));
  return [...ids].filter((id) => model.observations.has(id)).sort();
}

function highest(values: Float64Array): number {
  let best = 0;
  for (let i = 1; i < values.length; i++) if ((values[i] ?? 0) > (values[best] ?? 0)) best = i;
  return best;
}
