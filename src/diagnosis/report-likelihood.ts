import type { Report } from "../domain/evidence.ts";
import type { Observation, Row } from "../domain/knowledge.ts";
import { OutOfRange, UnknownId } from "../domain/result.ts";
import type { CompiledObservation } from "./model.ts";

/** Nominal volts that bands are written for. */
const BAND_VOLTS = 12;

/**
 * P(report | true state) for every state of the observation; for a list two entries a member
 * (absent, present). Null where the report carries no information.
 * @param volts system volts, for readings whose bands scale with them
 * @throws UnknownId for a state the observation does not have, OutOfRange for a bad weight
 */
export function reportLikelihood(
  observation: CompiledObservation,
  report: Report,
  volts: number,
): Float64Array | null {
  const { said, hedge } = report;
  if (!(hedge >= 0 && hedge <= 1)) throw new OutOfRange(report.observation, hedge, "in [0, 1]");
  if (said.kind === "unknown" || hedge === 1) return null;
  if (said.kind === "members") {
    return observation.isList ? memberLikelihood(observation, report, said) : null;
  }
  if (observation.isList) return null;
  const weights =
    said.kind === "value"
      ? bandWeights(observation.source, said.value, volts)
      : stateWeights(observation, said.weights);
  if (weights === null) return null;
  const confusion = observation.source.confusion[report.reporter];
  const likelihood = Float64Array.from(confusion, (row) => dot(row, weights));
  return hedge === 0 ? likelihood : hedged(likelihood, observation.predictive, hedge);
}

/** Mixes towards the report's own marginal, which says nothing. */
function hedged(likelihood: Float64Array, predictive: Float64Array, hedge: number): Float64Array {
  const marginal = dot(predictive, likelihood);
  return likelihood.map((value) => (1 - hedge) * value + hedge * marginal);
}

function dot(row: Row | Float64Array, weights: Float64Array): number {
  let sum = 0;
  for (let s = 0; s < weights.length; s++) sum += (row[s] ?? 0) * (weights[s] ?? 0);
  return sum;
}

function stateWeights(
  observation: CompiledObservation,
  weights: Readonly<Record<string, number>>,
): Float64Array | null {
  const { source, stateIndex } = observation;
  const result = new Float64Array(source.states.length);
  let total = 0;
  for (const [state, weight] of Object.entries(weights)) {
    const index = stateIndex.get(state);
    if (index === undefined) throw new UnknownId("state", `${source.id} ${state}`);
    if (!(weight >= 0 && weight <= 1)) throw new OutOfRange(source.id, weight, "in [0, 1]");
    result[index] = weight;
    total += weight;
  }
  return total > 0 ? result.map((weight) => weight / total) : null;
}

/**
 * Chance of each band given the reading: a Gaussian about it with the meter's error. Bands, never
 * densities, so that a fine meter is no stronger a witness than the bands can tell apart.
 */
export function bandWeights(
  observation: Observation,
  value: number,
  volts: number,
): Float64Array | null {
  if (!Number.isFinite(value)) throw new OutOfRange(observation.id, value, "a finite reading");
  const banded = observation.states.some(({ from, to }) => from !== undefined || to !== undefined);
  if (!banded) return null;
  const scale = observation.scalesWithVolts ? volts / BAND_VOLTS : 1;
  const { absolute = 0, relative = 0 } = observation.meterError ?? {};
  const deviation = Math.hypot(absolute, relative * value);
  const below = (edge: number): number => {
    const distance = edge * scale - value;
    if (deviation > 0) return normalBelow(distance / deviation);
    return distance > 0 ? 1 : 0;
  };
  const weights = Float64Array.from(observation.states, ({ from, to }) =>
    Math.max(0, (to === undefined ? 1 : below(to)) - (from === undefined ? 0 : below(from))),
  );
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return total > 0 ? weights.map((weight) => weight / total) : null;
}

/**
 * P(standard normal < z), absolute error below 8e-8.
 * Source: Abramowitz & Stegun, Handbook of Mathematical Functions, 26.2.17.
 */
function normalBelow(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const series =
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const tail = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * series;
  return z < 0 ? tail : 1 - tail;
}

function memberLikelihood(
  observation: CompiledObservation,
  report: Report,
  said: { readonly present: readonly string[]; readonly absent: readonly string[] },
): Float64Array {
  const { source, stateIndex } = observation;
  const predictive = report.hedge === 0 ? null : observation.predictive;
  const result = new Float64Array(2 * source.states.length).fill(1);
  const [whenPresent, whenAbsent] = source.confusion[report.reporter];
  const say = (members: readonly string[], column: number): void => {
    for (const member of members) {
      const m = stateIndex.get(member);
      if (m === undefined) throw new UnknownId("state", `${source.id} ${member}`);
      const yes = whenPresent?.[column] ?? 1;
      const no = whenAbsent?.[column] ?? 1;
      const usual = predictive?.[m] ?? 0;
      const marginal = usual * yes + (1 - usual) * no;
      result[2 * m] = (1 - report.hedge) * no + report.hedge * marginal;
      result[2 * m + 1] = (1 - report.hedge) * yes + report.hedge * marginal;
    }
  };
  say(said.absent, 1);
  say(said.present, 0);
  return result;
}
