import { updateBelief } from "../diagnosis/belief.ts";
import { compileModel } from "../diagnosis/compile.ts";
import { chooseNext } from "../diagnosis/next-check.ts";
import { planVisit } from "../diagnosis/plan.ts";
import type { Situation } from "../domain/evidence.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import { compareLibrary } from "./bench-library.ts";
import { compareOrders, type OrderCosts } from "./bench-orders.ts";
import { syntheticAnswers, syntheticKnowledge } from "./synthetic-knowledge.ts";

export interface BenchOptions {
  /** Repeats of each measurement. */
  readonly repeats: number;
  /** Simulated calls for the comparison of orders. */
  readonly calls: number;
  readonly seed: number;
}

export const DEFAULT_BENCH: BenchOptions = { repeats: 40, calls: 120, seed: 1 };

export interface Spent {
  readonly medianMs: number;
  readonly p99Ms: number;
}

export interface EngineBench {
  readonly faults: number;
  readonly hypotheses: number;
  readonly compile: Spent;
  readonly update: Spent;
  readonly next: Spent;
  readonly plan: Spent;
  /** log-log slope of the median update over 25 to 400 faults without pairs; 1 is linear. */
  readonly growth: {
    readonly exponent: number;
    readonly points: readonly { readonly faults: number; readonly medianMs: number }[];
  };
  /** How many times longer the library takes on a network both hold; null: not installed. */
  readonly library: { readonly name: string; readonly ratio: number | null };
  /** Mean minutes until the machine runs, on simulated calls. */
  readonly orders: OrderCosts;
}

const SIZE = { faults: 100, observations: 80, answers: 30 };
const GROWTH = [25, 50, 100, 200, 400];

const somebody: Situation = {
  performer: "operator",
  place: "at-machine",
  has: [],
  asked: [],
  refused: [],
  urgency: "normal",
};

/**
 * Speed of the engine on an invented model of 100 faults with pairs, 80 observations and 30
 * answers; growth; a general-purpose library; orders of work on the given knowledge.
 * @param knowledge for the orders; null: an invented one
 */
export function benchEngine(
  knowledge: Knowledge | null,
  options: BenchOptions = DEFAULT_BENCH,
): EngineBench {
  const invented = syntheticKnowledge({ ...SIZE, pairs: true, seed: options.seed });
  const machine = { kind: "other" } as const;
  const model = compileModel(invented, machine);
  const evidence = syntheticAnswers(invented, SIZE.answers, options.seed);
  const { repeats } = options;
  return {
    faults: model.hypotheses.faults.length,
    hypotheses: model.hypotheses.count,
    compile: spentOn(() => compileModel(invented, machine), Math.ceil(repeats / 4)),
    update: spentOn(() => updateBelief(model, evidence), repeats * 5),
    next: spentOn(() => chooseNext(model, evidence, somebody), repeats),
    plan: spentOn(() => planVisit(model, evidence, somebody), repeats),
    growth: growthOf(options),
    library: compareLibrary(options),
    orders: compareOrders(knowledge ?? invented, options),
  };
}

function growthOf({ repeats, seed }: BenchOptions): EngineBench["growth"] {
  const points = GROWTH.map((faults) => {
    const knowledge = syntheticKnowledge({ ...SIZE, faults, pairs: false, seed });
    const model = compileModel(knowledge, { kind: "other" });
    const evidence = syntheticAnswers(knowledge, SIZE.answers, seed);
    const { medianMs } = spentOn(() => updateBelief(model, evidence), repeats * 5);
    return { faults, medianMs };
  });
  return { exponent: slope(points), points };
}

/** Least-squares slope of log time over log size. */
function slope(points: readonly { readonly faults: number; readonly medianMs: number }[]): number {
  const xy = points.map(({ faults, medianMs }) => [Math.log(faults), Math.log(medianMs)] as const);
  const mean = (k: 0 | 1): number => xy.reduce((sum, point) => sum + point[k], 0) / xy.length;
  const [mx, my] = [mean(0), mean(1)];
  const covariance = xy.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0);
  return covariance / xy.reduce((sum, [x]) => sum + (x - mx) ** 2, 0);
}

/** Milliseconds of one call, warmed up. */
export function spentOn(call: () => unknown, repeats: number): Spent {
  for (let i = 0; i < Math.min(5, repeats); i++) call();
  const times = Array.from({ length: repeats }, () => {
    const before = performance.now();
    call();
    return performance.now() - before;
  }).sort((a, b) => a - b);
  const at = (part: number): number =>
    times[Math.min(repeats - 1, Math.floor(part * repeats))] ?? 0;
  return { medianMs: at(0.5), p99Ms: at(0.99) };
}
