import type { EventOf } from "./case-events.ts";
import type { CaseState } from "./case-state.ts";

export type Visit = EventOf<
  | "case.assigned"
  | "case.taken-back"
  | "visit.started"
  | "step.skipped"
  | "remedy.done"
  | "cause.confirmed"
  | "case.closed"
  | "case.reopened"
>;

/** What happens once a technician has the case. */
export function applyVisit(state: CaseState, event: Visit): CaseState {
  switch (event.type) {
    case "case.assigned":
      return {
        ...state,
        technician: {
          id: event.technician,
          name: event.name,
          chat: event.chat,
          language: event.language,
        },
        visit: "assigned",
      };
    case "case.taken-back":
      return {
        ...state,
        technician: null,
        visit: "none",
        open: { ...state.open, technician: null },
      };
    case "visit.started":
      return { ...state, visit: "started" };
    case "step.skipped":
      return {
        ...state,
        skippedSteps: [...state.skippedSteps, event.step],
        open: { ...state.open, technician: null },
      };
    case "remedy.done":
      return applyRemedy(state, event);
    case "cause.confirmed":
      return {
        ...state,
        confirmed: {
          faults: event.faults,
          how: event.how,
          ...(event.words === undefined ? {} : { words: event.words }),
        },
        open: { ...state.open, technician: null },
      };
    case "case.closed":
      return {
        ...state,
        closed: {
          end: event.end,
          at: event.at,
          complaint: event.complaint,
          cause: event.cause,
          correction: event.correction,
        },
        open: { operator: null, technician: null },
      };
    case "case.reopened":
      return { ...state, closed: null, confirmed: null };
  }
}

/** A repair that changed nothing is an act like others: it opens an epoch and speaks for the rest. */
function applyRemedy(state: CaseState, event: EventOf<"remedy.done">): CaseState {
  const { remedy, fault, ran } = event;
  const done = {
    ...state,
    remediesDone: [...state.remediesDone, { remedy, fault, ran }],
    open: { ...state.open, technician: null },
  };
  if (ran) return done;
  const epoch = state.epoch + 1;
  const act = { act: remedy, epoch, by: "technician", outcome: "no-change" } as const;
  return { ...done, epoch, askedNow: [], acts: [...state.acts, act] };
}
