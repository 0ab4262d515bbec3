/** Work on one machine as a sequential decision problem, in the cost unit of the caller. */
export interface RepairProblem {
  /** Belief over what may be wrong, one entry a trouble; need not sum to 1. */
  readonly weights: Float64Array;
  readonly actions: readonly RepairAction[];
  /** Calling for help ends every trouble at this cost; Infinity: there is nobody. */
  readonly helpCost: number;
  /** Paid once, at the first action that needs something that is not on board. */
  readonly secondTripCost: number;
  /** Cost of opening up each place, paid once. */
  readonly accessCosts: readonly number[];
}

export interface RepairAction {
  readonly id: string;
  readonly kind: "check" | "act" | "remedy";
  /** > 0. */
  readonly cost: number;
  /** Index into `accessCosts`, -1: nothing is in the way. */
  readonly access: number;
  /** Needs something that is not on board. */
  readonly away: boolean;
  /** Indices of actions that must come first. */
  readonly after: readonly number[];
  /** Checks with the same number say nothing new after one another; -1: none. */
  readonly group: number;
  readonly effect: Cure | Test;
}

/** A remedy or an act: may end a trouble or turn it into what is left of it. */
export interface Cure {
  readonly kind: "cure";
  /** The troubles it works on; the arrays below run along them. */
  readonly troubles: Int32Array;
  /** P(works | trouble), in (0, 1]. */
  readonly chance: Float64Array;
  /** What is left when it works: index of a trouble, or -1 for nothing. */
  readonly leaves: Int32Array;
  /** Causes that may be left behind although the machine runs again. */
  readonly hidden: readonly HiddenCause[];
}

/** After the cure, either look for the cause at once or risk coming back. */
export interface HiddenCause {
  /** Troubles whose cure leaves this cause behind. */
  readonly troubles: readonly number[];
  readonly lookCost: number;
  readonly fixCost: number;
  readonly comebackCost: number;
  readonly lookCheck: string | null;
}

export interface Test {
  readonly kind: "test";
  /** P(result | trouble), one entry a trouble. */
  readonly results: readonly { readonly id: string; readonly chance: Float64Array }[];
}

/** Where the work stands: weights of troubles not yet ended, jointly with what was found. */
export interface WorkState {
  readonly weights: Float64Array;
  /** 1 for each action that was done. */
  readonly done: Uint8Array;
  /** 1 for each place that is open. */
  readonly opened: Uint8Array;
  readonly fetched: boolean;
  /** What was done with which result, in order. */
  readonly path: readonly string[];
}

export function startOf(problem: RepairProblem): WorkState {
  return {
    weights: problem.weights,
    done: new Uint8Array(problem.actions.length),
    opened: new Uint8Array(problem.accessCosts.length),
    fetched: false,
    path: [],
  };
}

export function massOf(weights: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i++) sum += weights[i] ?? 0;
  return sum;
}

/** What an action costs in a state, with what must be opened or fetched for it. */
export function costOf(
  problem: RepairProblem,
  state: Pick<WorkState, "opened" | "fetched">,
  action: RepairAction,
): number {
  const { access, away, cost } = action;
  const opening =
    access >= 0 && state.opened[access] !== 1 ? (problem.accessCosts[access] ?? 0) : 0;
  return cost + opening + (away && !state.fetched ? problem.secondTripCost : 0);
}

/** True where the action is still to be had and can change something. */
export function isOpen(problem: RepairProblem, state: WorkState, index: number): boolean {
  const action = problem.actions[index];
  if (action === undefined || state.done[index] === 1) return false;
  if (!action.after.every((before) => state.done[before] === 1)) return false;
  if (action.effect.kind === "cure") return curedMass(action.effect, state.weights) > 0;
  if (action.group < 0) return true;
  return !problem.actions.some(({ group }, i) => group === action.group && state.done[i] === 1);
}

export function curedMass(cure: Cure, weights: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < cure.troubles.length; k++) {
    sum += (weights[cure.troubles[k] ?? 0] ?? 0) * (cure.chance[k] ?? 0);
  }
  return sum;
}

/** Takes what a cure ends out of the weights, in place; returns what hidden causes cost. */
export function applyCure(cure: Cure, weights: Float64Array): number {
  const hidden = cure.hidden.length === 0 ? 0 : hiddenOf(cure, weights).cost;
  for (let k = 0; k < cure.troubles.length; k++) {
    const trouble = cure.troubles[k] ?? 0;
    const moved = (weights[trouble] ?? 0) * (cure.chance[k] ?? 0);
    const left = cure.leaves[k] ?? -1;
    weights[trouble] = (weights[trouble] ?? 0) - moved;
    if (left >= 0) weights[left] = (weights[left] ?? 0) + moved;
  }
  return hidden;
}

/** Expected cost of the causes a cure may leave behind, and the checks to make for them. */
export function hiddenOf(
  cure: Cure,
  before: Float64Array,
): { readonly cost: number; readonly looksFor: readonly string[] } {
  const ended = new Map<number, number>();
  for (let k = 0; k < cure.troubles.length; k++) {
    if ((cure.leaves[k] ?? -1) >= 0) continue;
    const trouble = cure.troubles[k] ?? 0;
    ended.set(trouble, (before[trouble] ?? 0) * (cure.chance[k] ?? 0));
  }
  const all = [...ended.values()].reduce((sum, mass) => sum + mass, 0);
  const looksFor: string[] = [];
  let cost = 0;
  for (const hidden of cure.hidden) {
    const left = hidden.troubles.reduce((sum, trouble) => sum + (ended.get(trouble) ?? 0), 0);
    const risk = left * hidden.comebackCost;
    const look = all * hidden.lookCost + left * hidden.fixCost;
    cost += Math.min(risk, look);
    if (look < risk && hidden.lookCheck !== null) looksFor.push(hidden.lookCheck);
  }
  return { cost, looksFor };
}

/** The state after an action, with the weights its result leaves. */
export function moved(
  state: WorkState,
  action: RepairAction,
  by: { readonly index: number; readonly weights: Float64Array; readonly result: string },
): WorkState {
  const done = Uint8Array.from(state.done);
  done[by.index] = 1;
  const opened = Uint8Array.from(state.opened);
  if (action.access >= 0) opened[action.access] = 1;
  return {
    weights: by.weights,
    done,
    opened,
    fetched: state.fetched || action.away,
    path: [...state.path, `${by.index} ${by.result}`],
  };
}
