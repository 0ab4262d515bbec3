import type { Decides } from "../domain/triage.ts";
import type { Channel } from "./channel.ts";
import { expected, type Policy } from "./cost-to-go.ts";
import { bestPolicy, type Portfolio, suggested } from "./policies.ts";

/** What an answer is worth before it is known. */
export interface CheckValue {
  /** Expected saving in technician-minutes; never negative beyond rounding. */
  readonly minutes: number;
  /** Expected fall of entropy, in bits. */
  readonly bits: number;
  readonly decides: Decides;
}

/**
 * Value of information: the cost of the best way now, less the expected cost of the best way after
 * each answer. The ways compared after an answer include those of now, so it cannot be negative.
 * Source: Howard 1966.
 */
export function checkValue(portfolio: Portfolio, channel: Channel): CheckValue {
  const { policies, prices } = portfolio;
  const now = bestPolicy(policies, prices.list.weights);
  let after = 0;
  let bits = entropy(prices.list.weights);
  const changes = new Map<Decides, number>();
  for (const joint of outcomesOf(portfolio, channel)) {
    const own = suggested(portfolio, joint);
    const best = bestPolicy([...policies, ...own], joint);
    const cost = expected(joint, best.costs);
    const kept = expected(joint, now.costs);
    after += cost;
    bits -= entropy(joint) - unnormalised(joint);
    const what = decision(now, best);
    changes.set(what, (changes.get(what) ?? 0) + kept - cost);
  }
  const minutes = expected(prices.list.weights, now.costs) - after;
  return { minutes, bits, decides: mostSaved(changes) };
}

/** Belief over the shortlist times P(answer), for each answer that can come. */
export function outcomesOf(
  { prices }: Portfolio,
  channel: Channel,
  weights: Float64Array = prices.list.weights,
): readonly Float64Array[] {
  const { list } = prices;
  const joints: Float64Array[] = [];
  for (let outcome = 0; outcome < channel.outcomes.length; outcome++) {
    const joint = new Float64Array(weights.length);
    let mass = 0;
    for (let i = 0; i < joint.length; i++) {
      const weight = weights[i] ?? 0;
      if (weight === 0) continue;
      const chance =
        i < list.hypotheses.length
          ? channel.chance(list.hypotheses[i] ?? 0, outcome)
          : channel.lumpChance(list.lumped, list.probability, outcome);
      joint[i] = weight * chance;
      mass += joint[i] ?? 0;
    }
    if (mass > 0) joints.push(joint);
  }
  return joints;
}

/** −Σ w·log2 w of weights that need not sum to 1. */
function entropy(weights: Float64Array): number {
  return weights.reduce((sum, w) => (w > 0 ? sum - w * Math.log2(w) : sum), 0);
}

/** The part of `entropy` that comes from the weights' sum alone. */
function unnormalised(joint: Float64Array): number {
  const mass = joint.reduce((sum, w) => sum + w, 0);
  return -mass * Math.log2(mass);
}

function decision(now: Policy, then: Policy): Decides {
  if (now.way !== then.way) {
    return now.way === "self-help" || then.way === "self-help" ? "chat" : "trip";
  }
  if (now.kit !== then.kit) return "kit";
  return now.firstFault === then.firstFault ? "cause" : "order";
}

function mostSaved(changes: ReadonlyMap<Decides, number>): Decides {
  let what: Decides = "cause";
  let most = 0;
  for (const [decides, saved] of changes) if (saved > most) [what, most] = [decides, saved];
  return what;
}
