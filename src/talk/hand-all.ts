import { type CaseHappening, stamped } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Member } from "../domain/documents.ts";
import type { Message, PlannedEffect } from "../domain/effects.ts";
import { applyEvent } from "../domain/fold-case.ts";
import { wordKey } from "../domain/knowledge.ts";
import { button, type Decision, line, nothingToDo, phrase, say } from "./decision.ts";
import type { Desk, OtherCase } from "./desk.ts";
import { tell } from "./follow-ups.ts";
import { slipEffects } from "./slip.ts";

/** Cases named one by one to whoever takes them over; the list of calls holds the rest. */
const NAMED = 12;

/** Who of the counter takes over everything that this member looks after? */
export function handAllMessage(members: readonly Member[], reader: Member, count: number): Message {
  const others = members.filter((one) => one.role !== "technician" && one.person !== reader.person);
  const key = count === 0 ? "hand-all-none" : others.length === 0 ? "pass-nobody" : "hand-all-who";
  const lines = [line(phrase(key, { count }), "heading")];
  if (key !== "hand-all-who") return { lines };
  const press = (value: string) => ({ revision: 0, act: "hand-all", value });
  return { lines, buttons: others.map((one) => button({ raw: one.name }, press(one.person))) };
}

/** What follows when one dispatcher hands all their cases to another at the end of a shift. */
export function handAllEffects(
  cases: readonly OtherCase[],
  from: Member,
  to: Member,
): PlannedEffect[] {
  const named = cases.slice(0, NAMED).map(({ id, machine }) => {
    const kind = { know: wordKey("machine", machine.kind ?? "other") };
    const press = { case: id, revision: 0, act: "slip" };
    return button(phrase("list-case", { number: id, machine: kind }), press);
  });
  const heading = phrase("hand-all-yours", { who: from.name, count: cases.length });
  const told = say(to, { lines: [line(heading, "heading")], buttons: named });
  const done = phrase("hand-all-done", { who: to.name, count: cases.length });
  const event = { type: "passed-on", from: from.person, to: to.person } as const;
  return [
    say(from, { lines: [line(done)] }),
    told,
    ...cases.map(({ id }) => tell("case", id, { event })),
  ];
}

/** The case's side of it; where somebody else looks after it by now, nothing happens. */
export function passedOnTurn(
  state: CaseState,
  told: { readonly from: string; readonly to: string },
  desk: Desk,
): Decision {
  if (state.closed !== null || state.shopSaw !== told.from) return nothingToDo;
  const passed: CaseHappening & { readonly by: string } = {
    ...{ type: "case.passed-on", to: told.to, by: told.from },
  };
  const stamp = { at: desk.now, by: told.from, update: null };
  const after = applyEvent(state, stamped(passed, stamp));
  return { happenings: [passed], effects: slipEffects(after, desk) };
}
