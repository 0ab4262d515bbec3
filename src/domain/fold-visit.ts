import type { EventOf } from "./case-events.ts";
import type { CaseState } from "./case-state.ts";
import { withoutUnanswered } from "./fold-questions.ts";

export type Visit = EventOf<
  | "case.assigned"
  | "case.taken-back"
  | "visit.started"
  | "step.skipped"
  | "remedy.done"
  | "cause.confirmed"
  | "case.closed"
  | "case.reopened"
  | "hand-back.checked"
  | "visit.cut-short"
  | "work.told"
  | "visit.foreseen"
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
        setOut: false,
        hands: state.hands + 1,
      };
    case "case.taken-back":
      return {
        ...state,
        technician: null,
        visit: "none",
        hands: state.hands + 1,
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
        askedNow: withoutUnanswered(state),
        open: { operator: null, technician: null },
      };
    case "case.reopened":
      return { ...state, closed: null, confirmed: null, handBack: [] };
    case "hand-back.checked":
      return applyHandBack(state, event);
    case "visit.cut-short":
      return {
        ...state,
        visit: "assigned",
        setOut: false,
        booked: null,
        cutShort: [...state.cutShort, event.missing],
        open: { ...state.open, technician: null },
      };
    case "work.told": {
      const { minutes, used, back } = event;
      const work = {
        ...state.work,
        ...(minutes === undefined ? {} : { minutes }),
        ...(used === undefined ? {} : { used }),
        ...(back === undefined ? {} : { back }),
      };
      return { ...state, work };
    }
    case "visit.foreseen": {
      const { causes, medianMinutes, p90Minutes } = event;
      return { ...state, foreseen: { causes, medianMinutes, p90Minutes } };
    }
  }
}

/** The newest word on each check stands. */
function applyHandBack(state: CaseState, event: EventOf<"hand-back.checked">): CaseState {
  const { check, outcome, why } = event;
  const told = { check, outcome, ...(why === undefined ? {} : { why }) };
  return {
    ...state,
    handBack: [...state.handBack.filter((one) => one.check !== check), told],
    open: { ...state.open, technician: null },
  };
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
