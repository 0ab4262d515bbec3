import { DONE, type Found, follow, followOrder, nodeOf, type PlanNode } from "./plan-tree.ts";
import { byPromise } from "./promise.ts";
import { efficientOrder, lowerBound } from "./repair-order.ts";
import { costOf, massOf, type RepairProblem, type WorkState } from "./repair-problem.ts";

/**
 * Every contingent plan, depth first, cut by the lower bound, each state once: the optimum, or
 * nothing when the budget of states does not suffice.
 */
export class ExactSearch {
  readonly #problem: RepairProblem;
  readonly #known = new Map<string, Found>();
  #nodes: number;

  constructor(problem: RepairProblem, nodes: number) {
    this.#problem = problem;
    this.#nodes = nodes;
  }

  /** Null when the budget does not suffice. */
  solve(state: WorkState): Found | null {
    const mass = massOf(state.weights);
    if (mass <= 0) return { root: DONE, cost: 0 };
    const known = this.#known.get(state.key);
    if (known !== undefined) return known;
    this.#nodes -= 1;
    if (this.#nodes < 0) return null;
    const plain = efficientOrder(this.#problem, state);
    let best: Found | null = null;
    let least = plain.cost;
    for (const index of byPromise(this.#problem, state)) {
      const own = mass * costOf(this.#problem, state, index);
      if (own >= least) continue;
      const tried = this.#through(state, index, { own, least });
      if (tried === "out-of-nodes") return null;
      if (tried === null || tried.cost >= least) continue;
      best = tried;
      least = tried.cost;
    }
    const found = best ?? { root: followOrder(this.#problem, state, plain), cost: plain.cost };
    this.#known.set(state.key, found);
    return found;
  }

  /** Null when it cannot beat the best so far. */
  #through(
    state: WorkState,
    index: number,
    at: { readonly own: number; readonly least: number },
  ): Found | null | "out-of-nodes" {
    const next = follow(this.#problem, state, index);
    let cost = at.own + next.hiddenCost;
    let ahead = next.branches.reduce((sum, b) => sum + lowerBound(this.#problem, b.state), 0);
    const branches: { result: string; mass: number; node: PlanNode }[] = [];
    for (const branch of next.branches) {
      if (cost + ahead >= at.least) return null;
      const found = this.solve(branch.state);
      if (found === null) return "out-of-nodes";
      ahead -= lowerBound(this.#problem, branch.state);
      cost += found.cost;
      branches.push({ result: branch.result, mass: branch.mass, node: found.root });
    }
    return {
      root: nodeOf(this.#problem, state, { index, branches, looksFor: next.looksFor }),
      cost,
    };
  }
}
