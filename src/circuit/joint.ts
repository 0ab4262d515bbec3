import type {
  CircuitEvidence,
  JointLikelihood,
  Question,
  ReadingRange,
} from "../domain/joint-likelihood.ts";
import { afterKey, SYMPTOM } from "./block.ts";
import { canWeigh, tabulate } from "./evidence-table.ts";
import { unexplained } from "./explain.ts";
import { type BandTable, bandTable, expectedRange, readingShares } from "./joint-readings.ts";
import { bestFits } from "./leave-out.ts";
import { isSymptomObservation, STATES, SYMPTOM_CODES, symptomStates } from "./observe.ts";
import {
  applyTable,
  liveMachines,
  type StandingBank,
  startWeights,
  type WeighedBlocks,
} from "./standing-bank.ts";

/** A bank and how much it counts: temperature bands, or circuits that the machine may have. */
export interface WeighedBank {
  readonly bank: StandingBank;
  /** > 0; the weights of one joint likelihood sum to 1. */
  readonly weight: number;
}

/** A joint that opens and closes, two words for one noise: what no circuit model knows. Estimate. */
const UNFORESEEN = 0.02;

/** What a sum of weights may not fall below, so that its logarithm is a number. */
const LEAST_SUM = 1e-290;

/**
 * Makes the joint likelihood of the starting circuit's observations.
 * @param banks at least one; a hypothesis counts in those that hold it
 * @returns a likelihood that remembers the evidence asked about last: a saving, never an answer
 */
export function createJoint(banks: readonly WeighedBank[]): JointLikelihood {
  const hypotheses = [...new Set(banks.flatMap(({ bank }) => [...bank.blocks.keys()]))];
  const start = hypotheses.map((hypothesis) => startOf(banks, hypothesis));
  const weigh = rememberWeighing(banks, start);
  const tables: BandTables = new Map();
  const [first] = banks;
  if (first === undefined) throw new RangeError("a joint likelihood needs a bank");
  const points = sharedPoints(banks);
  const logLikelihood = (evidence: readonly CircuitEvidence[]) =>
    Float64Array.from(weigh(evidence), (parts) => Math.log(Math.max(LEAST_SUM, total(parts))));
  return {
    observations: new Set([...Object.keys(STATES), ...points]),
    hypotheses,
    statesOf: (observation) => STATES[observation] ?? [],
    weighs: (evidence) => banks.every(({ bank }) => canWeigh(bank.network, evidence)),
    logLikelihood,
    unexplained: (evidence) =>
      unexplained(first.bank.network, evidence, {
        all: Math.max(...logLikelihood(evidence)),
        fits: () => bestFits(start, evidence),
      }),
    unforeseen: UNFORESEEN,
    placesOf: (testPoint) => otherPlacesOf(banks, testPoint),
    predictive: (evidence, question) => predict(weigh(evidence), question, tables),
    expected: (evidence, testPoint, wanted = hypotheses): readonly ReadingRange[] => {
      const weighed = weigh(evidence);
      return wanted.map((name) => {
        const parts = weighed[hypotheses.indexOf(name)];
        if (parts === undefined) throw new RangeError(`there is no hypothesis "${name}"`);
        return expectedRange(parts, testPoint);
      });
    },
    noticed: Float64Array.from(start, noticedShare),
  };
}

function otherPlacesOf(banks: readonly WeighedBank[], testPoint: string): readonly string[] {
  const points = banks.flatMap(({ bank }) => bank.network.testPoints);
  const named = points.filter(({ id }) => id === testPoint);
  return [...new Set(named.flatMap(({ otherPlaces }) => Object.keys(otherPlaces)))];
}

/** Test points that every circuit has: a machine that may lack one cannot be weighed by it. */
function sharedPoints(banks: readonly WeighedBank[]): readonly string[] {
  const [first = [], ...others] = banks.map(({ bank }) =>
    bank.network.testPoints.map(({ id }) => id),
  );
  return first.filter((point) => others.every((points) => points.includes(point)));
}

type Weighed = readonly (readonly WeighedBlocks[])[];

/** Sets of evidence kept weighed: one choice asks about a few of them in turn. */
const KEPT = 10;

/** Weighs evidence from the longest beginning that is kept weighed. */
function rememberWeighing(banks: readonly WeighedBank[], start: Weighed) {
  const none: { readonly evidence: readonly CircuitEvidence[]; readonly weighed: Weighed } = {
    ...{ evidence: [], weighed: start },
  };
  let kept = [none];
  return (evidence: readonly CircuitEvidence[]): Weighed => {
    const beginnings = [...kept, none].filter((one) =>
      one.evidence.every((item, i) => item === evidence[i]),
    );
    const from = beginnings.reduce((best, one) => {
      return one.evidence.length > best.evidence.length ? one : best;
    });
    const fresh = evidence.slice(from.evidence.length);
    const now =
      fresh.length === 0
        ? from
        : { evidence: [...evidence], weighed: extend(from.weighed, banks, fresh) };
    kept = [now, ...kept.filter((one) => one !== now)].slice(0, KEPT);
    return now.weighed;
  };
}

function startOf(banks: readonly WeighedBank[], hypothesis: string): WeighedBlocks[] {
  const holding = banks.filter(({ bank }) => bank.blocks.has(hypothesis));
  const whole = holding.reduce((sum, { weight }) => sum + weight, 0);
  return holding.map(({ bank, weight }) => {
    const blocks = (bank.blocks.get(hypothesis) ?? []).map((block) => {
      const weights = startWeights(block);
      return { block, weights, live: liveMachines(weights) };
    });
    return { bank, blocks, scale: weight / whole / sumOf(blocks) };
  });
}

function extend(
  from: Weighed,
  banks: readonly WeighedBank[],
  evidence: readonly CircuitEvidence[],
): Weighed {
  const tables = new Map(
    banks.map(({ bank }) => [bank, evidence.map((item) => tabulate(bank.network, item))]),
  );
  return from.map((parts) =>
    parts.map(({ bank, blocks, scale }) => ({
      bank,
      scale,
      blocks: blocks.map(({ block, weights: before }) => {
        const weights = before.slice();
        for (const table of tables.get(bank) ?? []) applyTable(block, weights, table);
        return { block, weights, live: liveMachines(weights) };
      }),
    })),
  );
}

function sumOf(blocks: WeighedBlocks["blocks"]): number {
  let sum = 0;
  for (const { weights } of blocks) for (const weight of weights) sum += weight;
  return sum;
}

function total(parts: readonly WeighedBlocks[]): number {
  return parts.reduce((sum, { blocks, scale }) => sum + scale * sumOf(blocks), 0);
}

function noticedShare(parts: readonly WeighedBlocks[]): number {
  let seen = 0;
  let all = 0;
  for (const { blocks } of parts) {
    for (const { block } of blocks) {
      all += block.machines;
      for (const one of block.noticed) seen += one;
    }
  }
  return seen / all;
}

/** Band tables by bank and question: the same questions are asked again and again. */
type BandTables = Map<StandingBank, Map<string, BandTable>>;

function predict(weighed: Weighed, question: Question, tables: BandTables): Float64Array {
  const states = STATES[question.observation];
  const width = states?.length ?? (question.edges?.length ?? 0) + 1;
  const rows = new Float64Array(weighed.length * width);
  weighed.forEach((parts, h) => {
    const row = rows.subarray(h * width, (h + 1) * width);
    if (states === undefined) {
      for (const part of parts) {
        readingShares(part, question.observation, tableOf(tables, part.bank, question), row);
      }
    } else stateShares(parts, question, row);
    const sum = row.reduce((a, b) => a + b, 0);
    for (let s = 0; s < width; s++) row[s] = sum > 0 ? (row[s] ?? 0) / sum : 1 / width;
  });
  return rows;
}

function tableOf(tables: BandTables, bank: StandingBank, question: Question): BandTable {
  const own = tables.get(bank) ?? new Map<string, BandTable>();
  tables.set(bank, own);
  const name = `${question.observation}/${question.edges?.join("/")}`;
  const table = own.get(name) ?? bandTable(bank, question);
  own.set(name, table);
  return table;
}

/** Adds the weights of machines by the state they show. */
function stateShares(
  parts: readonly WeighedBlocks[],
  { observation, after }: Question,
  row: Float64Array,
): void {
  const bySymptom = isSymptomObservation(observation) ? symptomStates(observation) : undefined;
  const key = afterKey(bySymptom === undefined ? observation : SYMPTOM, after);
  for (const { blocks, scale } of parts) {
    for (const { block, weights, live } of blocks) {
      const codes = block.codes[key];
      if (codes === undefined) throw new RangeError(`the bank holds no "${key}"`);
      const sums = sumByCode(codes, weights, live);
      sums.forEach((sum, code) => {
        const state = bySymptom?.[code] ?? code;
        if (sum > 0) row[state] = (row[state] ?? 0) + sum * scale;
      });
    }
  }
}

function sumByCode(codes: Uint8Array, weights: Float64Array, live: Int32Array): Float64Array {
  const sums = new Float64Array(SYMPTOM_CODES);
  for (let n = 0; n < live.length; n++) {
    const i = live[n] ?? 0;
    const code = codes[i] ?? 0;
    sums[code] = (sums[code] ?? 0) + (weights[i] ?? 0);
  }
  return sums;
}
