import { describe, expect, it } from "vitest";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { expected, pricesOf, visitPolicy } from "../../src/diagnosis/cost-to-go.ts";
import { costOfOrder, efficientOrder, lowerBound } from "../../src/diagnosis/repair-order.ts";
import { startOf } from "../../src/diagnosis/repair-problem.ts";
import { solveRepair } from "../../src/diagnosis/repair-search.ts";
import { shortlist } from "../../src/diagnosis/shortlist.ts";
import {
  makeCheck,
  makeFault,
  makeKnowledge,
  makeObservation,
  makeRemedy,
} from "../helpers/knowledge-maker.ts";
import {
  cureOf,
  independentRepairs,
  makeAction,
  makeProblem,
  permutations,
} from "../helpers/repair-maker.ts";

const NODES = 20_000;

describe("orders of repair against worked examples", () => {
  // Smith's rule, weighted completion time, as in an algorithms textbook (Smith 1956).
  it("finds 18 for times 1, 3 and weights 10, 2, the other order 46", () => {
    const problem = independentRepairs([10, 2], [1, 3]);
    expect(costOfOrder(problem, [0, 1])).toBeCloseTo(18, 12);
    expect(costOfOrder(problem, [1, 0])).toBeCloseTo(46, 12);
    expect(solveRepair(problem, NODES).cost).toBeCloseTo(18, 12);
    const shares = independentRepairs([10 / 12, 2 / 12], [1, 3]);
    expect(costOfOrder(shares, [0, 1])).toBeCloseTo(1.5, 12);
    expect(costOfOrder(shares, [1, 0])).toBeCloseTo(3.8333, 4);
  });

  // Series test that stops at the first failure; published exercise, answers by brute force.
  it("finds Y, Z, X for tests that stop at the first failure", () => {
    const chance = [0.125, 0.075, 0.14];
    const subsets = Array.from({ length: 8 }, (_, bits) => [0, 1, 2].map((k) => (bits >> k) & 1));
    const weights = subsets.map((failed) =>
      chance.reduce((product, p, k) => product * (failed[k] === 1 ? p : 1 - p), 1),
    );
    const actions = [51.75, 2, 52.4].map((cost, k) =>
      makeAction(
        "XYZ"[k] ?? "",
        cost,
        cureOf([...subsets.keys()].filter((s) => subsets[s]?.[k] === 1)),
      ),
    );
    const free = makeProblem(weights, actions, { helpCost: 0 });
    const table = { "1,2,0": 91.637125, "1,0,2": 92.28, "2,1,0": 95.287125, "0,1,2": 95.91125 };
    const rest = { "2,0,1": 98.41, "0,2,1": 99.105 };
    for (const [order, cost] of Object.entries({ ...table, ...rest })) {
      expect(costOfOrder(free, order.split(",").map(Number)), order).toBeCloseTo(cost, 9);
    }
    const dear = makeProblem(weights, actions, { helpCost: 1000 });
    expect(efficientOrder(dear, startOf(dear)).order).toEqual([1, 2, 0]);
    expect(solveRepair(dear, NODES).cost - 1000 * (weights[0] ?? 0)).toBeCloseTo(91.637125, 9);
  });

  // Lower bound on ECR (Ottosen & Jensen): unit costs, efficiencies .9 and .8.
  it("takes the more efficient of two overlapping actions first: 1.1, not 1.2", () => {
    const actions = [makeAction("a", 1, cureOf([0, 1])), makeAction("b", 1, cureOf([0, 2]))];
    const problem = makeProblem([0.7, 0.2, 0.1], actions);
    expect(costOfOrder(problem, [0, 1])).toBeCloseTo(1.1, 12);
    expect(costOfOrder(problem, [1, 0])).toBeCloseTo(1.2, 12);
    expect(solveRepair(problem, NODES).cost).toBeCloseTo(1.1, 12);
    expect(lowerBound(problem, startOf(problem))).toBeLessThanOrEqual(1.1 + 1e-12);
  });

  // Independent actions, own numbers, all orders by brute force.
  it("orders five independent actions by probability per cost: 16.35", () => {
    const problem = independentRepairs([0.35, 0.25, 0.2, 0.15, 0.05], [10, 5, 20, 2, 1]);
    const costs = permutations(5).map((order) => costOfOrder(problem, order));
    expect(Math.min(...costs)).toBeCloseTo(16.35, 12);
    expect(Math.max(...costs)).toBeCloseTo(30.75, 12);
    expect(costOfOrder(problem, [3, 1, 4, 0, 2])).toBeCloseTo(16.35, 12);
    expect(costOfOrder(problem, [3, 4, 1, 0, 2])).toBeCloseTo(16.35, 12);
    expect(costOfOrder(problem, [0, 1, 2, 3, 4])).toBeCloseTo(21.7, 12);
    expect(costOfOrder(problem, [4, 3, 1, 0, 2])).toBeCloseTo(16.4, 12);
    const solved = solveRepair(problem, NODES);
    expect(solved.cost).toBeCloseTo(16.35, 12);
    expect(solved.bound).toBeCloseTo(16.35, 12);
  });

  // p/c fails by elimination: the last suspect needs no test. Own numbers.
  it("tests the rarer cause first where the last suspect needs no test: 5, not 10", () => {
    const mend = 1000;
    const [p, c] = [
      [0.9, 0.1],
      [10, 5],
    ];
    const test = (k: number) =>
      makeAction(`test${k + 1}`, c[k] ?? 0, {
        kind: "test",
        results: [
          { id: "found", chance: Float64Array.from(p, (_, i) => Number(i === k)) },
          { id: "clear", chance: Float64Array.from(p, (_, i) => Number(i !== k)) },
        ],
      });
    const actions = [
      makeAction("mend1", mend, cureOf([0])),
      makeAction("mend2", mend, cureOf([1])),
      test(0),
      test(1),
    ];
    const solved = solveRepair(makeProblem(p, actions), NODES);
    expect(solved.cost - mend).toBeCloseTo(5, 9);
    expect(solved.root).toMatchObject({ kind: "action", index: 3 });
  });

  // p/c fails with dependent actions; largest gap on a grid, own numbers by brute force.
  it("finds 1.50 where the order of probability per cost gives 1.65", () => {
    const actions = [
      [0, 1],
      [1, 2],
      [0, 3],
    ].map((cured, k) => makeAction(`a${k + 1}`, 1, cureOf(cured)));
    const problem = makeProblem([0.3, 0.25, 0.25, 0.2], actions);
    expect(efficientOrder(problem, startOf(problem))).toMatchObject({ order: [0, 1, 2] });
    expect(costOfOrder(problem, [0, 1, 2])).toBeCloseTo(1.65, 12);
    const solved = solveRepair(problem, NODES);
    expect(solved.cost).toBeCloseTo(1.5, 12);
    expect(solved.bound).toBeCloseTo(1.5, 12);
  });

  // Calling for help, own numbers.
  it("does three repairs and then calls for help: 24.05", () => {
    const problem = independentRepairs([0.4, 0.25, 0.15, 0.1, 0.1], [4, 8, 15, 30, 60], 50);
    expect(costOfOrder(problem, [0, 1, 2])).toBeCloseTo(24.05, 12);
    expect(costOfOrder(problem, [0, 1, 2, 3])).toBeCloseTo(25.05, 12);
    expect(costOfOrder(problem, [0, 1, 2, 3, 4])).toBeCloseTo(26.05, 12);
    expect(costOfOrder(problem, [])).toBeCloseTo(50, 12);
    expect(efficientOrder(problem, startOf(problem))).toMatchObject({ order: [0, 1, 2] });
    expect(solveRepair(problem, NODES).cost).toBeCloseTo(24.05, 12);
  });

  // One-step look-ahead fails, own numbers by brute force over subsets and orders.
  it("goes on where one step ahead would call for help: 92.50", () => {
    const problem = independentRepairs([0.9, 0.09, 0.01], [91, 10, 50], 100);
    expect(costOfOrder(problem, [])).toBeCloseTo(100, 12);
    expect(costOfOrder(problem, [0])).toBeCloseTo(101, 12);
    expect(costOfOrder(problem, [1])).toBeCloseTo(101, 12);
    expect(costOfOrder(problem, [0, 1])).toBeCloseTo(93, 12);
    expect(costOfOrder(problem, [1, 0])).toBeCloseTo(93.81, 12);
    expect(costOfOrder(problem, [0, 1, 2])).toBeCloseTo(92.5, 12);
    const solved = solveRepair(problem, NODES);
    expect(solved.cost).toBeCloseTo(92.5, 12);
    expect(solved.bound).toBeLessThanOrEqual(92.5 + 1e-9);
  });

  // Inspect, then repair what is found; own numbers.
  it("orders inspections by probability per inspection: 71.80", () => {
    const p = [0.45, 0.3, 0.15, 0.1];
    const look = [5, 3, 10, 8];
    const fix = [80, 5, 150, 20];
    const at = (order: readonly number[]) => {
      const repairs = p.reduce((sum, chance, k) => sum + chance * (fix[k] ?? 0), 0);
      return costOfOrder(independentRepairs(p, look), order) + repairs;
    };
    const all = permutations(4).map(at);
    expect(at([1, 0, 2, 3])).toBeCloseTo(71.8, 12);
    expect(at([0, 1, 2, 3])).toBeCloseTo(71.95, 12);
    expect(at([1, 0, 3, 2])).toBeCloseTo(72, 12);
    expect(Math.min(...all)).toBeCloseTo(71.8, 12);
    expect(Math.max(...all)).toBeCloseTo(83.65, 12);
    const ids = p.map((_, k) => `f${k + 1}`);
    const row = (k: number, f: number) => (k === f ? [0, 1] : [1, 0]);
    const knowledge = makeKnowledge({
      faults: ids.map((id, k) =>
        makeFault(id, { share: p[k] ?? 0, rows: new Map([[`o-${id}`, row(k, k)]]) }),
      ),
      observations: ids.map((id) => makeObservation(`o-${id}`, ["fine", "bad"], [1, 0])),
      checks: ids.map((id, k) => makeCheck(`look-${id}`, `o-${id}`, { minutes: look[k] ?? 0 })),
      remedies: ids.map((id, k) => makeRemedy(`mend-${id}`, { minutes: fix[k] ?? 0 })),
      rates: { somethingElse: 0, nothingWrong: 0 },
    });
    const model = compileModel(knowledge, { kind: "other" });
    const list = shortlist(model, model.hypotheses.prior);
    const prices = pricesOf(model, list, {
      performer: "technician",
      place: "at-machine",
      has: [],
      asked: [],
      refused: [],
      urgency: "low",
      carried: [],
    });
    const visit = visitPolicy(prices, list.weights);
    expect(expected(list.weights, visit.costs)).toBeCloseTo(71.8, 9);
  });
});
