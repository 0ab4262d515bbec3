import {
  applyCure,
  type Cure,
  costOf,
  curedMass,
  massOf,
  type RepairAction,
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

/** A state worked on in place. */
interface Work {
  readonly weights: Float64Array;
  readonly done: Uint8Array;
  readonly opened: Uint8Array;
  fetched: boolean;
}

/**
 * Expected cost of repair of a fixed order, help called after it where something can be left:
 * Σ cost_k · P(not yet repaired), with what hidden causes cost on the way.
 */
export function costOfOrder(problem: RepairProblem, order: readonly number[]): number {
  const work = workFrom(startOf(problem));
  const start = massOf(work.weights);
  let cost = 0;
  for (const index of order) {
    const action = problem.actions[index];
    if (action === undefined || massOf(work.weights) <= NOTHING_LEFT * start) break;
    cost += massOf(work.weights) * costOf(problem, work, action);
    cost += doIt(work, action, index);
  }
  const left = massOf(work.weights);
  return left > NOTHING_LEFT * start ? cost + left * problem.helpCost : cost;
}

/**
 * The order of probability per cost (reckoned anew after each failure), cut where calling for help
 * is cheapest: the best order where repairs are independent, and a feasible one everywhere.
 * Source: Kadane & Simon 1977; Heckerman, Breese & Rommelse 1995.
 */
export function efficientOrder(problem: RepairProblem, from: WorkState): RepairOrder {
  const work = workFrom(from);
  const start = massOf(work.weights);
  const order: number[] = [];
  let left = start;
  let spent = 0;
  let best = { steps: 0, callsForHelp: true, cost: start * problem.helpCost };
  for (;;) {
    const index = mostEfficient(problem, work);
    const action = problem.actions[index];
    if (action === undefined) break;
    spent += left * costOf(problem, work, action) + doIt(work, action, index);
    order.push(index);
    left = massOf(work.weights);
    const done = left <= NOTHING_LEFT * start;
    const cost = done ? spent : spent + left * problem.helpCost;
    if (cost < best.cost) best = { steps: order.length, callsForHelp: !done, cost };
    if (done || spent >= best.cost) break;
  }
  return { order: order.slice(0, best.steps), callsForHelp: best.callsForHelp, cost: best.cost };
}

function workFrom(state: WorkState): Work {
  return {
    weights: Float64Array.from(state.weights),
    done: Uint8Array.from(state.done),
    opened: Uint8Array.from(state.opened),
    fetched: state.fetched,
  };
}

/** Carries an action out; returns what hidden causes cost. */
function doIt(work: Work, action: RepairAction, index: number): number {
  work.done[index] = 1;
  if (action.access >= 0) work.opened[action.access] = 1;
  work.fetched ||= action.away;
  return action.effect.kind === "cure" ? applyCure(action.effect, work.weights) : 0;
}

function mostEfficient(problem: RepairProblem, work: Work): number {
  const { actions } = problem;
  let best = -1;
  let most = 0;
  for (let index = 0; index < actions.length; index++) {
    const action = actions[index];
    if (action === undefined || action.effect.kind !== "cure" || work.done[index] === 1) continue;
    if (!action.after.every((before) => work.done[before] === 1)) continue;
    const efficiency = curedMass(action.effect, work.weights) / costOf(problem, work, action);
    if (efficiency > most) {
      best = index;
      most = efficiency;
    }
  }
  return best;
}

/**
 * A bound no plan can undercut: every trouble is known at once and mended the cheapest way. Where
 * nothing can be tested any more, the sharper bound of orders applies.
 */
export function lowerBound(problem: RepairProblem, state: WorkState): number {
  const known = boundIfKnown(problem, state);
  const testable = problem.actions.some(
    ({ effect }, index) => effect.kind === "test" && state.done[index] !== 1,
  );
  return testable ? known : Math.max(known, boundOfOrders(problem, state));
}

function boundIfKnown(problem: RepairProblem, state: WorkState): number {
  const cheapest = new Float64Array(state.weights.length).fill(problem.helpCost);
  for (const [index, action] of problem.actions.entries()) {
    if (action.effect.kind !== "cure" || state.done[index] === 1) continue;
    const cost = costOf(problem, state, action);
    for (const trouble of action.effect.troubles) {
      cheapest[trouble] = Math.min(cheapest[trouble] ?? Infinity, cost);
    }
  }
  let sum = 0;
  for (let i = 0; i < cheapest.length; i++) {
    const weight = state.weights[i] ?? 0;
    if (weight > 0) sum += weight * (cheapest[i] ?? 0);
  }
  return sum;
}

/**
 * Each cure ends at most what it would end if tried first, so the order of probability per cost
 * over these is a bound; help may be called after any of them.
 * Source: Vomlelová & Vomlel 2003 (ECR*), here with the last cure's cost counted in proportion.
 */
function boundOfOrders(problem: RepairProblem, state: WorkState): number {
  const cures = openCures(problem, state);
  if (cures.some(({ cure }) => cure.leaves.some((left) => left >= 0))) return 0;
  let left = massOf(state.weights);
  let bound = 0;
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

/** Cures still to be had, at the cost that is theirs alone, by probability per cost. */
function openCures(problem: RepairProblem, state: WorkState) {
  const cures: { readonly cure: Cure; readonly cost: number; readonly mass: number }[] = [];
  for (const [index, { effect, cost }] of problem.actions.entries()) {
    if (effect.kind !== "cure" || state.done[index] === 1) continue;
    const mass = curedMass(effect, state.weights);
    if (mass > 0) cures.push({ cure: effect, cost, mass });
  }
  return cures.sort((a, b) => b.mass / b.cost - a.mass / a.cost);
}
