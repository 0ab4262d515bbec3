import type { ActionNode, PlanNode } from "./plan-tree.ts";
import { createRandom } from "./random.ts";
import { massOf, type RepairProblem } from "./repair-problem.ts";

export interface SimulationOptions {
  readonly seed: number;
  readonly samples: number;
  /** The chance that the machine runs on arrival, and the minutes to see so. */
  readonly runs: { readonly chance: number; readonly minutes: number };
}

/**
 * Minutes at the machine, travel apart, by following the plan on simulated cases. The weights in
 * the plan are already joint with its results, so a case is followed by its branches' weights.
 * @returns median and 90 % in minutes, median ≤ p90
 */
export function simulateMinutes(
  problem: RepairProblem,
  root: PlanNode,
  options: SimulationOptions,
): { readonly median: number; readonly p90: number } {
  const random = createRandom(options.seed);
  const minutes = Float64Array.from({ length: Math.max(1, options.samples) }, () =>
    random() < options.runs.chance || massOf(problem.weights) <= 0
      ? options.runs.minutes
      : oneVisit(problem, root, random),
  ).sort();
  return { median: quantile(minutes, 0.5), p90: quantile(minutes, 0.9) };
}

function oneVisit(problem: RepairProblem, root: PlanNode, random: () => number): number {
  let minutes = 0;
  let node = root;
  while (node.kind === "action") {
    const action = problem.actions[node.index];
    minutes += (action?.cost ?? 0) + (node.opens < 0 ? 0 : (problem.accessCosts[node.opens] ?? 0));
    node = pick(node, random());
  }
  return node.kind === "help" ? minutes + problem.helpCost : minutes;
}

function pick(node: ActionNode, at: number): PlanNode {
  let left = at * node.branches.reduce((sum, branch) => sum + branch.mass, 0);
  for (const branch of node.branches) {
    left -= branch.mass;
    if (left < 0) return branch.node;
  }
  return node.branches[node.branches.length - 1]?.node ?? { kind: "done" };
}

function quantile(sorted: Float64Array, part: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? 0;
}
