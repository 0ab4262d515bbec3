import type { Report } from "../domain/evidence.ts";
import type { Ambiguous, AmbiguousOption } from "../domain/reading.ts";
import type { Reporter } from "../domain/vocabulary.ts";

/** Meanings less likely than this say nothing alone. */
const LIKELY_ENOUGH = 0.5;

/**
 * Words with several meanings are asked about in a chat; a written-down case cannot be asked. So
 * what they leave open enters as open: several states of one thing by their weights, else the
 * likeliest meaning, only as sure as it is likely. What is told plainly elsewhere stands instead.
 */
export function likeliestMeanings(
  ambiguous: readonly Ambiguous[],
  told: readonly Report[],
  reporter: Reporter,
): readonly Report[] {
  const reports = new Map<string, Report>();
  for (const { options } of ambiguous) {
    const [first] = [...options].sort((a, b) => b.probability - a.probability);
    if (first?.state === undefined) continue;
    const { observation } = first;
    if (told.some((one) => one.observation === observation) || reports.has(observation)) continue;
    const isOne = options.every((option) => option.observation === observation);
    if (!isOne && first.probability < LIKELY_ENOUGH) continue;
    reports.set(observation, {
      observation,
      epoch: 0,
      reporter,
      hedge: isOne ? 0 : 1 - first.probability,
      said: { kind: "states", weights: isOne ? weightsOf(options) : { [first.state]: 1 } },
    });
  }
  return [...reports.values()];
}

function weightsOf(options: readonly AmbiguousOption[]): Record<string, number> {
  return Object.fromEntries(
    options.flatMap(({ state, probability }) =>
      state === undefined ? [] : [[state, probability]],
    ),
  );
}
