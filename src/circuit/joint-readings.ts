import type { Question, ReadingRange } from "../domain/circuit.ts";
import {
  BIN_SHIFT,
  BINS,
  binMiddle,
  normalShare,
  roughness,
  testPointOf,
} from "./evidence-table.ts";
import { CHATTER_CODE, stepOf } from "./observe.ts";
import { readingsOf, type StandingBank, type WeighedBlocks } from "./standing-bank.ts";

/** Adds the weights of machines by the band in which a meter would show their reading. */
export function readingShares(
  parts: readonly WeighedBlocks[],
  { observation, edges = [] }: Question,
  row: Float64Array,
): void {
  for (const { bank, blocks, scale } of parts) {
    const bins = new Float64Array(2 * BINS);
    for (const { block, weights } of blocks) addToBins(bins, block, weights, observation);
    for (const chattering of [false, true]) {
      spreadBins(bins.subarray(chattering ? BINS : 0), { bank, observation, edges }, chattering, {
        row,
        scale,
      });
    }
  }
}

/** Weights by bin: the first half of machines that do not chatter, the second of those that do. */
function addToBins(
  bins: Float64Array,
  block: WeighedBlocks["blocks"][number]["block"],
  weights: Float64Array,
  observation: string,
): void {
  const { readings, chattering } = readingsOf(block, observation);
  for (let i = 0; i < weights.length; i++) {
    const half = (chattering[i] ?? 0) >> 1 === CHATTER_CODE >> 1 ? BINS : 0;
    const bin = half + ((readings[i] ?? 0) >> BIN_SHIFT);
    bins[bin] = (bins[bin] ?? 0) + (weights[i] ?? 0);
  }
}

function spreadBins(
  bins: Float64Array,
  asked: { bank: StandingBank; observation: string; edges: readonly number[] },
  chattering: boolean,
  into: { readonly row: Float64Array; readonly scale: number },
): void {
  const { network } = asked.bank;
  const point = testPointOf(network, asked.observation);
  const { row, scale } = into;
  for (let bin = 0; bin < BINS; bin++) {
    const weight = bins[bin] ?? 0;
    if (weight === 0) continue;
    const value = binMiddle(bin) * stepOf(point);
    const sigma = roughness(network, point, value, chattering);
    let below = 0;
    for (let s = 0; s < row.length; s++) {
      const edge = asked.edges[s];
      const upTo = edge === undefined ? 1 : normalShare((edge - value) / sigma);
      row[s] = (row[s] ?? 0) + scale * weight * (upTo - below);
      below = upTo;
    }
  }
}

/** Median and 5–95 % of a reading over weighed machines, without the meter's own error. */
export function expectedRange(parts: readonly WeighedBlocks[], testPoint: string): ReadingRange {
  const bins = new Float64Array(BINS);
  let step = 0;
  for (const { bank, blocks, scale } of parts) {
    step = stepOf(testPointOf(bank.network, testPoint));
    for (const { block, weights } of blocks) {
      const { readings } = readingsOf(block, testPoint);
      for (let i = 0; i < weights.length; i++) {
        const bin = (readings[i] ?? 0) >> BIN_SHIFT;
        bins[bin] = (bins[bin] ?? 0) + (weights[i] ?? 0) * scale;
      }
    }
  }
  const whole = bins.reduce((sum, weight) => sum + weight, 0);
  const at = (share: number): number => {
    let sum = 0;
    for (let bin = 0; bin < BINS; bin++) {
      sum += bins[bin] ?? 0;
      if (sum >= share * whole && sum > 0) return binMiddle(bin) * step;
    }
    return 0;
  };
  return { low: at(0.05), median: at(0.5), high: at(0.95) };
}
