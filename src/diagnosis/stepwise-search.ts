import { DONE, type Found, follow, followOrder, nodeOf } from "./plan-tree.ts";
import { type OpenAction, openActions } from "./promise.ts";
import { efficientOrder } from "./repair-order.ts";
import { costOf, massOf, type RepairProblem, type WorkState } from "./repair-problem.ts";

/** Branches below this part of all belief follow the plain order without further thought. */
const WORTH_A_THOUGHT = 0.004;

/** Actions that are thought through at one step. */
const BEST_CURES = 5;
const BEST_TESTS = 8;

/**
 * Each step is the best one if the order of probability per cost were followed afterwards; after
 * each result the same again. Never worse than that order from the start.
 */
export class StepwiseSearch {
  readonly #problem: RepairProblem;
  readonly #total: number;
  /** Orders that may still be reckoned out. */
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
    const step =
      mass < WORTH_A_THOUGHT * this.#total || this.#nodes <= 0
        ? null
        : this.#bestStep(state, plain.cost);
    const stepped = step === null ? null : this.#through(state, step);
    if (stepped !== null && stepped.cost < plain.cost) return stepped;
    return { root: followOrder(problem, state, plain), cost: plain.cost };
  }

  #through(state: WorkState, { index, action }: OpenAction): Found {
    const next = follow(state, action, index);
    let cost = massOf(state.weights) * costOf(this.#problem, state, action) + next.hiddenCost;
    const branches = next.branches.map(({ result, mass, state: after }) => {
      const found = this.plan(after);
      cost += found.cost;
      return { result, mass, node: found.root };
    });
    return { root: nodeOf(state, action, { index, branches, looksFor: next.looksFor }), cost };
  }

  /** The step with the least cost if the plain order follows; null: the plain order's own. */
  #bestStep(state: WorkState, plainCost: number): OpenAction | null {
    let found: OpenAction | null = null;
    let least = plainCost * (1 - 1e-9);
    for (const open of this.#promising(state)) {
      const next = follow(state, open.action, open.index);
      let cost = massOf(state.weights) * costOf(this.#problem, state, open.action);
      cost += next.hiddenCost;
      for (const branch of next.branches) {
        if (cost >= least) break;
        this.#nodes -= 1;
        cost += efficientOrder(this.#problem, branch.state).cost;
      }
      if (cost < least) {
        found = open;
        least = cost;
      }
    }
    return found;
  }

  #promising(state: WorkState): readonly OpenAction[] {
    const ranked = openActions(this.#problem, state);
    const of = (kind: "cure" | "test") =>
      ranked.filter(({ action }) => action.effect.kind === kind);
    return [...of("cure").slice(0, BEST_CURES), ...of("test").slice(0, BEST_TESTS)];
  }
}
