/** Work on one machine as a sequential decision problem, in the cost unit of the caller. */
export interface RepairProblem {
  /** Belief over what may be wrong; need not sum to 1. */
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
  /** P(works | trouble), one entry a trouble. */
  readonly chance: Float64Array;
  /** What is left when it works: index of a trouble, or -1 for nothing. */
  readonly leaves: Int32Array;
  /** A cause that may be left behind although the machine runs again. */
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
  readonly results: readonly { readonly id: string; readonly chance: Float64Array }[];
}

/** Where the work stands. Weights of troubles not yet ended, jointly with what was found. */
export interface WorkState {
  readonly weights: Float64Array;
  readonly done: readonly number[];
  readonly opened: readonly number[];
  readonly fetched: boolean;
  /** The same for states that are the same, whatever the order in which they were reached. */
  readonly key: string;
}

export function startOf(problem: RepairProblem): WorkState {
  return { weights: problem.weights, done: [], opened: [], fetched: false, key: "" };
}

export function massOf(weights: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i++) sum += weights[i] ?? 0;
  return sum;
}

/** What an action costs in a state, with what must be opened or fetched for it. */
export function costOf(problem: RepairProblem, state: WorkState, index: number): number {
  const action = problem.actions[index];
  if (action === undefined) return Infinity;
  const open = action.access >= 0 && !state.opened.includes(action.access);
  return (
    action.cost +
    (open ? (problem.accessCosts[action.access] ?? 0) : 0) +
    (action.away && !state.fetched ? problem.secondTripCost : 0)
  );
}

/** True where the action is still to be had and can change something. */
export function isOpen(problem: RepairProblem, state: WorkState, index: number): boolean {
  const action = problem.actions[index];
  if (action === undefined || state.done.includes(index)) return false;
  if (!action.after.every((before) => state.done.includes(before))) return false;
  if (action.effect.kind === "cure") return curedMass(action.effect, state.weights) > 0;
  return !state.done.some(
    (other) => action.group >= 0 && problem.actions[other]?.group === action.group,
  );
}

export function curedMass(cure: Cure, weights: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i++) sum += (weights[i] ?? 0) * (cure.chance[i] ?? 0);
  return sum;
}

/** The state after a cure that did not end everything, and what hidden causes cost on the way. */
export function afterCure(
  problem: RepairProblem,
  state: WorkState,
  index: number,
): { readonly state: WorkState; readonly hiddenCost: number; readonly looksFor: string[] } {
  const effect = problem.actions[index]?.effect;
  const weights = Float64Array.from(state.weights);
  if (effect?.kind !== "cure") return { state, hiddenCost: 0, looksFor: [] };
  for (let i = 0; i < weights.length; i++) {
    const moved = (state.weights[i] ?? 0) * (effect.chance[i] ?? 0);
    if (moved === 0) continue;
    weights[i] = (weights[i] ?? 0) - moved;
    const left = effect.leaves[i] ?? -1;
    if (left >= 0) weights[left] = (weights[left] ?? 0) + moved;
  }
  const { cost, looksFor } = hiddenCost(effect, state.weights);
  return { state: moved(problem, state, { index, weights, note: "" }), hiddenCost: cost, looksFor };
}

function hiddenCost(cure: Cure, before: Float64Array): { cost: number; looksFor: string[] } {
  const looksFor: string[] = [];
  let cost = 0;
  let ended = 0;
  for (let i = 0; i < before.length; i++) {
    if ((cure.leaves[i] ?? -1) < 0) ended += (before[i] ?? 0) * (cure.chance[i] ?? 0);
  }
  for (const hidden of cure.hidden) {
    const left = hidden.troubles.reduce(
      (sum, i) => sum + (before[i] ?? 0) * (cure.chance[i] ?? 0),
      0,
    );
    const risk = left * hidden.comebackCost;
    const look = ended * hidden.lookCost + left * hidden.fixCost;
    cost += Math.min(risk, look);
    if (look < risk && hidden.lookCheck !== null) looksFor.push(hidden.lookCheck);
  }
  return { cost, looksFor };
}

/** The states after each result of a test; results that cannot come are left out. */
export function afterTest(
  problem: RepairProblem,
  state: WorkState,
  index: number,
): readonly { readonly result: string; readonly state: WorkState; readonly mass: number }[] {
  const effect = problem.actions[index]?.effect;
  if (effect?.kind !== "test") return [];
  return effect.results.flatMap(({ id, chance }, number) => {
    const weights = state.weights.map((weight, i) => weight * (chance[i] ?? 0));
    const mass = massOf(weights);
    if (mass <= 0) return [];
    return [
      { result: id, mass, state: moved(problem, state, { index, weights, note: `=${number}` }) },
    ];
  });
}

function moved(
  problem: RepairProblem,
  state: WorkState,
  by: { readonly index: number; readonly weights: Float64Array; readonly note: string },
): WorkState {
  const action = problem.actions[by.index];
  const access = action?.access ?? -1;
  const parts = [...state.key.split(" "), `${by.index}${by.note}`].filter((part) => part !== "");
  return {
    weights: by.weights,
    done: [...state.done, by.index],
    opened:
      access >= 0 && !state.opened.includes(access) ? [...state.opened, access] : state.opened,
    fetched: state.fetched || action?.away === true,
    key: parts.sort().join(" "),
  };
}
