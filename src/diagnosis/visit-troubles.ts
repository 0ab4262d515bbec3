import { type Model, NOTHING_WRONG } from "./model.ts";

/** Troubles kept apart in a plan; the rest is one lump that only help ends. */
const MOST_TROUBLES = 48;

/** The troubles of a plan: hypotheses by local index, the lump last. */
export interface Troubles {
  readonly model: Model;
  readonly hypotheses: readonly number[];
  readonly localOf: ReadonlyMap<number, number>;
  readonly weights: Float64Array;
  readonly lumped: Int32Array;
  readonly probability: Float64Array;
}

/** The most probable hypotheses, with what is left of each pair when one of the two is cured. */
export function troublesOf(model: Model, probability: Float64Array): Troubles {
  const { first, second, count } = model.hypotheses;
  const ranked = [...probability.keys()]
    .filter((h) => h !== NOTHING_WRONG && h !== count - 1 && (probability[h] ?? 0) > 0)
    .sort((a, b) => (probability[b] ?? 0) - (probability[a] ?? 0))
    .slice(0, MOST_TROUBLES);
  const kept = new Set(ranked);
  // What is left of a pair when one of the two is cured must be a trouble of its own.
  for (const h of ranked) {
    if ((second[h] ?? -1) >= 0) kept.add((first[h] ?? 0) + 1).add((second[h] ?? 0) + 1);
  }
  const hypotheses = [...kept];
  const lumped: number[] = [];
  for (let h = 1; h < count; h++) if (!kept.has(h)) lumped.push(h);
  const weights = Float64Array.from([...hypotheses, -1], (h) =>
    h < 0 ? 0 : (probability[h] ?? 0),
  );
  weights[hypotheses.length] = lumped.reduce((sum, h) => sum + (probability[h] ?? 0), 0);
  return {
    model,
    hypotheses,
    localOf: new Map(hypotheses.map((h, i) => [h, i])),
    weights,
    lumped: Int32Array.from(lumped),
    probability,
  };
}
