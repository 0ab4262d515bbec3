import {
  applyCure,
  hiddenOf,
  massOf,
  moved,
  type RepairAction,
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

/** Weights below this are rounding. */
const ROUNDING = 1e-15;

/** Where an action leads; troubles that are over are in no branch. */
export function follow(state: WorkState, action: RepairAction, index: number): Followed {
  const { effect } = action;
  if (effect.kind === "test") {
    const branches = effect.results.flatMap(({ id, chance }) => {
      const weights = state.weights.map((weight, i) => weight * (chance[i] ?? 0));
      const mass = massOf(weights);
      if (mass <= ROUNDING) return [];
      return [{ result: id, mass, state: moved(state, action, { index, weights, result: id }) }];
    });
    return { branches, hiddenCost: 0, looksFor: [] };
  }
  const weights = Float64Array.from(state.weights);
  const { cost, looksFor } = hiddenOf(effect, weights);
  applyCure(effect, weights);
  const mass = massOf(weights);
  const next = moved(state, action, { index, weights, result: NO_CHANGE });
  const branches = mass > ROUNDING ? [{ result: NO_CHANGE, mass, state: next }] : [];
  return { branches, hiddenCost: cost, looksFor };
}

/** The node of an action, with the branch on which it ended the trouble. */
export function nodeOf(
  state: WorkState,
  action: RepairAction,
  step: Pick<ActionNode, "index" | "branches" | "looksFor">,
): ActionNode {
  const mass = massOf(state.weights);
  const ended = mass - step.branches.reduce((sum, branch) => sum + branch.mass, 0);
  const over = action.effect.kind === "cure" && ended > ROUNDING;
  return {
    kind: "action",
    mass,
    opens: action.access >= 0 && state.opened[action.access] !== 1 ? action.access : -1,
    fetches: action.away && !state.fetched,
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
  const action = problem.actions[index ?? -1];
  const mass = massOf(state.weights);
  if (index === undefined || action === undefined) {
    return plain.callsForHelp ? { kind: "help", mass } : DONE;
  }
  const next = follow(state, action, index);
  const branches = next.branches.map((branch) => ({
    result: branch.result,
    mass: branch.mass,
    node: followOrder(problem, branch.state, { ...plain, order }),
  }));
  return nodeOf(state, action, { index, branches, looksFor: next.looksFor });
}
