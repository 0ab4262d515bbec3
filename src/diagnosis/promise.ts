import {
  costOf,
  curedMass,
  isOpen,
  massOf,
  type RepairAction,
  type RepairProblem,
  type WorkState,
} from "./repair-problem.ts";

/** An action that can be done now. */
export interface OpenAction {
  readonly index: number;
  readonly action: RepairAction;
  /** Trouble ended, or doubt removed, per cost: a rough merit to sort by. */
  readonly promise: number;
}

/** Actions that can be done now, the most promising first. */
export function openActions(problem: RepairProblem, state: WorkState): readonly OpenAction[] {
  const mass = massOf(state.weights);
  const open: OpenAction[] = [];
  for (const [index, action] of problem.actions.entries()) {
    if (!isOpen(problem, state, index)) continue;
    const merit =
      action.effect.kind === "cure"
        ? curedMass(action.effect, state.weights)
        : toldBy(action.effect.results, state.weights, mass);
    open.push({ index, action, promise: merit / costOf(problem, state, action) });
  }
  return open.sort((a, b) => b.promise - a.promise || a.index - b.index);
}

/** How far the results differ between troubles: mean total variation, times the mass. */
function toldBy(
  results: readonly { readonly chance: Float64Array }[],
  weights: Float64Array,
  mass: number,
): number {
  let told = 0;
  for (const { chance } of results) {
    let joint = 0;
    for (let i = 0; i < weights.length; i++) joint += (weights[i] ?? 0) * (chance[i] ?? 0);
    const mean = joint / mass;
    for (let i = 0; i < weights.length; i++) {
      told += (weights[i] ?? 0) * Math.abs((chance[i] ?? 0) - mean);
    }
  }
  return told / 2;
}
