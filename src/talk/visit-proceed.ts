import type { Asking, CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Line } from "../domain/effects.ts";
import { advance } from "./advance.ts";
import { type Decision, line, phrase, say } from "./decision.ts";
import type { Desk, Heard } from "./desk.ts";
import { movedLines, verdictLines } from "./moved.ts";
import { questionSlot } from "./question.ts";
import { slipEffects } from "./slip.ts";
import { causeMessage, nextStep, stepMessage } from "./visit-step.ts";

/** What a turn is given besides the case. */
export interface Given {
  readonly heard: Heard;
  readonly desk: Desk;
}

interface Reader {
  readonly chat: string;
  readonly language: string;
}

const nobody: Reader = { chat: "", language: "en" };
/** Where the technician of the case reads. */
export const technicianOf = (state: CaseState): Reader => state.technician ?? nobody;

/** Puts a question to the technician. */
export function put(
  state: CaseState,
  asking: Asking,
  before: readonly Line[],
  desk: Desk,
): Decision {
  const revision = state.revision + 1;
  const message =
    asking.about === "cause"
      ? causeMessage(state, revision, desk)
      : stepMessage(state, { asking, revision, before }, desk);
  return {
    happenings: [{ type: "question.asked", to: "technician", asking, revision }],
    effects: [say(technicianOf(state), message, `visit-${questionSlot(asking)}`)],
  };
}

/** Records what happened, shows how the list moved, and puts the next step. */
export function goOn(
  state: CaseState,
  happenings: readonly CaseHappening[],
  given: Given,
): Decision {
  const { desk, heard } = given;
  const after = advance(state, happenings, heard);
  const reports = happenings.flatMap((one) => (one.type === "answer.given" ? [one.report] : []));
  const lines = reports.flatMap((report) => verdictLines(report, after, desk));
  const moved =
    reports.length === 0
      ? []
      : movedLines(
          desk.triage(state, "technician").ranking,
          desk.triage(after, "technician").ranking,
        );
  const step = nextStep(after, desk);
  if (step === null) {
    const asked = put(after, { about: "cause" }, [], desk);
    const none = say(technicianOf(state), {
      lines: [...lines, ...moved, line(phrase("plan-at-end"))],
    });
    return {
      happenings: [...happenings, ...asked.happenings],
      effects: [none, ...asked.effects, ...slipEffects(after, desk)],
    };
  }
  const asked = put(after, step, [...lines, ...moved], desk);
  return {
    happenings: [...happenings, ...asked.happenings],
    effects: [...asked.effects, ...slipEffects(after, desk)],
  };
}
