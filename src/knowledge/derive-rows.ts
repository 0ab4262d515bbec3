import type { Act, Fault, LatentGroup, Observation, Row } from "../domain/knowledge.ts";
import { isOnStart, onStartRow } from "./start-rows.ts";

/** An act with the state of what it reports that means "the complaint is gone". */
export type ActOutcome = Pick<Act, "id" | "cures" | "masks"> & {
  readonly yields: string;
  readonly curedState: string;
  /** States of what it reports that say nothing, such as "not tried". */
  readonly silent: readonly string[];
};

/** Σ over parent states of P(parent) · P(state | parent): the row heard without the parent. */
export function averaged(parent: Row, rows: readonly Row[]): Row {
  const width = rows[0]?.length ?? 0;
  return Array.from({ length: width }, (_, column) =>
    parent.reduce((sum, chance, state) => sum + chance * (rows[state]?.[column] ?? 0), 0),
  );
}

/**
 * The rows a fault has without anyone writing them: what an act reports (from its chances to cure
 * or hide the fault), members of latent groups, and observations that follow from another.
 */
export function derivedRows(
  fault: Fault,
  observations: ReadonlyMap<string, Observation>,
  from: { readonly outcomes: readonly ActOutcome[]; readonly latent: readonly LatentGroup[] },
): ReadonlyMap<string, Row> {
  const rows = new Map(fault.rows);
  for (const outcome of from.outcomes) {
    const observation = observations.get(outcome.yields);
    const chance = outcomeChance(outcome, fault.id);
    if (observation === undefined || chance === undefined || rows.has(observation.id)) continue;
    rows.set(observation.id, outcomeRow(observation, outcome, chance));
  }
  for (const group of from.latent) {
    const byFault = group.byFault.get(fault.id);
    if (byFault === undefined) continue;
    for (const [member, emission] of group.emission) rows.set(member, averaged(byFault, emission));
  }
  for (const observation of observations.values()) {
    if (observation.follows === undefined) continue;
    const parent = observations.get(observation.follows.observation);
    if (parent === undefined) continue;
    const states = parent.states.map((state) => state.id);
    const parentRow = isOnStart(parent.id) ? onStartRow(states, fault) : rows.get(parent.id);
    if (parentRow) rows.set(observation.id, averaged(parentRow, observation.follows.rows));
  }
  return rows;
}

/** P(the complaint is gone after the act | fault), or undefined where the act does not touch it. */
function outcomeChance(outcome: ActOutcome, fault: string): number | undefined {
  const cures = outcome.cures.get(fault);
  const masks = outcome.masks.get(fault);
  if (cures === undefined && masks === undefined) return undefined;
  return 1 - (1 - (cures ?? 0)) * (1 - (masks ?? 0));
}

/** The cured state with `chance`, the others that say something share the rest as usual. */
function outcomeRow(
  { states, usual }: Observation,
  { curedState, silent }: ActOutcome,
  chance: number,
): Row {
  const isOther = (id: string | undefined) => id !== curedState && !silent.includes(id ?? "");
  const others = usual.reduce((sum, value, at) => sum + (isOther(states[at]?.id) ? value : 0), 0);
  return usual.map((value, at) => {
    if (states[at]?.id === curedState) return chance;
    return isOther(states[at]?.id) ? (value * (1 - chance)) / (others || 1) : 0;
  });
}

/**
 * The row with states that say nothing (an answer such as "not tried") given the same probability
 * in every row, so that hearing them changes no belief; the other states keep their proportions.
 */
export function silenced(row: Row, silent: readonly number[], usual: Row): Row {
  const kept = silent.reduce((sum, index) => sum + (usual[index] ?? 0), 0);
  const spoken = row.reduce((sum, value, index) => sum + (silent.includes(index) ? 0 : value), 0);
  return row.map((value, index) =>
    silent.includes(index) ? (usual[index] ?? 0) : (value * (1 - kept)) / (spoken || 1),
  );
}
