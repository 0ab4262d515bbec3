import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Line } from "../domain/effects.ts";
import { advance } from "./advance.ts";
import { standingFlag } from "./alarm.ts";
import { button, type Decision, line, phrase, say } from "./decision.ts";
import type { Desk, Heard } from "./desk.ts";
import { presenceAt } from "./hours.ts";
import { slipEffects } from "./slip.ts";

const isUrgent = (state: CaseState) => state.urgency === "high" || standingFlag(state) !== null;

/** When somebody will be there, and whom to ring meanwhile if it cannot wait. */
export function presenceLines(state: CaseState, desk: Desk): Line[] {
  const presence = presenceAt(desk.now, desk.shop);
  if (presence.is === "unknown") return [];
  if (presence.is === "open") {
    return [line(phrase("person-there", { time: { time: presence.until, style: "hour" } }))];
  }
  const { onCallPhone } = desk.shop;
  const again = phrase("person-away", { time: { time: presence.opens, style: "day-hour" } });
  const onCall =
    onCallPhone === undefined ? [] : [line(phrase("person-on-call", { phone: onCallPhone }))];
  return [line(again), ...(isUrgent(state) ? onCall : [])];
}

/** The number that is answered now. */
function numberNow(state: CaseState, { shop, now }: Desk): string {
  const away = presenceAt(now, shop).is === "closed";
  return away && isUrgent(state) ? (shop.onCallPhone ?? shop.phone) : shop.phone;
}

/** The operator wants a person: number, card, when somebody is there; the shop is told at once. */
export function wantPerson(
  state: CaseState,
  given: { readonly heard: Heard; readonly desk: Desk },
): Decision {
  const { desk, heard } = given;
  const happenings: CaseHappening[] = [
    { type: "person.wanted" },
    ...(state.shopTold ? [] : [{ type: "shop.told" } as const]),
  ];
  const after = advance(state, happenings, heard);
  const reachable = desk.counter !== undefined || desk.members.some((m) => m.role !== "technician");
  const key = reachable ? "person-told" : "person-nobody";
  const { phone, name } = desk.shop;
  const press = { case: state.id, revision: state.revision, act: "repeat" };
  const message = {
    lines: [line(phrase(key, { phone, shop: name })), ...presenceLines(state, desk)],
    buttons: [button(phrase("answer-go-on"), press)],
    card: { name, phone: numberNow(state, desk) },
  };
  return { happenings, effects: [say(state.operator, message), ...slipEffects(after, desk)] };
}
