import type {
  CircuitEvidence,
  JointLikelihood,
  Question,
  ReadingRange,
} from "../domain/joint-likelihood.ts";
import { afterKey, SYMPTOM } from "./block.ts";
import { canWeigh } from "./evidence-table.ts";
import { unexplained } from "./explain.ts";
import { type BandTable, bandTable, expectedRange, readingShares } from "./joint-readings.ts";
import { bestFits } from "./leave-out.ts";
import { isSymptomObservation, STATES, SYMPTOM_CODES, symptomStates } from "./observe.ts";
import type { StandingBank, WeighedBlocks } from "./standing-bank.ts";
import {
  questionName,
  rememberWeighing,
  startWeighing,
  type Weighed,
  type WeighedBank,
} from "./weighing.ts";

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
  const start = startWeighing(banks, hypotheses);
  const weigh = rememberWeighing(banks, start);
  const tables: BandTables = new Map();
  const [first] = banks;
  if (first === undefined) throw new RangeError("a joint likelihood needs a bank");
  const points = sharedPoints(banks);
  const logLikelihood = (evidence: readonly CircuitEvidence[]) =>
    Float64Array.from(weigh(evidence).weighed, (parts) =>
      Math.log(Math.max(LEAST_SUM, total(parts))),
    );
  return {
    observations: new Set([...Object.keys(STATES), ...points]),
    hypotheses,
    statesOf: (observation) => STATES[observation] ?? [],
    weighs: (evidence) => banks.every(({ bank }) => canWeigh(bank.network, evidence)),
    logLikelihood,
    unexplained: (evidence) => {
      const weighing = weigh(evidence);
      weighing.odd ??= unexplained(first.bank.network, evidence, {
        all: Math.max(...logLikelihood(evidence)),
        fits: () => bestFits(start.weighed, evidence),
      });
      return weighing.odd;
    },
    unforeseen: UNFORESEEN,
    placesOf: (testPoint) => otherPlacesOf(banks, testPoint),
    predictive: (evidence, question) => {
      const { weighed, answers } = weigh(evidence);
      const name = questionName(question);
      const known = answers.get(name) ?? predict(weighed, question, tables);
      answers.set(name, known);
      return known.slice();
    },
    expected: (evidence, testPoint, wanted = hypotheses): readonly ReadingRange[] => {
      const { weighed } = weigh(evidence);
      return wanted.map((name) => {
        const parts = weighed[hypotheses.indexOf(name)];
        if (parts === undefined) throw new RangeError(`there is no hypothesis "${name}"`);
        return expectedRange(parts, testPoint);
      });
    },
    noticed: Float64Array.from(start.weighed, noticedShare),
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

function total(parts: readonly WeighedBlocks[]): number {
  return parts.reduce(
    (sum, { blocks, scale }) => blocks.reduce((all, one) => all + scale * one.sum, sum),
    0,
  );
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
  const name = questionName(question);
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
    for (const one of blocks) {
      const { block, weights } = one;
      const codes = block.codes[key];
      if (codes === undefined) throw new RangeError(`the bank holds no "${key}"`);
      const sums = sumByCode(codes, weights, one.live());
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
