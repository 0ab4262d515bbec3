import type { CaseState } from "../domain/case-state.ts";
import type { PlannedEffect } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import { back, type Given, saying, tellingOperator, withSlip } from "./counter-given.ts";
import { button, type Decision, line, nothingToDo, phrase, say } from "./decision.ts";
import { type Desk, MINUTE, type OtherCase } from "./desk.ts";
import { byRoad, placeKnown } from "./distance.ts";
import { momentAt } from "./hours.ts";

/** A stretch of time in which the technician arrives; ms since 1970 UTC, `from` before `until`. */
export interface Window {
  readonly from: number;
  readonly until: number;
}

/** Windows that are offered to be pressed, minutes since midnight. */
const OFFERED = [
  { from: 8 * 60, until: 12 * 60 },
  { from: 13 * 60, until: 17 * 60 },
] as const;
const DAYS_OFFERED = 3;

/** The next windows from now on, on the shop's own clock. */
export function windowsFrom(now: number, timeZone: string): readonly Window[] {
  const days = Array.from({ length: DAYS_OFFERED }, (_, daysOn) => daysOn);
  return days
    .flatMap((daysOn) =>
      OFFERED.map(({ from, until }) => ({
        from: momentAt(now, { daysOn, minutes: from }, timeZone),
        until: momentAt(now, { daysOn, minutes: until }, timeZone),
      })),
    )
    .filter((window) => window.until > now);
}

const TYPED =
  /^(?:(\d{1,2})[./-](\d{1,2})\.?\s+)?(\d{1,2})(?::(\d{2}))?\s*(?:-|–|to|until)\s*(\d{1,2})(?::(\d{2}))?$/;

/**
 * A window as typed: `9-11`, `14:30-16`, `27.11. 9-11` (day before month). Without a day it is the
 * next time the clock shows it.
 * @returns null where it is none
 */
export function typedWindow(text: string, now: number, timeZone: string): Window | null {
  const found = TYPED.exec(text.trim().toLowerCase());
  if (found === null) return null;
  const [, day, month, ...times] = found;
  const [fromHour = 0, fromMinute = 0, untilHour = 0, untilMinute = 0] = times.map((one) =>
    Number(one ?? 0),
  );
  const [start, end] = [fromHour * 60 + fromMinute, untilHour * 60 + untilMinute];
  if (end <= start || end > 24 * 60 || fromMinute > 59 || untilMinute > 59) return null;
  const at = (daysOn: number): Window => ({
    from: momentAt(now, { daysOn, minutes: start }, timeZone),
    until: momentAt(now, { daysOn, minutes: end }, timeZone),
  });
  if (day === undefined) return at(0).until > now ? at(0) : at(1);
  const wanted = `${Number(day)}.${Number(month)}`;
  const date = new Intl.DateTimeFormat("en-GB", { timeZone, day: "numeric", month: "numeric" });
  for (let daysOn = 0; daysOn < 366; daysOn += 1) {
    const parts = date.formatToParts(at(daysOn).from);
    // Some of them come with a nought in front.
    const part = (type: string) => Number(parts.find((one) => one.type === type)?.value);
    if (`${part("day")}.${part("month")}` === wanted) return at(daysOn);
  }
  return null;
}

/** Why a window does not go: another visit in it, or too little time for the road in between. */
export interface Clash {
  readonly other: OtherCase;
  readonly because: "overlap" | "travel";
}

/** The first visit of the technician that the window would clash with, or null. */
export function clashOf(
  state: Pick<CaseState, "id" | "technician" | "where">,
  window: Window,
  desk: Desk,
): Clash | null {
  const person = state.technician?.id;
  if (person === undefined) return null;
  for (const other of desk.others?.() ?? []) {
    const { booked } = other;
    if (other.id === state.id || other.technician?.id !== person || booked === null) continue;
    if (booked.from < window.until && window.from < booked.until)
      return { other, because: "overlap" };
    const [here, there] = [placeKnown(state.where), placeKnown(other.where)];
    const road = here === null || there === null ? 0 : byRoad(here, there, desk.shop).minutes;
    const gap = Math.max(booked.from - window.until, window.from - booked.until);
    if (gap < road * MINUTE) return { other, because: "travel" };
  }
  return null;
}

/** Offers windows to press, and says how to type another. */
export function offerWindows(state: CaseState, given: Given): Decision {
  const { now, shop } = given.desk;
  const press = (act: string, value?: string) => ({
    ...{ case: state.id, revision: 0, act },
    ...(value === undefined ? {} : { value }),
  });
  const windows = windowsFrom(now, shop.timeZone).map((window) =>
    button(
      phrase("book-window", {
        from: { time: window.from, style: "day-hour" },
        until: { time: window.until, style: "hour" },
      }),
      press("book", `${window.from}-${window.until}`),
    ),
  );
  const off = state.booked === null ? [] : [button(phrase("press-unbook"), press("unbook"))];
  const message = {
    lines: [line(phrase("book-when", { number: state.id }), "heading"), line(phrase("book-type"))],
    buttons: [...windows, ...off],
  };
  return {
    happenings: [{ type: "counter.prompted", about: "book" }],
    effects: [say(back(given), message)],
  };
}

/** The appointment for the technician's calendar; moved and called off under the same name. */
export function calendarEffects(
  state: CaseState,
  window: Window,
  given: { readonly desk: Desk; readonly cancelled: boolean },
): PlannedEffect[] {
  const { technician, where, phone, operator } = state;
  if (technician === null) return [];
  const place = placeKnown(where);
  const changes = state.history.filter((one) => /^visit\.(un)?booked$/.test(one.type)).length;
  const machine = { know: wordKey("machine", state.machine.kind ?? "other") };
  const paper = {
    ...({ kind: "calendar", uid: `case-${state.id}@turnrow`, sequence: changes } as const),
    ...{ made: given.desk.now, cancelled: given.cancelled, ...window },
    title: phrase("sheet-title", { number: state.id, machine }),
    ...(where?.words === undefined ? {} : { where: { raw: where.words } }),
    ...(place === null ? {} : { place }),
    about: [
      ...(operator.name === "" ? [] : [{ raw: operator.name }]),
      ...(phone === null ? [] : [phrase("slip-phone", { phone })]),
    ],
  };
  const key = given.cancelled ? "visit-unbooked" : "visit-booked";
  const lines = [line(phrase(key, { number: state.id, ...windowArgs(window) }))];
  return [say(technician, { lines, paper })];
}

const windowArgs = (window: Window) => ({
  from: { time: window.from, style: "day-hour" } as const,
  until: { time: window.until, style: "hour" } as const,
});

/** Books the visit unless the technician is elsewhere then; says so to everybody it concerns. */
export function book(state: CaseState, window: Window, given: Given): Decision {
  const { desk } = given;
  if (!(window.until > window.from) || window.until <= desk.now) {
    return saying([line(phrase("book-past"))], nothingToDo, given);
  }
  const clash = clashOf(state, window, desk);
  if (clash !== null) {
    const { other, because } = clash;
    const who = state.technician?.name ?? "";
    const words = phrase(`book-${because}`, {
      technician: who,
      number: other.id,
      ...windowArgs(other.booked ?? window),
    });
    return saying([line(words, "caution")], nothingToDo, given);
  }
  const decision = withSlip(state, [{ type: "visit.booked", ...window }], given);
  const calendar = calendarEffects(state, window, { desk, cancelled: false });
  const told = tellingOperator(
    state,
    [line(phrase("operator-booked", { shop: desk.shop.name, ...windowArgs(window) }))],
    { ...decision, effects: [...calendar, ...decision.effects] },
  );
  return { ...told, toast: phrase("booked", windowArgs(window)) };
}

/** Takes the booking back. */
export function unbook(state: CaseState, given: Given): Decision {
  const { booked } = state;
  if (booked === null) return { ...nothingToDo, toast: phrase("not-booked") };
  const decision = withSlip(state, [{ type: "visit.unbooked" }], given);
  const calendar = calendarEffects(state, booked, { desk: given.desk, cancelled: true });
  const words = phrase("operator-unbooked", windowArgs(booked));
  return tellingOperator(state, [line(words)], {
    ...decision,
    effects: [...calendar, ...decision.effects],
  });
}

/** The window that a pressed button names. */
export function pressedWindow(value: string): Window | null {
  const [from = Number.NaN, until = Number.NaN] = value.split("-").map(Number);
  return Number.isFinite(from) && Number.isFinite(until) ? { from, until } : null;
}
