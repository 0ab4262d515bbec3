import { DONE, type Found, follow, followOrder, nodeOf } from "./plan-tree.ts";
import { byPromise } from "./promise.ts";
import { efficientOrder } from "./repair-order.ts";
import { costOf, massOf, type RepairProblem, type WorkState } from "./repair-problem.ts";

/** Branches below this part of all belief follow the plain order without further thought. */
const WORTH_A_THOUGHT = 0.004;

/** Actions that are thought through at one step, where not all can be. */
const BEST_CURES = 5;
const BEST_TESTS = 8;

/**
 * Each step is the best one if the order of probability per cost were followed afterwards; after
 * each result the same again. Never worse than that order from the start.
 */
export class StepwiseSearch {
  readonly #problem: RepairProblem;
  readonly #total: number;
  #nodes: number;

  constructor(problem: RepairProblem, nodes: number) {
    this.#problem = problem;
    this.#total = massOf(problem.weights);
    this.#nodes = nodes;
  }

  plan(state: WorkState): Found {
    const problem = this.#problem;
    const mass = massOf(state.weights);
    if (mass <= 0) return { root: DONE, cost: 0 };
    const plain = efficientOrder(problem, state);
    const asIs = { root: followOrder(problem, state, plain), cost: plain.cost };
    if (mass < WORTH_A_THOUGHT * this.#total || this.#nodes <= 0) return asIs;
    const index = this.#bestStep(state, plain.cost);
    if (index < 0) return asIs;
    const next = follow(problem, state, index);
    let cost = mass * costOf(problem, state, index) + next.hiddenCost;
    const branches = next.branches
      .map((branch) => ({ branch, found: this.plan(branch.state) }))
      .map(({ branch, found }) => {
        cost += found.cost;
        return { result: branch.result, mass: branch.mass, node: found.root };
      });
    if (cost >= plain.cost) return asIs;
    return { root: nodeOf(problem, state, { index, branches, looksFor: next.looksFor }), cost };
  }

  #bestStep(state: WorkState, plainCost: number): number {
    const problem = this.#problem;
    let best = -1;
    let least = plainCost * (1 - 1e-9);
    for (const index of promising(problem, state)) {
      const next = follow(problem, state, index);
      let cost = massOf(state.weights) * costOf(problem, state, index) + next.hiddenCost;
      for (const branch of next.branches) {
        if (cost >= least) break;
        this.#nodes -= 1;
        cost += efficientOrder(problem, branch.state).cost;
      }
      if (cost < least) [best, least] = [index, cost];
    }
    return best;
  }
}

function promising(problem: RepairProblem, state: WorkState): readonly number[] {
  const ranked = byPromise(problem, state);
  const of = (kind: "cure" | "test") =>
    ranked.filter((index) => problem.actions[index]?.effect.kind === kind);
  return [...of("cure").slice(0, BEST_CURES), ...of("test").slice(0, BEST_TESTS)];
}
