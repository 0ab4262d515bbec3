import { ExactSearch } from "./exact-search.ts";
import type { PlanNode } from "./plan-tree.ts";
import { lowerBound } from "./repair-order.ts";
import { type RepairProblem, startOf } from "./repair-problem.ts";
import { StepwiseSearch } from "./stepwise-search.ts";

export interface Solution {
  readonly root: PlanNode;
  /** Expected cost of following it, times the weight of the start. */
  readonly cost: number;
  /** No plan whatever costs less. */
  readonly bound: number;
}

/** With more actions than this no budget in use suffices for the exact search. */
const MOST_FOR_EXACT = 14;

/**
 * The plan with the least expected cost. Within the node budget every contingent plan is searched
 * (depth first, cut by the lower bound, each state once), and the plan is optimal; beyond it each
 * step is the best one if the order of probability per cost were followed afterwards, which can
 * only improve on that order.
 * @param nodes most states to be looked at, > 0
 */
export function solveRepair(problem: RepairProblem, nodes: number): Solution {
  const start = startOf(problem);
  const small = problem.actions.length <= MOST_FOR_EXACT;
  const exact = small ? new ExactSearch(problem, Math.ceil(nodes / 4)).solve(start) : null;
  if (exact !== null) return { ...exact, bound: exact.cost };
  const improved = new StepwiseSearch(problem, nodes).plan(start);
  return { ...improved, bound: lowerBound(problem, start) };
}
