import type { Asking, CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import { advance } from "./advance.ts";
import { type Decision, nothingToDo } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { curingAct, judgeCure } from "./solved.ts";
import { type Given, goOn, put } from "./visit-proceed.ts";

/** What came of a repair. */
export function remedyResult(
  state: CaseState,
  remedy: string,
  value: string,
  given: Given,
): Decision {
  const fault = faultOf(state, remedy, given.desk);
  const done: CaseHappening = { type: "remedy.done", remedy, fault, ran: value === "runs" };
  if (value !== "runs") return goOn(state, [done], given);
  // What was done before it was tried each time and in vain: it ran after this one.
  const confirmed: CaseHappening = {
    ...({ type: "cause.confirmed", how: "ran-after-this" } as const),
    faults: [fault],
  };
  const happenings = [done, confirmed];
  const after = advance(state, happenings, given.heard);
  const asked = put(after, { about: "ran", remedy }, [], given.desk);
  return { happenings: [...happenings, ...asked.happenings], effects: asked.effects };
}

/**
 * It ran after something the technician did on the way through the plan: that was the cause, unless
 * it only hides the trouble.
 * @returns null where nothing made it run, or where looking has to go on
 */
export function actCured(
  state: CaseState,
  happenings: readonly CaseHappening[],
  given: Given,
): Decision | null {
  const { heard, desk } = given;
  const act = desk.knowledge.acts.get(curingAct(happenings) ?? "");
  if (act === undefined) return null;
  const known = desk.triage(advance(state, happenings, heard), "technician").ranking;
  const { isGone, fault } = judgeCure(act, known);
  if (!isGone || fault === null) return null;
  const confirmed: CaseHappening = {
    ...({ type: "cause.confirmed", how: "ran-after-this" } as const),
    faults: [fault],
  };
  const all = [...happenings, confirmed];
  const asked = put(advance(state, all, heard), { about: "ran" }, [], desk);
  return { happenings: [...all, ...asked.happenings], effects: asked.effects };
}

/** What a repair has put right: the cause that was named, else the likeliest it is listed under. */
function faultOf(state: CaseState, remedy: string, desk: Desk): string {
  const { faults } = desk.knowledge;
  const listed = (id: string | undefined) =>
    faults.get(id ?? "")?.remedies.includes(remedy) === true;
  const named = state.confirmed?.faults.find(listed);
  if (named !== undefined) return named;
  const { causes } = desk.triage(state, "technician").ranking;
  return (
    causes.find((cause) => listed(cause.fault))?.fault ?? [...faults.keys()].find(listed) ?? ""
  );
}

/** The first repair of a fault that was neither done nor left. */
function repairFor(state: CaseState, fault: string, desk: Desk): string | null {
  const over = new Set([...state.skippedSteps, ...state.remediesDone.map((one) => one.remedy)]);
  const remedies = desk.knowledge.faults.get(fault)?.remedies ?? [];
  return remedies.find((remedy) => !over.has(remedy)) ?? null;
}

/** The technician names the cause, and is asked for what puts it right. */
export function confirmCause(state: CaseState, value: string, given: Given): Decision {
  if (value === "other") return put(state, { about: "cause-words" }, [], given.desk);
  if (!given.desk.knowledge.faults.has(value)) return nothingToDo;
  const how = state.answers.some((one) => one.from === "technician") ? "measured" : "guess";
  const confirmed: CaseHappening = { type: "cause.confirmed", faults: [value], how };
  const after = advance(state, [confirmed], given.heard);
  const remedy = repairFor(state, value, given.desk);
  const asking: Asking = remedy === null ? { about: "ran" } : { about: "remedy", remedy };
  const asked = put(after, asking, [], given.desk);
  return { happenings: [confirmed, ...asked.happenings], effects: asked.effects };
}
