import type { Channel } from "./channel.ts";
import { expected } from "./cost-to-go.ts";
import type { Shortlist } from "./shortlist.ts";

/** A way to act and its cost under each hypothesis. */
export interface Costed {
  readonly costs: Float64Array;
}

/** A choice to be made under a belief. */
export interface Choice<P extends Costed> {
  /** Belief; need not sum to 1. */
  readonly weights: Float64Array;
  /** The ways always considered; the best of them under `weights` is the present plan. */
  readonly policies: readonly P[];
  /** Further ways that a changed belief suggests. */
  suggest(joint: Float64Array): readonly P[];
}

/** P(answer | hypothesis), one array an answer, over the same hypotheses as the belief. */
export type Answers = readonly Float64Array[];

/** What an answer is worth before it is known. */
export interface AnswerValue<P extends Costed> {
  /** Expected saving in the costs' unit; never negative beyond rounding. */
  readonly saved: number;
  /** Expected fall of entropy, in bits. */
  readonly bits: number;
  readonly now: P;
  /** For each answer that can come: the best way then, and what it saves against `now`. */
  readonly then: readonly { readonly policy: P; readonly saved: number }[];
}

/**
 * Value of information: the cost of the best way now, less the expected cost of the best way after
 * each answer. The ways compared after an answer include those of now, so it cannot be negative.
 * Source: Raiffa & Schlaifer 1961, Howard 1966.
 */
export function answerValue<P extends Costed>(choice: Choice<P>, answers: Answers): AnswerValue<P> {
  const now = best(choice.policies, choice.weights);
  let bits = entropy(choice.weights) - normalising(choice.weights);
  let saved = 0;
  const then: { policy: P; saved: number }[] = [];
  for (const joint of joints(choice.weights, answers)) {
    const after = bestAfter(choice, joint);
    const gain = expected(joint, now.costs) - after.cost;
    saved += gain;
    bits -= entropy(joint) - normalising(joint);
    then.push({ policy: after.policy, saved: gain });
  }
  return { saved, bits, now, then };
}

/** The best way under a changed belief, among those of now and those it suggests. */
export function bestAfter<P extends Costed>(
  choice: Choice<P>,
  joint: Float64Array,
): { readonly policy: P; readonly cost: number } {
  let policy = best(choice.policies, joint);
  let cost = expected(joint, policy.costs);
  for (const other of choice.suggest(joint)) {
    const own = expected(joint, other.costs);
    if (own < cost) [policy, cost] = [other, own];
  }
  return { policy, cost };
}

/** The cheapest way under a belief; the first of equals. */
export function best<P extends Costed>(policies: readonly P[], weights: Float64Array): P {
  const [first] = policies;
  if (first === undefined) throw new RangeError("no way to go on");
  let chosen = first;
  let least = expected(weights, first.costs);
  for (const policy of policies) {
    const cost = expected(weights, policy.costs);
    if (cost < least) [chosen, least] = [policy, cost];
  }
  return chosen;
}

/** Belief times P(answer), for each answer that can come. */
export function joints(weights: Float64Array, answers: Answers): readonly Float64Array[] {
  const possible: Float64Array[] = [];
  for (const chance of answers) {
    const joint = new Float64Array(weights.length);
    let mass = 0;
    for (let i = 0; i < joint.length; i++) {
      const weight = (weights[i] ?? 0) * (chance[i] ?? 0);
      joint[i] = weight;
      mass += weight;
    }
    if (mass > 0) possible.push(joint);
  }
  return possible;
}

/** A channel's answers over a shortlist, the lump last. */
export function answersOn(list: Shortlist, channel: Channel): Answers {
  return channel.outcomes.map((_, outcome) => {
    const chance = new Float64Array(list.weights.length);
    for (const [i, h] of list.hypotheses.entries()) chance[i] = channel.chance(h, outcome);
    chance[chance.length - 1] = channel.lumpChance(list.lumped, list.probability, outcome);
    return chance;
  });
}

/** −Σ w·log2 w of weights that need not sum to 1. */
function entropy(weights: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i++) {
    const w = weights[i] ?? 0;
    if (w > 0) sum -= w * Math.log2(w);
  }
  return sum;
}

/** The part of `entropy` that comes from the weights' sum alone. */
function normalising(weights: Float64Array): number {
  let mass = 0;
  for (let i = 0; i < weights.length; i++) mass += weights[i] ?? 0;
  return mass > 0 ? -mass * Math.log2(mass) : 0;
}
