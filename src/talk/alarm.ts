import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Line, Message, PlannedEffect } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import { advance } from "./advance.ts";
import { button, type Decision, line, phrase, say } from "./decision.ts";
import { type Desk, type Heard, MINUTE } from "./desk.ts";
import { slipEffects, slipReaders } from "./slip.ts";

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

/**
 * Minutes after which the shop is told again of a danger that nobody has looked after: soon at
 * first, then less often, for half a day.
 */
const REPEATS = [2, 5, 10, 15, 20, 30, 45, 60, 90, 120, 180, 240, 360, 480, 720] as const;

/** Minutes after which somebody who had an emergency is offered the way on. */
const AFTER_EMERGENCY = 10;

function callEffects(state: CaseState, flag: string, desk: Desk): PlannedEffect[] {
  const said = { number: state.id, flag: { know: wordKey("flag", flag) } };
  const press = { case: state.id, revision: 0, act: "seen", value: flag };
  const call = (key: string): Message => ({
    lines: [line(phrase(key, said), "caution")],
    buttons: [button(phrase("press-seen"), press)],
  });
  return slipReaders(desk).flatMap((reader) => [
    say(reader, call("alarm-for-shop"), `alarm-${reader.key}`),
    ...REPEATS.map((minutes) =>
      say(reader, call("alarm-again"), `alarm-${reader.key}`, {
        notBefore: desk.now + minutes * MINUTE,
        cancelIf: { flagSeen: flag },
      }),
    ),
  ]);
}

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
      ...callEffects(after, flag, desk),
      ...slipEffects(after, desk),
    ],
  };
}
