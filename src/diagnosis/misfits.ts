import type { Evidence } from "../domain/evidence.ts";
import { arrange } from "./arrange.ts";
import type { Belief } from "./belief.ts";
import { type Term, termsOf } from "./evidence-terms.ts";
import { marginalsOf } from "./marginals.ts";
import type { Model } from "./model.ts";

/** Causes from this probability on are expected to explain what was told. */
const LISTED_FROM = 0.05;

/** A report is odd when the best listed cause expects it less than this part of what is expected
 * of any report on average. */
const ODD_BELOW = 0.25;

/** Observations whose reports no listed cause explains well, worst first. */
export function doesNotFit(model: Model, evidence: Evidence, belief: Belief): readonly string[] {
  const volts = model.volts.reduce((a, b) => (b.share > a.share ? b : a)).volts;
  const listed = listedHypotheses(model, belief);
  return termsOf(model, arrange(model, evidence, volts))
    .map((term) => ({ term, fit: fitOf(term, listed) }))
    .filter(({ fit }) => fit < ODD_BELOW)
    .sort((a, b) => a.fit - b.fit || (nameOf(a.term) < nameOf(b.term) ? -1 : 1))
    .flatMap(({ term }) => [...term.seen.keys()].sort());
}

function nameOf(term: Term): string {
  return [...term.seen.keys()].sort().join(" ");
}

/** Hypotheses probable enough to be listed; the best one where none is. */
function listedHypotheses(model: Model, { probability }: Belief): readonly number[] {
  const { faults } = marginalsOf(model, probability);
  const known = [...probability.subarray(0, -1).entries()].map(([h, p]) => {
    const single = h > 0 && h <= faults.length;
    return { h, p: single ? Math.max(p, faults[h - 1] ?? 0) : p };
  });
  const listed = known.filter(({ p }) => p >= LISTED_FROM);
  if (listed.length > 0) return listed.map(({ h }) => h);
  return [known.reduce((best, one) => (one.p > best.p ? one : best)).h];
}

function fitOf(term: Term, listed: readonly number[]): number {
  const expected = Math.min(term.predicted, term.uniform);
  if (expected <= 0) return 0;
  const { like, rowOf } = term.weighed;
  return Math.max(...listed.map((h) => like[rowOf[h] ?? 0] ?? 0), 0) / expected;
}
