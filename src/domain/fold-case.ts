import type { CaseEvent, EventOf } from "./case-events.ts";
import type { CaseState } from "./case-state.ts";
import { emptyState } from "./case-state.ts";
import { applyCounter, type CounterEvent, isCounterEvent, isHistory } from "./fold-counter.ts";
import { applyAct, applyAnswer, applyMiss, applyQuestion, applyRepeat } from "./fold-questions.ts";
import { applyTold } from "./fold-told.ts";
import { applyVisit } from "./fold-visit.ts";
import { keepGround, withoutStep } from "./undo-step.ts";

/** The state that the events of one case add up to, in the order in which they happened. */
export function foldCase(id: string, events: readonly CaseEvent[]): CaseState {
  return events.reduce(applyEvent, emptyState(id));
}

/** Adds one event. */
export function applyEvent(state: CaseState, event: CaseEvent): CaseState {
  const { at, by, type } = event;
  const after = applyAny(state, event);
  const history = isHistory(type) ? [...after.history, { at, by, type }] : after.history;
  return event.type === "step.undone"
    ? { ...after, history }
    : { ...after, history, ...keepGround(state, { ...after, history }, event) };
}

function applyAny(state: CaseState, event: CaseEvent): CaseState {
  if (event.type === "step.undone") return undo(state, event);
  return isCounterEvent(event) ? applyCounter(state, event) : applyCaseEvent(state, event);
}

/** The visit once more from its beginning, without the step that was taken back. */
function undo(state: CaseState, event: EventOf<"step.undone">): CaseState {
  const { ground, revision } = state;
  if (ground === null) return state;
  const again = withoutStep(state, event.of).reduce(applyEvent, { ...ground, ground, since: [] });
  // A button of the step that was taken back must not fit the one that is put next.
  return { ...again, revision: Math.max(revision, again.revision) };
}

function applyCaseEvent(
  state: CaseState,
  event: Exclude<CaseEvent, CounterEvent | EventOf<"step.undone">>,
): CaseState {
  switch (event.type) {
    case "case.opened":
      return {
        ...state,
        opened: { at: event.at, knowledge: event.knowledge, seed: event.seed },
        operator: {
          id: event.operator,
          name: event.name,
          chat: event.chat,
          language: event.language,
        },
      };
    case "question.asked":
    case "question.passed":
      return applyQuestion(state, event);
    case "question.repeated":
      return applyRepeat(state, event.before);
    case "question.missed":
      return applyMiss(state, event.at);
    case "answer.given":
      return applyAnswer(state, event);
    case "answer.withdrawn":
      return {
        ...state,
        answers: state.answers.filter(
          ({ report }) =>
            report.observation !== event.observation ||
            report.epoch !== event.epoch ||
            (event.reporter !== undefined && event.reporter !== report.reporter),
        ),
      };
    case "act.done":
      return applyAct(state, event);
    case "case.assigned":
    case "case.taken-back":
    case "visit.started":
    case "step.skipped":
    case "remedy.done":
    case "cause.confirmed":
    case "case.closed":
    case "case.reopened":
    case "hand-back.checked":
    case "visit.cut-short":
    case "work.told":
    case "visit.foreseen":
      return applyVisit(state, event);
    default:
      return applyTold(state, event);
  }
}
