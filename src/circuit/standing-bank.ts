import type { CircuitNetwork } from "../domain/circuit.ts";
import { UNNOTICED_SHARE } from "./bank.ts";
import { type Block, SYMPTOM } from "./block.ts";
import { BIN_SHIFT, type EvidenceTable } from "./evidence-table.ts";
import { CHATTER_CODE } from "./observe.ts";

/** The simulated machines of one circuit at one temperature band, ready to be weighed. */
export interface StandingBank {
  readonly network: CircuitNetwork;
  /** The blocks of each hypothesis. */
  readonly blocks: ReadonlyMap<string, readonly Block[]>;
}

/** Weights of one hypothesis's machines in one bank, block by block. */
export interface WeighedBlocks {
  readonly bank: StandingBank;
  readonly blocks: readonly {
    readonly block: Block;
    readonly weights: Float64Array;
    /** Numbers of the machines heavy enough to change an answer. */
    readonly live: Int32Array;
  }[];
  /** What one unit of machine weight counts: bank weight ÷ weight before any evidence. */
  readonly scale: number;
}

/** Machines lighter than this share of the heaviest change no answer. */
const NEGLIGIBLE = 1e-5;

/** The machines of a block that still count. */
export function liveMachines(weights: Float64Array): Int32Array {
  let most = 0;
  for (let i = 0; i < weights.length; i++) most = Math.max(most, weights[i] ?? 0);
  const live = new Int32Array(weights.length);
  let count = 0;
  for (let i = 0; i < weights.length; i++) {
    if ((weights[i] ?? 0) > NEGLIGIBLE * most) live[count++] = i;
  }
  return live.subarray(0, count);
}

/** Puts blocks into a bank, after those of the same hypothesis. */
export function standBank(network: CircuitNetwork, blocks: readonly Block[]): StandingBank {
  const byHypothesis = new Map<string, readonly Block[]>();
  for (const block of blocks) {
    byHypothesis.set(block.hypothesis, [...(byHypothesis.get(block.hypothesis) ?? []), block]);
  }
  return { network, blocks: byHypothesis };
}

/** Weight of each machine of a block before any evidence: 1, or less where nobody would notice. */
export function startWeights(block: Block): Float64Array {
  return Float64Array.from(block.noticed, (seen) => (seen === 1 ? 1 : UNNOTICED_SHARE));
}

/** Multiplies one item of evidence into the machines' weights, in place. */
export function applyTable(block: Block, weights: Float64Array, table: EvidenceTable): void {
  if (table.kind === "codes") applyCodes(block, weights, table);
  else if (table.keys.length === 1) applyReading(block, weights, table);
  else applyPlaces(block, weights, table);
}

type CodeTable = Extract<EvidenceTable, { kind: "codes" }>;
type ReadingTable = Extract<EvidenceTable, { kind: "reading" }>;

function applyCodes(block: Block, weights: Float64Array, { key, table }: CodeTable): void {
  const codes = block.codes[key];
  if (codes === undefined) throw new RangeError(`the bank holds no "${key}"`);
  for (let i = 0; i < weights.length; i++) {
    weights[i] = (weights[i] ?? 0) * (table[codes[i] ?? 0] ?? 0);
  }
}

function applyReading(block: Block, weights: Float64Array, table: ReadingTable): void {
  const { readings, chattering } = readingsOf(block, table.keys[0]?.key ?? "", table.symptom);
  for (let i = 0; i < weights.length; i++) {
    weights[i] = (weights[i] ?? 0) * lookUp(table, readings[i] ?? 0, chattering[i] ?? 0);
  }
}

/** The probes may have been at several places: a mixture, machine by machine. */
function applyPlaces(block: Block, weights: Float64Array, table: ReadingTable): void {
  const places = table.keys.map(({ key, chance }) => ({
    ...readingsOf(block, key, table.symptom),
    chance,
  }));
  for (let i = 0; i < weights.length; i++) {
    let sum = 0;
    for (const { readings, chattering, chance } of places) {
      sum += chance * lookUp(table, readings[i] ?? 0, chattering[i] ?? 0);
    }
    weights[i] = (weights[i] ?? 0) * sum;
  }
}

function lookUp(table: ReadingTable, reading: number, symptom: number): number {
  const bins = symptom >> 1 === CHATTER_CODE >> 1 ? table.chatter : table.steady;
  return bins[reading >> BIN_SHIFT] ?? 0;
}

/** A block's readings under a key, with the machines' symptoms at that attempt. */
export function readingsOf(block: Block, key: string, symptom: string = SYMPTOM) {
  const readings = block.readings[key];
  const chattering = block.codes[symptom];
  if (readings === undefined || chattering === undefined) {
    throw new RangeError(`the bank holds no "${key}"`);
  }
  return { readings, chattering };
}
