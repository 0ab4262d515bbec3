import { type Model, NOTHING_WRONG, somethingElseOf } from "./model.ts";

/** What a belief says of each fault; all of it sums to 1. */
export interface Marginals {
  /** By fault index: a declared pair counts for its root, an independent pair half for each. */
  readonly faults: Float64Array;
  readonly nothingWrong: number;
  readonly somethingElse: number;
}

/** Belief over hypotheses as belief over single causes. */
export function marginalsOf(model: Model, probability: Float64Array): Marginals {
  const { first, second, declared, count, faults } = model.hypotheses;
  const sums = new Float64Array(faults.length);
  for (let h = 1; h < count - 1; h++) {
    const a = first[h] ?? 0;
    const b = second[h] ?? -1;
    const chance = probability[h] ?? 0;
    const half = b >= 0 && declared[h] === 0 ? chance / 2 : chance;
    sums[a] = (sums[a] ?? 0) + half;
    if (half !== chance) sums[b] = (sums[b] ?? 0) + half;
  }
  return {
    faults: sums,
    nothingWrong: probability[NOTHING_WRONG] ?? 0,
    somethingElse: probability[somethingElseOf(model.hypotheses)] ?? 0,
  };
}

/** P(fault present), by fault index: a pair counts for both. */
export function presenceOf(model: Model, probability: Float64Array): Float64Array {
  const { first, second, count, faults } = model.hypotheses;
  const sums = new Float64Array(faults.length);
  for (let h = 1; h < count - 1; h++) {
    const chance = probability[h] ?? 0;
    const a = first[h] ?? 0;
    const b = second[h] ?? -1;
    sums[a] = (sums[a] ?? 0) + chance;
    if (b >= 0) sums[b] = (sums[b] ?? 0) + chance;
  }
  return sums;
}

/**
 * 10·log10(odds after ÷ odds before): weight of evidence in decibans, within ±150.
 * Source: Good 1950, after Turing.
 */
export function decibans(after: number, before: number): number {
  return 10 * (logOdds(after) - logOdds(before));
}

/** Odds beyond 10^±7.5 are no longer told apart: certainty is not a number. */
const CERTAIN = 10 ** -7.5;

function logOdds(probability: number): number {
  const p = Math.min(1 - CERTAIN, Math.max(CERTAIN, probability));
  return Math.log10(p / (1 - p));
}
