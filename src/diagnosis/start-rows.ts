import type { Fault, Row } from "../domain/knowledge.ts";
import { crankingStates, firingStates } from "../domain/vocabulary.ts";
import { earlierDecides, type Order } from "./combine-faults.ts";

/**
 * Turning the key to START has two stages: how far cranking gets, and, given that the engine
 * turns, what combustion does. A row here holds both, cranking first, each summing to 1.
 */
const PASS = crankingStates.length - 1;
const RUNS = crankingStates.length + firingStates.length - 1;

/** The two-stage row of one fault. */
export function startRow(fault: Fault): Row {
  return [...fault.cranking, ...fault.firing];
}

/**
 * Two faults in the chain: what the earlier one lets through goes on to the later one. At the same
 * stage either may come first, half and half.
 */
export function bothInChain(a: Row, b: Row, order: Order): Row {
  if (order === "first-earlier") return through(a, b);
  if (order === "second-earlier") return through(b, a);
  return earlierDecides(through(a, b), through(b, a), "same-stage");
}

function through(first: Row, later: Row): Row {
  const turns = first[PASS] ?? 0;
  const runs = first[RUNS] ?? 0;
  return first.map((value, s) => {
    const next = later[s] ?? 0;
    if (s === PASS) return turns * next;
    if (s === RUNS) return runs * next;
    return value + (s < PASS ? turns : runs) * next;
  });
}

/**
 * P(state of `on-start`) from a two-stage row: a cranking state as it is, a firing state times the
 * chance that the engine turns. Sums to 1.
 * @param states the observation's own states, in their order
 */
export function composeStart(row: Row, states: readonly string[]): Row {
  const turns = row[PASS] ?? 0;
  return states.map((state) => {
    const cranking = crankingIndex.get(state);
    if (cranking !== undefined) return row[cranking] ?? 0;
    const firing = firingIndex.get(state);
    return firing === undefined ? 0 : turns * (row[crankingStates.length + firing] ?? 0);
  });
}

const crankingIndex: ReadonlyMap<string, number> = new Map(
  crankingStates.slice(0, PASS).map((state, index) => [state, index]),
);
const firingIndex: ReadonlyMap<string, number> = new Map(
  firingStates.map((state, index) => [state, index]),
);
