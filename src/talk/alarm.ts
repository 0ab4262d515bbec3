import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Line, Message } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import { advance } from "./advance.ts";
import { button, type Decision, line, phrase, say } from "./decision.ts";
import type { Desk, Heard } from "./desk.ts";
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
  const press = (act: string) => ({ case: state.id, revision: state.revision, act });
  return {
    lines: [
      line(phrase("alarm-stop"), "heading"),
      line({ know: wordKey("flag", flag, "say") }, "caution"),
      ...readLines(state, desk),
    ],
    buttons: [
      button(phrase("answer-safe-now"), press("safe-now")),
      button(phrase("answer-person"), press("person")),
    ],
  };
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
  const call = {
    lines: [
      line(
        phrase("alarm-for-shop", { number: state.id, flag: { know: wordKey("flag", flag) } }),
        "caution",
      ),
    ],
    buttons: [
      button(phrase("press-seen"), { case: state.id, revision: 0, act: "seen", value: flag }),
    ],
  };
  return {
    happenings: all,
    effects: [
      say(state.operator, alarmMessage(after, flag, desk), "alarm"),
      ...slipReaders(desk).map((reader) => say(reader, call, `alarm-${reader.key}`)),
      ...slipEffects(after, desk),
    ],
  };
}
