import {
  afterCure,
  afterTest,
  massOf,
  type RepairProblem,
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

/** What a cure's branches are called: the outcomes of an act. */
export const CURED = "cured";
export const NO_CHANGE = "no-change";

export const DONE: DoneNode = { kind: "done" };

/** A plan with its expected cost times the weight of the state it starts from. */
export interface Found {
  readonly root: PlanNode;
  readonly cost: number;
}

export interface Followed {
  readonly branches: readonly {
    readonly result: string;
    readonly mass: number;
    readonly state: WorkState;
  }[];
  readonly hiddenCost: number;
  readonly looksFor: readonly string[];
}

/** Where an action leads; troubles that are over are in no branch. */
export function follow(problem: RepairProblem, state: WorkState, index: number): Followed {
  if (problem.actions[index]?.effect.kind === "test") {
    return { branches: afterTest(problem, state, index), hiddenCost: 0, looksFor: [] };
  }
  const { state: next, hiddenCost, looksFor } = afterCure(problem, state, index);
  const mass = massOf(next.weights);
  const branches = mass > 1e-15 ? [{ result: NO_CHANGE, mass, state: next }] : [];
  return { branches, hiddenCost, looksFor };
}

export function nodeOf(
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
export function followOrder(
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
