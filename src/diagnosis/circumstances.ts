import type { Fault, Knowledge, Observation, Row } from "../domain/knowledge.ts";
import { OutOfRange, UnknownId } from "../domain/result.ts";

/**
 * The knowledge at a place and season: the usual rows of context observations replaced, the rows
 * of the faults moved with them (P(s | fault) ∝ usual·factor), and the factor by which each
 * fault's share moves: Σ new usual·factor ÷ Σ old usual·factor.
 * @throws UnknownId, OutOfRange
 */
export function withCircumstances(
  knowledge: Knowledge,
  usualNow: ReadonlyMap<string, Row>,
): { readonly knowledge: Knowledge; readonly times: ReadonlyMap<string, number> } {
  if (usualNow.size === 0) return { knowledge, times: new Map() };
  const observations = new Map(knowledge.observations);
  const moved: { readonly observation: Observation; readonly usual: Row }[] = [];
  for (const [id, usual] of usualNow) {
    const observation = knowledge.observations.get(id);
    if (observation === undefined) throw new UnknownId("observation", id);
    checkUsual(observation, usual);
    observations.set(id, { ...observation, usual });
    moved.push({ observation, usual });
  }
  const times = new Map<string, number>();
  const faults = new Map<string, Fault>();
  for (const [id, fault] of knowledge.faults) {
    const rows = new Map(fault.rows);
    for (const { observation, usual } of moved) {
      const row = fault.rows.get(observation.id);
      if (row === undefined) continue;
      const weights = row.map(
        (value, s) => (value * (usual[s] ?? 0)) / (observation.usual[s] || 1),
      );
      const factor = weights.reduce((sum, value) => sum + value, 0);
      if (factor <= 0) continue;
      rows.set(
        observation.id,
        weights.map((value) => value / factor),
      );
      times.set(id, (times.get(id) ?? 1) * factor);
    }
    faults.set(id, { ...fault, rows });
  }
  return { knowledge: { ...knowledge, observations, faults }, times };
}

function checkUsual(observation: Observation, usual: Row): void {
  const { id, states } = observation;
  if (usual.length !== states.length) {
    throw new OutOfRange(id, usual.length, `a row of ${states.length} states`);
  }
  const sum = usual.reduce((total, value) => total + value, 0);
  const sound = usual.every((value) => value >= 0) && Math.abs(sum - 1) < 1e-6;
  if (!sound) throw new OutOfRange(id, sum, "a row that sums to 1");
}
