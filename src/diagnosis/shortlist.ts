import type { Model } from "./model.ts";

/** Value of information is reckoned over the hypotheses that hold this much of belief … */
const KEPT_BELIEF = 0.999;

/** … but no more than this many of them. */
const MOST_KEPT = 150;

/**
 * The hypotheses that hold nearly all belief; the others are lumped into "something else" as far
 * as costs go, and keep their own average answers.
 */
export interface Shortlist {
  /** Indices of hypotheses, most probable first. */
  readonly hypotheses: Int32Array;
  /** Their probabilities; the last entry is the lump's. Sums to 1. */
  readonly weights: Float64Array;
  /** Indices in the lump, weighed by `probability` among themselves. */
  readonly lumped: Int32Array;
  /** The belief that was split. */
  readonly probability: Float64Array;
}

/** Splits a belief; ties are kept together with their order in the model. */
export function shortlist(model: Model, probability: Float64Array): Shortlist {
  const other = model.hypotheses.count - 1;
  const ranked = Int32Array.from({ length: other }, (_, h) => h)
    .filter((h) => (probability[h] ?? 0) > 0)
    .sort((a, b) => (probability[b] ?? 0) - (probability[a] ?? 0));
  let held = probability[other] ?? 0;
  let kept = 0;
  while (kept < ranked.length && kept < MOST_KEPT && held < KEPT_BELIEF) {
    held += probability[ranked[kept] ?? 0] ?? 0;
    kept += 1;
  }
  const hypotheses = ranked.slice(0, kept);
  const lumped = Int32Array.from([...ranked.slice(kept), other]);
  const weights = new Float64Array(kept + 1);
  for (const [i, h] of hypotheses.entries()) weights[i] = probability[h] ?? 0;
  weights[kept] = lumped.reduce((sum, h) => sum + (probability[h] ?? 0), 0);
  return { hypotheses, weights, lumped, probability };
}
