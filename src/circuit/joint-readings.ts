import type { Question, ReadingRange } from "../domain/joint-likelihood.ts";
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

/** Bands are looked up in wider bins than evidence: a question needs no more. */
const COARSE_SHIFT = 5;
const COARSE_BINS = 32768 >> COARSE_SHIFT;

/** P(band a meter would show | true value): steady machines first, then those that chatter. */
export type BandTable = Float64Array;

/** The band table of a question about a reading. */
export function bandTable(bank: StandingBank, { observation, edges = [] }: Question): BandTable {
  const { network } = bank;
  const point = testPointOf(network, observation);
  const width = edges.length + 1;
  const table = new Float64Array(2 * COARSE_BINS * width);
  for (let row = 0; row < 2 * COARSE_BINS; row++) {
    const value = (((row % COARSE_BINS) << COARSE_SHIFT) + COARSE_MIDDLE) * stepOf(point);
    const sigma = roughness(network, point, value, row >= COARSE_BINS);
    let below = 0;
    for (let s = 0; s < width; s++) {
      const edge = edges[s];
      const upTo = edge === undefined ? 1 : normalShare((edge - value) / sigma);
      table[row * width + s] = upTo - below;
      below = upTo;
    }
  }
  return table;
}

const COARSE_MIDDLE = (1 << COARSE_SHIFT) / 2;

/** Adds the weights of machines by the band in which a meter would show their reading. */
export function readingShares(
  part: WeighedBlocks,
  observation: string,
  table: BandTable,
  row: Float64Array,
): void {
  const width = row.length;
  const { blocks, scale } = part;
  for (const one of blocks) {
    const { block, weights } = one;
    const live = one.live();
    const { readings, chattering } = readingsOf(block, observation);
    for (let n = 0; n < live.length; n++) {
      const i = live[n] ?? 0;
      const weight = weights[i] ?? 0;
      const half = (chattering[i] ?? 0) >> 1 === CHATTER_CODE >> 1 ? COARSE_BINS : 0;
      const at = (half + ((readings[i] ?? 0) >> COARSE_SHIFT)) * width;
      for (let s = 0; s < width; s++) {
        row[s] = (row[s] ?? 0) + scale * weight * (table[at + s] ?? 0);
      }
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
