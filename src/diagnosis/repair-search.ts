import { efficientOrder, lowerBound } from "./repair-order.ts";
import {
  afterCure,
  afterTest,
  costOf,
  isOpen,
  massOf,
  type RepairProblem,
  startOf,
  type WorkState,
} from "./repair-problem.ts";

/** What to do, and what then. */
export type PlanNode = DoneNode | HelpNode | ActionNode;

export interface DoneNode {
  readonly kind: "done";
}

export interface HelpNode {
  readonly kind: "help";
  readonly mass: number;
}

export interface ActionNode {
  readonly kind: "action";
  /** Index of the action. */
  readonly index: number;
  /** Weight with which it is reached. */
  readonly mass: number;
  /** Index of the place opened up for it, -1: none. */
  readonly opens: number;
  readonly fetches: boolean;
  /** Checks to make although the machine runs again, for causes that would bring it back. */
  readonly looksFor: readonly string[];
  readonly branches: readonly {
    readonly result: string;
    readonly mass: number;
    readonly node: PlanNode;
  }[];
}

export interface Solution {
  readonly root: PlanNode;
  /** Expected cost of following it, times the weight of the start. */
  readonly cost: number;
  /** No plan whatever costs less. */
  readonly bound: number;
}

/** What a cure's branches are called: the outcomes of an act. */
export const CURED = "cured";
export const NO_CHANGE = "no-change";

export const DONE: DoneNode = { kind: "done" };

/** Branches below this part of all belief follow the plain order without further thought. */
const WORTH_A_THOUGHT = 0.004;

/** Actions that are thought through at one step, where not all can be. */
const BEST_CURES = 5;
const BEST_TESTS = 8;

/**
 * The plan with the least expected cost. Within the node budget every contingent plan is searched
 * (depth first, cut by the lower bound, each state once), and the plan is optimal; beyond it each
 * step is the best one if the order of probability per cost were followed afterwards, which can
 * only improve on that order.
 * @param nodes most states to be looked at, > 0
 */
export function solveRepair(problem: RepairProblem, nodes: number): Solution {
  const start = startOf(problem);
  const exact = new ExactSearch(problem, Math.ceil(nodes / 2)).solve(start);
  if (exact !== null) return { ...exact, bound: exact.cost };
  const improved = new StepByStep(problem, nodes).plan(start);
  return { ...improved, bound: lowerBound(problem, start) };
}

interface Found {
  readonly root: PlanNode;
  readonly cost: number;
}

class ExactSearch {
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

class StepByStep {
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

interface Followed {
  readonly branches: readonly {
    readonly result: string;
    readonly mass: number;
    readonly state: WorkState;
  }[];
  readonly hiddenCost: number;
  readonly looksFor: readonly string[];
}

/** Where an action leads; troubles that are over are in no branch. */
function follow(problem: RepairProblem, state: WorkState, index: number): Followed {
  if (problem.actions[index]?.effect.kind === "test") {
    return { branches: afterTest(problem, state, index), hiddenCost: 0, looksFor: [] };
  }
  const { state: next, hiddenCost, looksFor } = afterCure(problem, state, index);
  const mass = massOf(next.weights);
  const branches = mass > 1e-15 ? [{ result: NO_CHANGE, mass, state: next }] : [];
  return { branches, hiddenCost, looksFor };
}

function nodeOf(
  problem: RepairProblem,
  state: WorkState,
  step: Pick<ActionNode, "index" | "branches" | "looksFor">,
): ActionNode {
  const action = problem.actions[step.index];
  const access = action?.access ?? -1;
  const mass = massOf(state.weights);
  const ended = mass - step.branches.reduce((sum, branch) => sum + branch.mass, 0);
  const over = action?.effect.kind === "cure" && ended > 1e-15;
  return {
    kind: "action",
    mass,
    opens: state.opened.includes(access) ? -1 : access,
    fetches: action?.away === true && !state.fetched,
    ...step,
    branches: over ? [{ result: CURED, mass: ended, node: DONE }, ...step.branches] : step.branches,
  };
}

/** A plain order as a chain of nodes. */
function followOrder(
  problem: RepairProblem,
  state: WorkState,
  plain: { readonly order: readonly number[]; readonly callsForHelp: boolean },
): PlanNode {
  const [index, ...order] = plain.order;
  const mass = massOf(state.weights);
  if (index === undefined) return plain.callsForHelp ? { kind: "help", mass } : DONE;
  const next = follow(problem, state, index);
  const branches = next.branches.map((branch) => ({
    result: branch.result,
    mass: branch.mass,
    node: followOrder(problem, branch.state, { ...plain, order }),
  }));
  return nodeOf(problem, state, { index, branches, looksFor: next.looksFor });
}

function byPromise(problem: RepairProblem, state: WorkState): readonly number[] {
  const all = [...problem.actions.keys()].filter((index) => isOpen(problem, state, index));
  const promise = new Map(all.map((index) => [index, promiseOf(problem, state, index)]));
  return all.sort((a, b) => (promise.get(b) ?? 0) - (promise.get(a) ?? 0));
}

function promising(problem: RepairProblem, state: WorkState): readonly number[] {
  const ranked = byPromise(problem, state);
  const of = (kind: "cure" | "test") =>
    ranked.filter((index) => problem.actions[index]?.effect.kind === kind);
  return [...of("cure").slice(0, BEST_CURES), ...of("test").slice(0, BEST_TESTS)];
}

/** Rough merit: trouble ended, or doubt removed, per cost. */
function promiseOf(problem: RepairProblem, state: WorkState, index: number): number {
  const action = problem.actions[index];
  if (action === undefined) return 0;
  const { effect } = action;
  const { weights } = state;
  const mass = massOf(weights);
  if (effect.kind === "cure") {
    let sum = 0;
    for (let i = 0; i < weights.length; i++) sum += (weights[i] ?? 0) * (effect.chance[i] ?? 0);
    return sum / costOf(problem, state, index);
  }
  let told = 0;
  for (const { chance } of effect.results) {
    let joint = 0;
    for (let i = 0; i < weights.length; i++) joint += (weights[i] ?? 0) * (chance[i] ?? 0);
    const mean = joint / mass;
    for (let i = 0; i < weights.length; i++) {
      told += (weights[i] ?? 0) * Math.abs((chance[i] ?? 0) - mean);
    }
  }
  return told / 2 / costOf(problem, state, index);
}
