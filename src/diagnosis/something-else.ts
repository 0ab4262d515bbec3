import type { Term } from "./evidence-terms.ts";

/**
 * "Something else" predicts each group of reports by a mixture of what the known faults predict on
 * average and of every state alike. How much of the latter is one unknown of the whole case: were
 * it drawn anew for every answer, thirty quite ordinary answers would each cost a little and
 * together rule it out. On average about half and half.
 */
const UNIFORM_PARTS = [
  { part: 0, weight: 0.5 },
  { part: 0.1, weight: 0.05 },
  { part: 1, weight: 0.45 },
] as const;

/** log P(all reports | something else); finite whenever the reports are possible at all. */
export function logSomethingElse(terms: readonly Pick<Term, "predicted" | "uniform">[]): number {
  const logs = UNIFORM_PARTS.map(({ part, weight }) =>
    terms.reduce(
      (sum, term) => sum + Math.log((1 - part) * term.predicted + part * term.uniform),
      Math.log(weight),
    ),
  );
  return logSum(logs);
}

/** P(reports of one group | something else), before anything else is known. */
export function somethingElsePredicts(predicted: number, uniform: number): number {
  return UNIFORM_PARTS.reduce(
    (sum, { part, weight }) => sum + weight * ((1 - part) * predicted + part * uniform),
    0,
  );
}

/** log Σ exp(values), -Infinity for none. */
export function logSum(values: ArrayLike<number>): number {
  let highest = -Infinity;
  for (let i = 0; i < values.length; i++) highest = Math.max(highest, values[i] ?? -Infinity);
  if (highest === -Infinity) return -Infinity;
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += Math.exp((values[i] ?? -Infinity) - highest);
  return highest + Math.log(sum);
}
