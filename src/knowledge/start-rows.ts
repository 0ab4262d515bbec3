import type { Observation, Row } from "../domain/knowledge.ts";
import { crankingStates, firingStates, ON_START } from "../domain/vocabulary.ts";
import { normalised } from "./row.ts";

const allCranking: readonly string[] = crankingStates;
const allFiring: readonly string[] = firingStates;

/** The two stages of `on-start`: how far cranking gets, and what combustion then does. */
export interface StartRows {
  /** In the order of `crankingStates`; sums to 1. */
  readonly cranking: Row;
  /** In the order of `firingStates`; sums to 1. */
  readonly firing: Row;
}

/** The two stages of a machine with nothing wrong, from the usual row of `on-start`. */
export function usualStartRows(onStart: Observation | undefined): StartRows {
  const chance = (state: string): number => {
    const index = onStart?.states.findIndex(({ id }) => id === state) ?? -1;
    return onStart?.usual[index] ?? 0;
  };
  const fires = firingStates.map(chance);
  const turns = fires.reduce((total, value) => total + value, 0);
  const cranking = crankingStates.map((state) => (state === "turns" ? turns : chance(state)));
  return { cranking: normalised(cranking), firing: normalised(fires) };
}

/** P(state of `on-start` | fault), in the order of the observation's states; sums to 1. */
export function onStartRow(states: readonly string[], { cranking, firing }: StartRows): Row {
  const turns = cranking[crankingStates.indexOf("turns")] ?? 0;
  return states.map((state) => {
    const early = allCranking.indexOf(state);
    if (early >= 0) return cranking[early] ?? 0;
    const late = allFiring.indexOf(state);
    return turns * (firing[late] ?? 0);
  });
}

/** True for the observation that faults describe in two stages. */
export function isOnStart(id: string): boolean {
  return id === ON_START;
}
