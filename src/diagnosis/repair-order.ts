import {
  afterCure,
  costOf,
  curedMass,
  isOpen,
  massOf,
  type RepairProblem,
  startOf,
  type WorkState,
} from "./repair-problem.ts";

/** Cures tried one after another until one works, then help; without any test. */
export interface RepairOrder {
  /** Indices of actions. */
  readonly order: readonly number[];
  readonly callsForHelp: boolean;
  /** Expected cost times the weight of the state it starts from. */
  readonly cost: number;
}

/** Weights below this part of the start are rounding. */
const NOTHING_LEFT = 1e-12;

/**
 * Expected cost of repair of a fixed order, help called after it where something can be left:
 * Σ cost_k · P(not yet repaired), hidden causes on the way.
 */
export function costOfOrder(problem: RepairProblem, order: readonly number[]): number {
  let state = startOf(problem);
  let cost = 0;
  const start = massOf(state.weights);
  for (const index of order) {
    if (massOf(state.weights) <= NOTHING_LEFT * start) break;
    cost += massOf(state.weights) * costOf(problem, state, index);
    const next = afterCure(problem, state, index);
    cost += next.hiddenCost;
    state = next.state;
  }
  const left = massOf(state.weights);
  return left > NOTHING_LEFT * start ? cost + left * problem.helpCost : cost;
}

/**
 * The order of probability per cost (reckoned anew after each failure), cut where calling for help
 * is cheapest: the best order where repairs are independent, and a feasible one everywhere.
 * Source: Kadane & Simon 1977; Heckerman, Breese & Rommelse 1995.
 */
export function efficientOrder(problem: RepairProblem, from: WorkState): RepairOrder {
  let state = from;
  let spent = 0;
  const order: number[] = [];
  const start = massOf(from.weights);
  let best: RepairOrder = { order: [], callsForHelp: true, cost: start * problem.helpCost };
  for (;;) {
    const index = mostEfficient(problem, state);
    if (index < 0) return best;
    spent += massOf(state.weights) * costOf(problem, state, index);
    const next = afterCure(problem, state, index);
    spent += next.hiddenCost;
    state = next.state;
    order.push(index);
    const left = massOf(state.weights);
    const done = left <= NOTHING_LEFT * start;
    const cost = done ? spent : spent + left * problem.helpCost;
    if (cost < best.cost) best = { order: [...order], callsForHelp: !done, cost };
    if (done || spent >= best.cost) return best;
  }
}

function mostEfficient(problem: RepairProblem, state: WorkState): number {
  let best = -1;
  let most = 0;
  for (const [index, { effect }] of problem.actions.entries()) {
    if (effect.kind !== "cure" || !isOpen(problem, state, index)) continue;
    const efficiency = curedMass(effect, state.weights) / costOf(problem, state, index);
    if (efficiency > most) [best, most] = [index, efficiency];
  }
  return best;
}

/**
 * A bound no plan can undercut: every trouble is known at once and mended the cheapest way. Where
 * nothing can be tested, the sharper bound of orders applies: each cure ends at most what it would
 * end if tried first.
 * Source: Vomlelová & Vomlel 2003 (ECR*), here with the last cure's cost counted in proportion.
 */
export function lowerBound(problem: RepairProblem, state: WorkState): number {
  const known = boundIfKnown(problem, state);
  const testable = problem.actions.some(
    ({ effect }, index) => effect.kind === "test" && isOpen(problem, state, index),
  );
  return testable ? known : Math.max(known, boundOfOrders(problem, state));
}

function boundIfKnown(problem: RepairProblem, state: WorkState): number {
  const cheapest = new Float64Array(state.weights.length).fill(problem.helpCost);
  for (const [index, action] of problem.actions.entries()) {
    if (action.effect.kind !== "cure" || state.done.includes(index)) continue;
    const cost = costOf(problem, state, index);
    for (let i = 0; i < cheapest.length; i++) {
      const chance = action.effect.chance[i] ?? 0;
      if (chance > 0) cheapest[i] = Math.min(cheapest[i] ?? Infinity, cost);
    }
  }
  return state.weights.reduce(
    (sum, weight, i) => (weight > 0 ? sum + weight * (cheapest[i] ?? 0) : sum),
    0,
  );
}

function boundOfOrders(problem: RepairProblem, state: WorkState): number {
  let left = massOf(state.weights);
  let bound = 0;
  const cures = problem.actions
    .flatMap(({ effect, access, cost, away }, index) => {
      if (effect.kind !== "cure" || state.done.includes(index)) return [];
      const shared = access >= 0 || away || effect.leaves.some((to) => to >= 0);
      // What is paid once may have been paid for another action: only its own cost is certain.
      const least = shared ? cost : costOf(problem, state, index);
      return [{ cost: least, mass: curedMass(effect, state.weights) }];
    })
    .filter(({ mass }) => mass > 0)
    .sort((a, b) => b.mass / b.cost - a.mass / a.cost);
  if (problem.actions.some(({ effect }) => leavesSomething(effect))) return 0;
  let least = left * problem.helpCost;
  for (const { cost, mass } of cures) {
    if (left <= 0) break;
    const ended = Math.min(mass, left);
    bound += left * cost * (ended / mass);
    left -= ended;
    least = Math.min(least, left > 0 ? bound + left * problem.helpCost : bound);
  }
  return least;
}

function leavesSomething(effect: RepairProblem["actions"][number]["effect"]): boolean {
  return effect.kind === "cure" && effect.leaves.some((to) => to >= 0);
}
