import type { Asking, EventOf } from "./case-events.ts";
import type { CaseState, GivenAnswer, OpenQuestion } from "./case-state.ts";
import { askingKey } from "./case-state.ts";
import type { Report } from "./evidence.ts";
import type { Performer } from "./vocabulary.ts";

/** A technician and a photo stand beside what was told; telling it first or second hand is one. */
const eyesOf = ({ reporter }: Report) =>
  reporter === "technician" || reporter === "photo" ? reporter : "told";

function isSameAnswer(given: GivenAnswer, report: Report): boolean {
  return (
    given.report.observation === report.observation &&
    given.report.epoch === report.epoch &&
    eyesOf(given.report) === eyesOf(report)
  );
}

/** A question was asked or passed. */
export function applyQuestion(
  state: CaseState,
  event: EventOf<"question.asked" | "question.passed">,
): CaseState {
  const key = askingKey(event.asking);
  if (event.type === "question.passed") {
    const open = {
      operator: closes(state.open.operator, key) ? null : state.open.operator,
      technician: closes(state.open.technician, key) ? null : state.open.technician,
    };
    if (event.why === "back") return { ...state, open };
    return { ...state, open, passed: [...state.passed, key] };
  }
  const question = {
    asking: event.asking,
    revision: event.revision,
    askedAt: event.at,
    before: event.before ?? [],
    missedAt: null,
  };
  const id = idOf(event.asking);
  const asked = event.to === "operator" ? withoutUnanswered(state, key) : state.askedNow;
  return {
    ...state,
    revision: event.revision,
    aboutMore: event.aboutMore ?? state.aboutMore,
    open: { ...state.open, [event.to]: question },
    askedNow: id === null || asked.includes(id) ? asked : [...asked, id],
    askedEver: [...state.askedEver, { asking: event.asking, to: event.to }],
  };
}

/** The open question was said again: its newest message is the one that will show the answer. */
export function applyRepeat(state: CaseState, before: OpenQuestion["before"]): CaseState {
  const { operator } = state.open;
  if (operator === null) return state;
  return { ...state, open: { ...state.open, operator: { ...operator, before } } };
}

/** What was written answered the open question in no way. */
export function applyMiss(state: CaseState, at: number): CaseState {
  const { operator } = state.open;
  if (operator === null) return state;
  return { ...state, open: { ...state.open, operator: { ...operator, missedAt: at } } };
}

const idOf = (asking: Asking): string | null =>
  asking.about === "check" ? asking.check : asking.about === "act" ? asking.act : null;

/**
 * What counts as asked in this epoch once another question takes the place of the open one, which
 * nobody has answered: that one may come again.
 * @param key the question that comes; the same one again changes nothing. Absent: none comes.
 */
export function withoutUnanswered(state: CaseState, key?: string): readonly string[] {
  const open = state.open.operator;
  if (open === null || askingKey(open.asking) === key) return state.askedNow;
  const id = idOf(open.asking);
  return state.askedNow.filter((one) => one !== id);
}

function closes(open: OpenQuestion | null, key: string): boolean {
  return open !== null && askingKey(open.asking) === key;
}

/** An answer replaces an earlier one to the same thing from the same side. */
export function applyAnswer(state: CaseState, event: EventOf<"answer.given">): CaseState {
  const from: Performer = event.report.reporter === "technician" ? "technician" : "operator";
  const given: GivenAnswer = {
    report: event.report,
    from,
    at: event.at,
    ...(event.check === undefined ? {} : { check: event.check }),
  };
  const asked = event.check === undefined ? null : `check:${event.check}`;
  return {
    ...state,
    answers: [...state.answers.filter((old) => !isSameAnswer(old, event.report)), given],
    open: {
      operator: asked !== null && closes(state.open.operator, asked) ? null : state.open.operator,
      technician:
        asked !== null && closes(state.open.technician, asked) ? null : state.open.technician,
    },
  };
}

/** An act opens the next epoch. */
export function applyAct(state: CaseState, event: EventOf<"act.done">): CaseState {
  const epoch = state.epoch + 1;
  return {
    ...state,
    epoch,
    actedAt: event.at,
    acts: [...state.acts, { act: event.act, epoch, by: event.performer, outcome: event.outcome }],
    askedNow: [event.act],
    open: {
      operator: closes(state.open.operator, `act:${event.act}`) ? null : state.open.operator,
      technician: closes(state.open.technician, `act:${event.act}`) ? null : state.open.technician,
    },
  };
}
