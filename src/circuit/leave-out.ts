import type { CircuitEvidence } from "../domain/joint-likelihood.ts";
import { type EvidenceTable, tabulate } from "./evidence-table.ts";
import { chancesOf, type StandingBank, type WeighedBlocks } from "./standing-bank.ts";

/** How well the evidence fits the hypothesis it fits best, in natural logarithms. */
export interface BestFits {
  readonly all: number;
  /** The same without each item in turn. */
  readonly without: Float64Array;
}

/** What a sum of weights may not fall below, so that its logarithm is a number. */
const LEAST_SUM = 1e-290;

/**
 * The best fit of all items and of all but each one, in a single pass over the machines.
 * @param start machines before any evidence, hypothesis by hypothesis
 */
export function bestFits(
  start: readonly (readonly WeighedBlocks[])[],
  evidence: readonly CircuitEvidence[],
): BestFits {
  const tables = new Map<StandingBank, readonly EvidenceTable[]>();
  const tablesOf = (bank: StandingBank) => {
    const known = tables.get(bank) ?? evidence.map((item) => tabulate(bank.network, item));
    tables.set(bank, known);
    return known;
  };
  const best = new Float64Array(evidence.length + 1);
  for (const parts of start) {
    const sums = new Float64Array(best.length);
    for (const part of parts) addFits(part, tablesOf(part.bank), sums);
    for (let i = 0; i < best.length; i++) best[i] = Math.max(best[i] ?? 0, sums[i] ?? 0);
  }
  const logs = best.map((sum) => Math.log(Math.max(LEAST_SUM, sum)));
  return { all: logs[evidence.length] ?? 0, without: logs.subarray(0, evidence.length) };
}

/** Adds the machines' weights without each item, and last with all of them. */
function addFits(part: WeighedBlocks, tables: readonly EvidenceTable[], sums: Float64Array): void {
  const count = tables.length;
  for (const { block, weights } of part.blocks) {
    const shares = tables.map((table) => chancesOf(block, table));
    // What the items from the i-th on leave of a machine's weight.
    const onward = new Float64Array(count + 1).fill(1);
    for (let m = 0; m < weights.length; m++) {
      for (let i = count - 1; i >= 0; i--) {
        onward[i] = (onward[i + 1] ?? 0) * (shares[i]?.[m] ?? 0);
      }
      let before = (weights[m] ?? 0) * part.scale;
      for (let i = 0; i < count; i++) {
        sums[i] = (sums[i] ?? 0) + before * (onward[i + 1] ?? 0);
        before *= shares[i]?.[m] ?? 0;
      }
      sums[count] = (sums[count] ?? 0) + before;
    }
  }
}
