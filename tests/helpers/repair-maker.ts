import type { Cure, RepairAction, RepairProblem } from "../../src/diagnosis/repair-problem.ts";

/** A cure of some troubles with chance 1 that leaves nothing. */
export function cureOf(troubles: readonly number[], chance = 1): Cure {
  return {
    kind: "cure",
    troubles: Int32Array.from(troubles),
    chance: new Float64Array(troubles.length).fill(chance),
    leaves: new Int32Array(troubles.length).fill(-1),
    hidden: [],
  };
}

export function makeAction(
  id: string,
  cost: number,
  effect: RepairAction["effect"],
  given: Partial<RepairAction> = {},
): RepairAction {
  const kind = effect.kind === "cure" ? "remedy" : "check";
  return { id, kind, cost, access: -1, away: false, after: [], group: -1, effect, ...given };
}

/** Troubles with their own cure each. */
export function independentRepairs(
  weights: readonly number[],
  costs: readonly number[],
  helpCost = Infinity,
): RepairProblem {
  return makeProblem(
    weights,
    costs.map((cost, trouble) => makeAction(`r${trouble + 1}`, cost, cureOf([trouble]))),
    { helpCost },
  );
}

export function makeProblem(
  weights: readonly number[],
  actions: readonly RepairAction[],
  given: Partial<RepairProblem> = {},
): RepairProblem {
  return {
    weights: Float64Array.from(weights),
    actions,
    helpCost: Infinity,
    secondTripCost: 0,
    accessCosts: [],
    ...given,
  };
}

/** All orders of n things. */
export function permutations(n: number): readonly (readonly number[])[] {
  if (n === 0) return [[]];
  return permutations(n - 1).flatMap((order) =>
    Array.from({ length: n }, (_, at) => [...order.slice(0, at), n - 1, ...order.slice(at)]),
  );
}
