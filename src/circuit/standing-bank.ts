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

/** Machines of one block with what they weigh. */
export interface WeighedBlock {
  readonly block: Block;
  readonly weights: Float64Array;
  /** Σ weights. */
  readonly sum: number;
  /** Numbers of the machines heavy enough to change an answer; found when first asked for. */
  readonly live: () => Int32Array;
}

/** Weights of one hypothesis's machines in one bank, block by block. */
export interface WeighedBlocks {
  readonly bank: StandingBank;
  readonly blocks: readonly WeighedBlock[];
  /** What one unit of machine weight counts: bank weight ÷ weight before any evidence. */
  readonly scale: number;
}

/** Machines lighter than this share of the heaviest change no answer. */
const NEGLIGIBLE = 1e-5;

/** A block whose machines weigh so much, from now on. */
export function weighedBlock(block: Block, weights: Float64Array, sum: number): WeighedBlock {
  let live: Int32Array | undefined;
  return {
    ...{ block, weights, sum },
    live: () => {
      live ??= liveMachines(weights);
      return live;
    },
  };
}

/** Σ of weights. */
export function sumOf(weights: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i++) sum += weights[i] ?? 0;
  return sum;
}

/** The machines of a block that still count. */
function liveMachines(weights: Float64Array): Int32Array {
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

/** P(item of evidence | machine), machine by machine. */
export function chancesOf(block: Block, table: EvidenceTable): Float32Array {
  if (table.kind === "codes") return codeChances(block, table);
  const first = table.keys[0];
  return table.keys.length === 1 && first !== undefined
    ? readingChances(block, table, first.key)
    : placeChances(block, table);
}

/**
 * Multiplies chances into weights.
 * @param after where the product goes; may be `before` itself
 * @returns the sum of the product
 */
export function multiply(before: Float64Array, chances: Float32Array, after: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < after.length; i++) {
    const weight = (before[i] ?? 0) * (chances[i] ?? 0);
    after[i] = weight;
    sum += weight;
  }
  return sum;
}

type CodeTable = Extract<EvidenceTable, { kind: "codes" }>;
type ReadingTable = Extract<EvidenceTable, { kind: "reading" }>;

function codeChances(block: Block, { key, table }: CodeTable): Float32Array {
  const codes = block.codes[key];
  if (codes === undefined) throw new RangeError(`the bank holds no "${key}"`);
  const chances = new Float32Array(block.machines);
  for (let i = 0; i < chances.length; i++) chances[i] = table[codes[i] ?? 0] ?? 0;
  return chances;
}

function readingChances(block: Block, table: ReadingTable, key: string): Float32Array {
  const { readings, chattering } = readingsOf(block, key, table.symptom);
  const chances = new Float32Array(block.machines);
  for (let i = 0; i < chances.length; i++) {
    chances[i] = lookUp(table, readings[i] ?? 0, chattering[i] ?? 0);
  }
  return chances;
}

/** The probes may have been at several places: a mixture, machine by machine. */
function placeChances(block: Block, table: ReadingTable): Float32Array {
  const chances = new Float32Array(block.machines);
  for (const { key, chance } of table.keys) {
    const there = readingChances(block, table, key);
    for (let i = 0; i < chances.length; i++) {
      chances[i] = (chances[i] ?? 0) + chance * (there[i] ?? 0);
    }
  }
  return chances;
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
