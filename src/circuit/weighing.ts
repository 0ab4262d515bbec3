import type { CircuitEvidence, Question, ReadingEvidence } from "../domain/joint-likelihood.ts";
import { tabulate } from "./evidence-table.ts";
import {
  chancesOf,
  multiply,
  type StandingBank,
  startWeights,
  sumOf,
  type WeighedBlock,
  type WeighedBlocks,
  weighedBlock,
} from "./standing-bank.ts";

/** A bank and how much it counts: temperature bands, or circuits that the machine may have. */
export interface WeighedBank {
  readonly bank: StandingBank;
  /** > 0; the weights of one joint likelihood sum to 1. */
  readonly weight: number;
}

/** The machines of each hypothesis with what they weigh, bank by bank. */
export type Weighed = readonly (readonly WeighedBlocks[])[];

/** Machines weighed by a set of evidence, and what was asked of them since. */
export interface Weighing {
  readonly evidence: readonly CircuitEvidence[];
  readonly weighed: Weighed;
  /** Answers to questions, by the question. */
  readonly answers: Map<string, Float64Array>;
  /** Readings that nothing explains, once somebody asked. */
  odd?: readonly ReadingEvidence[];
}

/**
 * Sets of evidence kept weighed, and items whose chances are kept: one choice asks about a few of
 * them in turn. Together with its bank they stay below 30 MB a machine kind and temperature.
 */
const KEPT = 6;
const ITEMS_KEPT = 10;
/** Bytes kept for each machine of a bank, besides the bank itself: weights, live ones, chances. */
export const KEPT_BYTES = KEPT * (8 + 4) + ITEMS_KEPT * 4;

/** Names a question: equal questions have equal names. */
export function questionName({ observation, after, edges }: Question): string {
  return `${observation}~${after ?? ""}/${edges?.join("/") ?? ""}`;
}

/** The machines before any evidence. */
export function startWeighing(
  banks: readonly WeighedBank[],
  hypotheses: readonly string[],
): Weighing {
  const weighed = hypotheses.map((hypothesis) => startOf(banks, hypothesis));
  return { evidence: [], weighed, answers: new Map() };
}

/**
 * Weighs evidence from the longest beginning that is kept weighed. What is asked of evidence no
 * longer kept must not be used any more: its lists serve again.
 */
export function rememberWeighing(banks: readonly WeighedBank[], none: Weighing) {
  const spare: Float64Array[] = [];
  const chances = rememberChances(banks, none.weighed);
  let kept: readonly Weighing[] = [];
  return (evidence: readonly CircuitEvidence[]): Weighing => {
    const beginnings = [none, ...kept].filter((one) =>
      one.evidence.every((item, i) => item === evidence[i]),
    );
    const from = beginnings.reduce((best, one) => {
      return one.evidence.length > best.evidence.length ? one : best;
    });
    if (evidence.length === 0) return none;
    const now = from.evidence.length === evidence.length ? from : extend(from, evidence);
    const order = [now, ...kept.filter((one) => one !== now)];
    for (const old of order.slice(KEPT)) spare.push(...listsOf(old));
    kept = order.slice(0, KEPT);
    return now;
  };

  function extend(from: Weighing, evidence: readonly CircuitEvidence[]): Weighing {
    const fresh = evidence.slice(from.evidence.length).map(chances);
    let n = -1;
    const weighed = from.weighed.map((parts) =>
      parts.map(({ bank, blocks, scale }) => ({
        ...{ bank, scale },
        blocks: blocks.map((one) => {
          n += 1;
          return reweigh(one, fresh, { n, after: roomFor(one) });
        }),
      })),
    );
    return { evidence: [...evidence], weighed, answers: new Map() };
  }

  /** A list that is no longer needed, or a new one. */
  function roomFor({ weights: { length } }: WeighedBlock): Float64Array {
    const last = spare.pop();
    return last?.length === length ? last : new Float64Array(length);
  }
}

/** Chances of one item of evidence, block by block in the order of the hypotheses. */
type Chances = readonly Float32Array[];

/** An item is told once and weighed with ever new others: its chances are worked out once. */
function rememberChances(banks: readonly WeighedBank[], weighed: Weighed) {
  const known = new Map<CircuitEvidence, Chances>();
  return (item: CircuitEvidence): Chances => {
    const chances = known.get(item) ?? workOut(item);
    known.delete(item);
    known.set(item, chances);
    const oldest = known.keys().next();
    if (known.size > ITEMS_KEPT && oldest.done !== true) known.delete(oldest.value);
    return chances;
  };

  function workOut(item: CircuitEvidence): Chances {
    const tables = new Map(banks.map(({ bank }) => [bank, tabulate(bank.network, item)]));
    return weighed.flatMap((parts) =>
      parts.flatMap(({ bank, blocks }) => {
        const table = tables.get(bank);
        return table === undefined ? [] : blocks.map(({ block }) => chancesOf(block, table));
      }),
    );
  }
}

function listsOf({ weighed }: Weighing): Float64Array[] {
  return weighed.flatMap((parts) =>
    parts.flatMap(({ blocks }) => blocks.map(({ weights }) => weights)),
  );
}

function reweigh(
  { block, weights, sum: whole }: WeighedBlock,
  fresh: readonly Chances[],
  { n, after }: { readonly n: number; readonly after: Float64Array },
): WeighedBlock {
  let sum = whole;
  let before = weights;
  for (const chances of fresh) {
    sum = multiply(before, chances[n] ?? new Float32Array(after.length), after);
    before = after;
  }
  return weighedBlock(block, after, sum);
}

function startOf(banks: readonly WeighedBank[], hypothesis: string): WeighedBlocks[] {
  const holding = banks.filter(({ bank }) => bank.blocks.has(hypothesis));
  const whole = holding.reduce((sum, { weight }) => sum + weight, 0);
  return holding.map(({ bank, weight }) => {
    const blocks = (bank.blocks.get(hypothesis) ?? []).map((block) => {
      const weights = startWeights(block);
      return weighedBlock(block, weights, sumOf(weights));
    });
    const machines = blocks.reduce((sum, one) => sum + one.sum, 0);
    return { bank, blocks, scale: weight / whole / machines };
  });
}
