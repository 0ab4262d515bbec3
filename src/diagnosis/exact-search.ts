import { DONE, type Found, follow, followOrder, nodeOf, type PlanNode } from "./plan-tree.ts";
import { type OpenAction, openActions } from "./promise.ts";
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
    if (massOf(state.weights) <= 0) return { root: DONE, cost: 0 };
    const key = [...state.path].sort().join(",");
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    this.#nodes -= 1;
    if (this.#nodes < 0) return null;
    const plain = efficientOrder(this.#problem, state);
    let found: Found | null = null;
    let least = plain.cost;
    for (const open of openActions(this.#problem, state)) {
      const tried = this.#through(state, open, least);
      if (tried === "out-of-nodes") return null;
      if (tried === null || tried.cost >= least) continue;
      found = tried;
      least = tried.cost;
    }
    found ??= { root: followOrder(this.#problem, state, plain), cost: plain.cost };
    this.#known.set(key, found);
    return found;
  }

  /** Null when it cannot beat the least cost so far. */
  #through(state: WorkState, open: OpenAction, least: number): Found | null | "out-of-nodes" {
    const { index, action } = open;
    let cost = massOf(state.weights) * costOf(this.#problem, state, action);
    if (cost >= least) return null;
    const next = follow(state, action, index);
    cost += next.hiddenCost;
    const bounds = next.branches.map((branch) => lowerBound(this.#problem, branch.state));
    let ahead = bounds.reduce((sum, bound) => sum + bound, 0);
    const branches: { result: string; mass: number; node: PlanNode }[] = [];
    for (const [number, { result, mass, state: after }] of next.branches.entries()) {
      if (cost + ahead >= least) return null;
      const found = this.solve(after);
      if (found === null) return "out-of-nodes";
      ahead -= bounds[number] ?? 0;
      cost += found.cost;
      branches.push({ result, mass, node: found.root });
    }
    return { root: nodeOf(state, action, { index, branches, looksFor: next.looksFor }), cost };
  }
}
