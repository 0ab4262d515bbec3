import type { CaseEvent } from "./case-events.ts";
import type { CaseState } from "./case-state.ts";

/** What a technician does on a visit and may take back as long as the case is open. */
const deeds: ReadonlySet<CaseEvent["type"]> = new Set([
  "answer.given",
  "act.done",
  "step.skipped",
  "remedy.done",
  "cause.confirmed",
  "hand-back.checked",
]);

type Ground = Pick<CaseState, "ground" | "since">;

/** Keeps what has happened since the visit began, so that a step can be taken out of it again. */
export function keepGround(before: CaseState, after: CaseState, event: CaseEvent): Ground {
  if (event.type === "visit.started")
    return { ground: { ...after, ground: null, since: [] }, since: [] };
  const { ground } = before;
  return ground === null ? { ground, since: [] } : { ground, since: [...before.since, event] };
}

const isDeed = (event: CaseEvent, person: string | undefined) =>
  deeds.has(event.type) && event.by === person;

/** The update of the technician's newest step that still stands; null: there is none. */
export function lastStep(state: CaseState): string | null {
  const person = state.technician?.id;
  return state.since.findLast((event) => isDeed(event, person))?.update ?? null;
}

/**
 * What is left of the visit without one step: all of what that update did is taken out, together
 * with the question it answered, which may then be asked again. What others said since stays.
 */
export function withoutStep(state: CaseState, update: string): readonly CaseEvent[] {
  const { since, technician } = state;
  const gone = (event: CaseEvent) => event.update === update && isDeed(event, technician?.id);
  const first = since.findIndex(gone);
  if (first < 0) return since;
  const earlier = since.slice(0, first).findLastIndex((event) => isDeed(event, technician?.id));
  return since.filter((event, index) => {
    const isQuestion = event.type === "question.asked" && event.to === "technician";
    return !gone(event) && !(isQuestion && index > earlier);
  });
}
