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

function listedHypotheses(model: Model, belief: Belief): readonly number[] {
  const { faults, nothingWrong } = marginalsOf(model, belief.probability);
  const known = 1 - (belief.probability[model.hypotheses.count - 1] ?? 0);
  const from = Math.min(LISTED_FROM, Math.max(...faults, nothingWrong)) * (known > 0 ? 1 : 0);
  const listed: number[] = [];
  for (const [index, chance] of faults.entries()) if (chance >= from) listed.push(index + 1);
  for (let h = faults.length + 1; h < model.hypotheses.count - 1; h++) {
    if ((belief.probability[h] ?? 0) >= from) listed.push(h);
  }
  if (nothingWrong >= from) listed.push(0);
  return listed;
}

function fitOf(term: Term, listed: readonly number[]): number {
  const expected = Math.min(term.predicted, term.uniform);
  if (expected <= 0) return 0;
  const { like, rowOf } = term.weighed;
  return Math.max(...listed.map((h) => like[rowOf[h] ?? 0] ?? 0), 0) / expected;
}
