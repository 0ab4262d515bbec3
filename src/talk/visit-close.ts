import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import { ON_START } from "../domain/vocabulary.ts";
import { advance } from "./advance.ts";
import { type Decision, line, nothingToDo, phrase, say } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { plainState } from "./place.ts";
import { slipEffects } from "./slip.ts";
import { type Given, goOn, put, technicianOf } from "./visit-proceed.ts";

/** What came of a repair. */
export function remedyResult(
  state: CaseState,
  remedy: string,
  value: string,
  given: Given,
): Decision {
  const cured = given.desk
    .triage(state, "technician")
    .plan.steps.find((step) => step.kind === "remedy" && step.id === remedy)?.cures;
  const fault = cured?.[0] ?? faultOf(remedy, given.desk);
  const done: CaseHappening = { type: "remedy.done", remedy, fault, ran: value === "runs" };
  if (value !== "runs") return goOn(state, [done], given);
  const confirmed: CaseHappening = {
    type: "cause.confirmed",
    faults: [fault],
    how: state.remediesDone.length === 0 ? "ran-after-this" : "several-at-once",
  };
  const happenings = [done, confirmed];
  const after = advance(state, happenings, given.heard);
  const asked = put(after, { about: "ran", remedy }, [], given.desk);
  return { happenings: [...happenings, ...asked.happenings], effects: asked.effects };
}

function faultOf(remedy: string, desk: Desk): string {
  for (const fault of desk.knowledge.faults.values()) {
    if (fault.remedies.includes(remedy)) return fault.id;
  }
  return "";
}

/** Ran and restarted: the case closes and everybody is told; not yet: it stays open. */
export function ran(state: CaseState, value: string, given: Given): Decision {
  const { desk, heard } = given;
  const technician = technicianOf(state);
  if (value !== "yes") {
    const open = say(technician, { lines: [line(phrase("stays-open", { number: state.id }))] });
    return { happenings: [], effects: [open] };
  }
  const closed: CaseHappening = {
    type: "case.closed",
    end: "visit",
    complaint: plainState(state, ON_START) ?? "",
    cause: state.confirmed?.faults[0] ?? state.confirmed?.words ?? "",
    correction: state.remediesDone.at(-1)?.remedy ?? "",
  };
  const after = advance(state, [closed], heard);
  const done = { lines: [line(phrase("visit-closed", { number: state.id }), "heading")] };
  const cause = state.confirmed?.faults[0];
  const what =
    cause === undefined || cause === ""
      ? { phrase: { raw: state.confirmed?.words ?? "" } }
      : { know: `fault-${cause}` };
  const told = { lines: [line(phrase("operator-closed", { number: state.id, cause: what }))] };
  return {
    happenings: [closed],
    effects: [
      say(technician, done),
      ...(state.operator.chat === "" ? [] : [say(state.operator, told)]),
      ...slipEffects(after, desk),
    ],
  };
}

/** The technician names the cause. */
export function confirmCause(state: CaseState, value: string, given: Given): Decision {
  if (value === "other") return put(state, { about: "cause-words" }, [], given.desk);
  if (!given.desk.knowledge.faults.has(value)) return nothingToDo;
  const how = state.answers.some((one) => one.from === "technician") ? "measured" : "guess";
  const confirmed: CaseHappening = { type: "cause.confirmed", faults: [value], how };
  const after = advance(state, [confirmed], given.heard);
  const asked = put(after, { about: "ran" }, [], given.desk);
  return { happenings: [confirmed, ...asked.happenings], effects: asked.effects };
}
