import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Line } from "../domain/effects.ts";
import { advance } from "./advance.ts";
import { type Decision, say } from "./decision.ts";
import type { Desk, Heard } from "./desk.ts";
import { slipEffects } from "./slip.ts";

/** What a turn of the counter is given besides the case. */
export interface Given {
  readonly heard: Heard;
  readonly desk: Desk;
}

/**
 * Where the dispatcher who acted reads the answer: where they pressed, but of groups only in the
 * counter's. A group that was the counter once still holds slips with buttons.
 */
export function back(given: Given) {
  const { incoming, member } = given.heard;
  const { counter, shop } = given.desk;
  const language = member?.language ?? shop.languages[0] ?? "en";
  const isStrange = !incoming.direct && incoming.chat !== counter?.chat;
  if (isStrange && member !== null) return { chat: member.chat, language };
  return {
    chat: incoming.chat,
    language,
    ...(incoming.topic === undefined ? {} : { topic: incoming.topic }),
  };
}

/** What happened, and the slips that show it. */
export function withSlip(
  state: CaseState,
  happenings: readonly CaseHappening[],
  given: Given,
): Decision {
  const after = advance(state, happenings, given.heard);
  return { happenings, effects: slipEffects(after, given.desk) };
}

/** Says something to the dispatcher who acted, first of all. */
export function saying(lines: readonly Line[], decision: Decision, given: Given): Decision {
  return { ...decision, effects: [say(back(given), { lines }), ...decision.effects] };
}

/** Says something to the operator first of all, where there is a chat to say it in. */
export function tellingOperator(
  state: CaseState,
  lines: readonly Line[],
  decision: Decision,
): Decision {
  if (state.operator.chat === "") return decision;
  return { ...decision, effects: [say(state.operator, { lines }), ...decision.effects] };
}
