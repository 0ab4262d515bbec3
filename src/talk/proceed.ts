import type { Asking, CaseHappening } from "../domain/case-events.ts";
import type { CaseState, OpenQuestion } from "../domain/case-state.ts";
import type { Line, Phrase, PlannedEffect } from "../domain/effects.ts";
import { advance } from "./advance.ts";
import { type Decision, revise, say, takeButtons } from "./decision.ts";
import type { Desk, Heard } from "./desk.ts";
import { endingMessage } from "./ending.ts";
import { nextQuestion, wantsPlate } from "./next-question.ts";
import { probesAsked } from "./probes.ts";
import { answeredMessage, questionMessage, questionSlot } from "./question.ts";
import { slipEffects } from "./slip.ts";
import { stillOpen } from "./still-open.ts";

/** What an operator's message came to, before anything is said back. */
export interface Outcome {
  readonly happenings: readonly CaseHappening[];
  /** Lines to say before the next question. */
  readonly before: readonly Line[];
  /** The question that was answered, so that its message can show the answer. */
  readonly answered?: { readonly question: OpenQuestion; readonly label: Phrase };
}

/** Takes the buttons of the open question away: another takes its place, or it is said again below. */
export function silenceOpen({ open, operator }: CaseState): PlannedEffect[] {
  return open.operator === null ? [] : [takeButtons(operator, questionSlot(open.operator.asking))];
}

/**
 * Edits the answered question's message so that the chat reads as a record. Where none was answered
 * the open one loses its buttons.
 */
export function closeQuestion(
  state: CaseState,
  answered: Outcome["answered"],
  desk: Desk,
): PlannedEffect[] {
  if (answered === undefined) return silenceOpen(state);
  const message = answeredMessage(answered.question, answered.label, desk);
  return [revise(state.operator, message, questionSlot(answered.question.asking))];
}

interface Question {
  readonly asking: Asking;
  readonly before: readonly Line[];
  readonly aboutMore: number | null;
}

/** Asks one question in place of the open one: the event that it was asked, and the message. */
export function ask(state: CaseState, parts: Question, desk: Desk): Decision {
  const asked = put(state, parts, desk);
  return { ...asked, effects: [...silenceOpen(state), ...asked.effects] };
}

function put(state: CaseState, parts: Question, desk: Desk): Decision {
  const revision = state.revision + 1;
  const message = questionMessage(state, { ...parts, revision }, desk);
  return {
    happenings: [
      {
        type: "question.asked",
        to: "operator",
        asking: parts.asking,
        revision,
        ...(parts.before.length === 0 ? {} : { before: parts.before }),
        ...(parts.aboutMore === null ? {} : { aboutMore: parts.aboutMore }),
      },
    ],
    effects: [say(state.operator, message, questionSlot(parts.asking))],
  };
}

/** The end of the engine's questions: the shop is told before anything else is asked. */
function endInterview(because: string): CaseHappening[] {
  return [{ type: "interview.ended", because }, { type: "shop.told" }];
}

interface Progress {
  readonly state: CaseState;
  readonly happenings: readonly CaseHappening[];
}

function withEnd(progress: Progress, because: string, heard: Heard): Progress {
  const happenings = endInterview(because);
  return {
    state: advance(progress.state, happenings, heard),
    happenings: [...progress.happenings, ...happenings],
  };
}

/** The open question once more, at the bottom of the chat; its buttons stay good. */
export function sayStill(
  state: CaseState,
  { asking, revision }: OpenQuestion,
  { before, desk }: { readonly before: readonly Line[]; readonly desk: Desk },
): Decision {
  const message = questionMessage(state, { asking, revision, aboutMore: null, before }, desk);
  return {
    happenings: [{ type: "question.repeated", before }],
    effects: [say(state.operator, message, questionSlot(asking))],
  };
}

/**
 * Goes on after whatever the operator sent: shows the answer on the old question, asks the next
 * one, or ends. The counter's slip follows along once the shop has the case.
 */
export function proceed(
  state: CaseState,
  outcome: Outcome,
  given: { heard: Heard; desk: Desk },
): Decision {
  const { heard, desk } = given;
  const start: Progress = {
    state: advance(state, outcome.happenings, heard),
    happenings: outcome.happenings,
  };
  const open = outcome.answered === undefined ? stillOpen(start.state, desk.knowledge) : null;
  const told = outcome.happenings.flatMap((one) =>
    one.type === "answer.given" ? [one.report] : [],
  );
  const odd = probesAsked(told, start.state, { reader: start.state.operator, desk });
  const closed = closeQuestion(state, outcome.answered, desk);
  if (open !== null) {
    const still = sayStill(start.state, open, { before: outcome.before, desk });
    const slip = start.state.shopTold ? slipEffects(start.state, desk) : [];
    return {
      happenings: [...start.happenings, ...still.happenings],
      effects: [...closed, ...odd, ...still.effects, ...slip],
    };
  }
  const first = nextQuestion(start.state, desk);
  const ended = first.kind === "end" ? withEnd(start, first.because, heard) : start;
  const following = first.kind === "end" ? nextQuestion(ended.state, desk) : first;
  const closing = [...closed, ...odd];
  if (following.kind === "ask") {
    const parts = { ...following, before: outcome.before };
    const asked = put(ended.state, parts, desk);
    const after = advance(ended.state, asked.happenings, heard);
    return {
      happenings: [...ended.happenings, ...asked.happenings],
      effects: [...closing, ...asked.effects, ...(after.shopTold ? slipEffects(after, desk) : [])],
    };
  }
  const last = endingMessage(ended.state, outcome.before, desk);
  const plate: CaseHappening[] = wantsPlate(ended.state)
    ? [{ type: "question.passed", asking: { about: "plate" }, why: "skipped" }]
    : [];
  return {
    happenings: [...ended.happenings, ...plate],
    effects: [
      ...closing,
      say(ended.state.operator, last, "ending"),
      ...(ended.state.shopTold ? slipEffects(ended.state, desk) : []),
    ],
  };
}
