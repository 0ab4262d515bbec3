import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { costOfOrder, efficientOrder, lowerBound } from "../../src/diagnosis/repair-order.ts";
import {
  type RepairAction,
  type RepairProblem,
  startOf,
} from "../../src/diagnosis/repair-problem.ts";
import { solveRepair } from "../../src/diagnosis/repair-search.ts";
import { StepwiseSearch } from "../../src/diagnosis/stepwise-search.ts";
import { anyRow } from "../helpers/knowledge-maker.ts";
import { cureOf, makeAction, makeProblem, permutations } from "../helpers/repair-maker.ts";

/**
 * The referee: every contingent plan by plain recursion, without bounds, memory or shortcuts.
 * Written from the definitions; shares no code with the search.
 */
function bruteForce(problem: RepairProblem): number {
  const go = (
    weights: readonly number[],
    done: readonly number[],
    open: readonly number[],
    away: boolean,
  ): number => {
    const mass = weights.reduce((sum, w) => sum + w, 0);
    if (mass <= 1e-15) return 0;
    let least = mass * problem.helpCost;
    for (const [index, action] of problem.actions.entries()) {
      if (done.includes(index)) continue;
      const opening = action.access >= 0 && !open.includes(action.access);
      const cost =
        action.cost +
        (opening ? (problem.accessCosts[action.access] ?? 0) : 0) +
        (action.away && !away ? problem.secondTripCost : 0);
      const next = branches(weights, action).map((after) =>
        go(after, [...done, index], opening ? [...open, action.access] : open, away || action.away),
      );
      least = Math.min(least, mass * cost + next.reduce((sum, value) => sum + value, 0));
    }
    return least;
  };
  return go([...problem.weights], [], [], false);
}

function branches(weights: readonly number[], { effect }: RepairAction): readonly number[][] {
  if (effect.kind === "test") {
    return effect.results.map(({ chance }) => weights.map((w, i) => w * (chance[i] ?? 0)));
  }
  const after = [...weights];
  for (const [k, trouble] of effect.troubles.entries()) {
    const moved = (weights[trouble] ?? 0) * (effect.chance[k] ?? 0);
    after[trouble] = (after[trouble] ?? 0) - moved;
    const left = effect.leaves[k] ?? -1;
    if (left >= 0) after[left] = (after[left] ?? 0) + moved;
  }
  return [after.map((w) => (Math.abs(w) < 1e-15 ? 0 : w))];
}

const anyTest = (troubles: number, id: string) =>
  fc
    .record({
      cost: fc.integer({ min: 1, max: 20 }),
      rows: fc.tuple(...Array.from({ length: troubles }, () => anyRow(2))),
    })
    .map(({ cost, rows }) =>
      makeAction(id, cost, {
        kind: "test",
        results: [0, 1].map((s) => ({
          id: `r${s}`,
          chance: Float64Array.from(rows, (row) => row[s] ?? 0),
        })),
      }),
    );

const anyCure = (troubles: number, id: string) =>
  fc
    .record({
      cost: fc.integer({ min: 1, max: 60 }),
      works: fc.uniqueArray(fc.nat(troubles - 1), { minLength: 1, maxLength: 2 }),
      chance: fc.integer({ min: 5, max: 10 }),
      access: fc.constantFrom(-1, 0),
      away: fc.boolean(),
    })
    .map(({ cost, works, chance, access, away }) =>
      makeAction(id, cost, cureOf(works, chance / 10), { access, away }),
    );

/** Four troubles, four cures, two tests, one place to open, a second trip, help. */
const anyProblem = fc
  .record({
    weights: anyRow(4),
    cures: fc.tuple(...[0, 1, 2, 3].map((k) => anyCure(4, `c${k}`))),
    tests: fc.tuple(...[0, 1].map((k) => anyTest(4, `t${k}`))),
    helpCost: fc.integer({ min: 20, max: 150 }),
    opening: fc.integer({ min: 0, max: 20 }),
  })
  .map(({ weights, cures, tests, helpCost, opening }) =>
    makeProblem(weights, [...cures, ...tests], {
      helpCost,
      secondTripCost: 40,
      accessCosts: [opening],
    }),
  );

describe("the search for a plan", () => {
  it("finds the optimum of every contingent plan", () => {
    fc.assert(
      fc.property(anyProblem, (problem) => {
        const solved = solveRepair(problem, 100_000);
        expect(solved.cost).toBeCloseTo(bruteForce(problem), 8);
        expect(solved.bound).toBeCloseTo(solved.cost, 12);
      }),
      { seed: 51, numRuns: 40 },
    );
  });

  it("is never dearer than a fixed order, whatever the budget, nor cheaper than its bound", () => {
    fc.assert(
      fc.property(anyProblem, fc.constantFrom(1, 10, 200), (problem, nodes) => {
        const solved = solveRepair(problem, nodes);
        const optimum = bruteForce(problem);
        expect(solved.cost).toBeGreaterThanOrEqual(optimum - 1e-9);
        expect(solved.bound).toBeLessThanOrEqual(optimum + 1e-9);
        expect(lowerBound(problem, startOf(problem))).toBeLessThanOrEqual(optimum + 1e-9);
        const plain = efficientOrder(problem, startOf(problem));
        expect(solved.cost).toBeLessThanOrEqual(plain.cost + 1e-9);
        expect(new StepwiseSearch(problem, nodes).plan(startOf(problem)).cost).toBeLessThanOrEqual(
          plain.cost + 1e-9,
        );
        if (nodes < 200) return;
        for (const order of permutations(4)) {
          expect(optimum).toBeLessThanOrEqual(costOfOrder(problem, order) + 1e-9);
        }
      }),
      { seed: 52, numRuns: 40 },
    );
  });

  it("pays for a cause left behind: looks for it, or risks the comeback", () => {
    const hidden = (lookCost: number) => ({
      troubles: [1],
      lookCost,
      fixCost: 30,
      comebackCost: 120,
      lookCheck: "charging",
    });
    const charge = (lookCost: number) =>
      makeAction("charge", 10, { ...cureOf([0, 1]), hidden: [hidden(lookCost)] });
    const [cheap, dear] = [5, 100].map((look) => makeProblem([0.5, 0.5], [charge(look)]));
    expect(cheap === undefined ? 0 : costOfOrder(cheap, [0])).toBeCloseTo(10 + 5 + 0.5 * 30, 12);
    expect(dear === undefined ? 0 : costOfOrder(dear, [0])).toBeCloseTo(10 + 0.5 * 120, 12);
    const solved = cheap === undefined ? null : solveRepair(cheap, 100);
    expect(solved?.root).toMatchObject({ kind: "action", looksFor: ["charging"] });
  });
});
