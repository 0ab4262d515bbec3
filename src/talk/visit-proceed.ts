import type { Asking, CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Line, Message, Phrase, PlannedEffect } from "../domain/effects.ts";
import type { Report } from "../domain/evidence.ts";
import { advance } from "./advance.ts";
import { type Decision, line, nothingToDo, phrase, revise, say } from "./decision.ts";
import type { Desk, Heard } from "./desk.ts";
import { movedLines, verdictLines } from "./moved.ts";
import { probesAsked } from "./probes.ts";
import { answeredMessage, questionSlot, wasJustAsked } from "./question.ts";
import { slipEffects } from "./slip.ts";
import { reportWords } from "./understand.ts";
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

/** Somebody who has no chat here. */
export const nobody: Reader = { chat: "", language: "en" };
/** Where the technician of the case reads. */
export const technicianOf = (state: CaseState): Reader => state.technician ?? nobody;

/** The open step's message without its buttons, with the result where there is one. */
function closeStep(state: CaseState, result: Phrase | null, desk: Desk): PlannedEffect[] {
  const open = state.open.technician;
  if (open === null) return [];
  const label = result ?? phrase("step-left");
  const slot = `visit-${questionSlot(open.asking)}`;
  return [revise(technicianOf(state), answeredMessage(open, label, desk), slot)];
}

function messageFor(
  state: CaseState,
  parts: { readonly asking: Asking; readonly revision: number; readonly before: readonly Line[] },
  desk: Desk,
): Message {
  return parts.asking.about === "cause"
    ? causeMessage(state, parts, desk)
    : stepMessage(state, parts, desk);
}

/** The open step once more, the same as it was: a button of any copy answers it. */
export function repeatStep(state: CaseState, given: Given): Decision {
  const { desk } = given;
  const open = state.open.technician;
  if (open === null) return goOn(state, [], given);
  if (wasJustAsked(open, desk.now)) return nothingToDo;
  const message = messageFor(state, { ...open, before: [] }, desk);
  const slot = `visit-${questionSlot(open.asking)}`;
  return { happenings: [], effects: [say(technicianOf(state), message, slot)] };
}

/** Puts a question to the technician. */
export function put(
  state: CaseState,
  asking: Asking,
  before: readonly Line[],
  desk: Desk,
): Decision {
  const revision = state.revision + 1;
  const message = messageFor(state, { asking, revision, before }, desk);
  const kept = before.length === 0 ? {} : { before };
  return {
    happenings: [{ type: "question.asked", to: "technician", asking, revision, ...kept }],
    effects: [say(technicianOf(state), message, `visit-${questionSlot(asking)}`)],
  };
}

/** The open step's own result among what was reported; null where that was about something else. */
function resultOf(state: CaseState, reports: readonly Report[], desk: Desk): Phrase | null {
  const asking = state.open.technician?.asking;
  const yields = asking?.about === "check" ? desk.knowledge.checks.get(asking.check)?.yields : null;
  const own = reports.filter(
    ({ observation }) => asking?.about !== "check" || observation === yields,
  );
  if (own.length === 0) return null;
  const list = own.flatMap((report) => reportWords(report, desk.knowledge));
  return phrase("named-answer", { what: { list } });
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
  const undone = happenings.some((one) => one.type === "step.undone");
  const lines = reports.flatMap((report) => verdictLines(report, after, desk));
  const moved =
    reports.length === 0 && !undone
      ? []
      : movedLines(
          desk.triage(state, "technician").ranking,
          desk.triage(after, "technician").ranking,
        );
  const odd = probesAsked(reports, after, { reader: technicianOf(state), desk });
  const closing = closeStep(state, resultOf(state, reports, desk), desk);
  const step = nextStep(after, desk);
  const before = [
    ...(undone ? [line(phrase("taken-back"), "heading")] : []),
    ...lines,
    ...moved,
    ...(step === null ? [line(phrase("plan-at-end"))] : []),
  ];
  const asked = put(after, step ?? { about: "cause" }, before, desk);
  return {
    happenings: [...happenings, ...asked.happenings],
    effects: [...closing, ...odd, ...asked.effects, ...slipEffects(after, desk)],
  };
}
