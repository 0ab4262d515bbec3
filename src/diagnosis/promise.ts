import { costOf, isOpen, massOf, type RepairProblem, type WorkState } from "./repair-problem.ts";

/** Open actions, the most promising first. */
export function byPromise(problem: RepairProblem, state: WorkState): readonly number[] {
  const all = [...problem.actions.keys()].filter((index) => isOpen(problem, state, index));
  const promise = new Map(all.map((index) => [index, promiseOf(problem, state, index)]));
  return all.sort((a, b) => (promise.get(b) ?? 0) - (promise.get(a) ?? 0));
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
