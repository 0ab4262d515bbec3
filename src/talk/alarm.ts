import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Line, Message, PlannedEffect } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import { advance } from "./advance.ts";
import { alarmCalls } from "./alarm-calls.ts";
import { button, type Decision, line, phrase, say } from "./decision.ts";
import { type Desk, type Heard, MINUTE } from "./desk.ts";
import { slipEffects } from "./slip.ts";

/** The newest red flag that still stands in the way, or null. */
export function standingFlag(state: CaseState): string | null {
  return state.safety === "not-clear" ? (state.flags.at(-1)?.flag ?? null) : null;
}

function readLines(state: CaseState, desk: Desk): Line[] {
  const seen = state.flags.at(-1)?.seenBy ?? null;
  const key = seen === null ? "alarm-unread" : "alarm-read";
  return [line(phrase(key, { phone: desk.shop.onCallPhone ?? desk.shop.phone }), undefined, true)];
}

/** What to do first; for someone hurt or a fire the emergency number and nothing else. */
export function alarmMessage(state: CaseState, flag: string, desk: Desk): Message {
  const known = desk.knowledge.redFlags.get(flag);
  if (known?.emergency === true) {
    return { lines: [line(phrase("alarm-emergency", { number: desk.shop.emergency }), "heading")] };
  }
  return {
    lines: [
      line(phrase("alarm-stop"), "heading"),
      line({ know: wordKey("flag", flag, "say") }, "caution"),
      ...readLines(state, desk),
    ],
    buttons: wayOn(state),
  };
}

/** Minutes after which somebody who had an emergency is offered the way on. */
const AFTER_EMERGENCY = 10;

function wayOn(state: CaseState) {
  const press = (act: string) => ({ case: state.id, revision: state.revision, act });
  return [
    button(phrase("answer-safe-now"), press("safe-now")),
    button(phrase("answer-person"), press("person")),
  ];
}

/** After an emergency the way on is offered later, in a message of its own. */
function laterWayOn(state: CaseState, flag: string, desk: Desk): PlannedEffect[] {
  if (desk.knowledge.redFlags.get(flag)?.emergency !== true) return [];
  const message = { lines: [line(phrase("alarm-after"))], buttons: wayOn(state) };
  const notBefore = desk.now + AFTER_EMERGENCY * MINUTE;
  return [say(state.operator, message, "alarm-after", { notBefore })];
}

/** While a red flag stands, everything is kept but nothing is asked. */
export function stayStopped(
  state: CaseState,
  happenings: readonly CaseHappening[],
  given: { heard: Heard; desk: Desk },
): Decision {
  const after = advance(state, happenings, given.heard);
  const message = alarmMessage(after, standingFlag(after) ?? "", given.desk);
  const buttons = message.buttons ?? wayOn(after);
  return { happenings, effects: [say(after.operator, { ...message, buttons }, "alarm")] };
}

/** Stops the interview: says what to do first, and tells the shop at any hour. */
export function raiseAlarm(
  state: CaseState,
  happenings: readonly CaseHappening[],
  given: { heard: Heard; desk: Desk },
): Decision {
  const { heard, desk } = given;
  const told: CaseHappening[] = state.shopTold ? [] : [{ type: "shop.told" }];
  const all = [...happenings, ...told];
  const after = advance(state, all, heard);
  const flag = after.flags.at(-1)?.flag ?? "";
  return {
    happenings: all,
    effects: [
      say(state.operator, alarmMessage(after, flag, desk), "alarm"),
      ...laterWayOn(after, flag, desk),
      ...alarmCalls(after, flag, desk),
      ...slipEffects(after, desk),
    ],
  };
}
