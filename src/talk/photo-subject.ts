import type { CaseState } from "../domain/case-state.ts";
import type { Fault, Knowledge, Observation, Row } from "../domain/knowledge.ts";
import type { RankedCause } from "../domain/triage.ts";
import type { Desk } from "./desk.ts";

/** What the one photo should show, as the case stands; null where photos show nothing. */
export function photoSubject(state: CaseState, desk: Desk): string | null {
  return likeliestSubject(desk.triage(state, "operator").ranking.causes, desk.knowledge);
}

/**
 * That on which most of the belief could be seen; of equals, and where nothing is believed, the
 * first in the list.
 */
export function likeliestSubject(
  causes: readonly Pick<RankedCause, "group" | "probability">[],
  { photos }: Knowledge,
): string | null {
  const ranked = [...(photos ?? [])]
    .map(([subject, groups]) => ({
      subject,
      share: causes
        .filter(({ group }) => groups.includes(group))
        .reduce((sum, { probability }) => sum + probability, 0),
    }))
    .sort((a, b) => b.share - a.share);
  return ranked[0]?.subject ?? null;
}

/** At least this share of what an observation tells of must lie in the picture. */
const MOSTLY = 0.5;

/**
 * True where a photo of the subject shows this: it can be seen on a photo, and most of the faults
 * that change it, by their share of calls and by how much they change it, belong to the subject.
 */
export function isSeenOn(subject: string, observation: string, knowledge: Knowledge): boolean {
  const groups = knowledge.photos?.get(subject) ?? [];
  const seen = knowledge.observations.get(observation);
  const hasPhoto = [...knowledge.checks.values()].some(
    ({ photo, yields }) => photo === true && yields === observation,
  );
  if (seen === undefined || !hasPhoto) return false;
  let inside = 0;
  let all = 0;
  for (const fault of knowledge.faults.values()) {
    const weight = fault.share * changeOf(seen, fault);
    all += weight;
    if (groups.includes(fault.group)) inside += weight;
  }
  return all > 0 && inside >= MOSTLY * all;
}

/** How far a fault moves an observation from its usual row: total variation, in [0, 1]. */
function changeOf({ id, usual }: Observation, { rows }: Fault): number {
  const row: Row = rows.get(id) ?? usual;
  return row.reduce((sum, chance, at) => sum + Math.abs(chance - (usual[at] ?? 0)), 0) / 2;
}
