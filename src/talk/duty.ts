import type { DutyShift, Member } from "../domain/documents.ts";
import type { Arg, Line, Message } from "../domain/effects.ts";
import type { ShopSettings } from "../domain/settings.ts";
import { button, line, phrase } from "./decision.ts";
import { DAY, type Desk } from "./desk.ts";
import { isQuietAt, momentAt, notAtNight } from "./hours.ts";
import { may } from "./rights.ts";

/** Shifts that can be pressed; the next night, weekend or week from now on. */
export const shiftSpans = ["night", "weekend", "week"] as const;
export type ShiftSpan = (typeof shiftSpans)[number];

const SHIFTS_SHOWN = 5;
/** A weekend begins on Friday at five in the afternoon and lasts until Monday morning. */
const WEEKEND_BEGINS = 17 * 60;
const [FRIDAY, MONDAY] = [5, 1];

type Shop = Pick<ShopSettings, "timeZone" | "quietHours">;

/** The shift that counts at a moment; ms since 1970 UTC. */
function shiftAt(desk: Pick<Desk, "duty" | "members">, at: number): DutyShift | null {
  const belongs = ({ person }: DutyShift) => desk.members.some((one) => one.person === person);
  const covering = (desk.duty ?? []).filter(({ from, until }) => from <= at && at < until);
  return covering.filter(belongs).at(-1) ?? null;
}

/** Who has the call-outs at a moment; null: nobody. Whoever left the shop has none. */
export function onDuty(desk: Pick<Desk, "duty" | "members">, at: number): Member | null {
  const person = shiftAt(desk, at)?.person;
  return desk.members.find((one) => one.person === person) ?? null;
}

const wakingMinutes = ({ quietHours }: Shop) =>
  Number(quietHours.to.slice(0, 2)) * 60 + Number(quietHours.to.slice(3, 5));

/** 0 is Sunday. */
const weekday = (time: number, timeZone: string): number =>
  ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"].indexOf(
    new Intl.DateTimeFormat("en-GB", { timeZone, weekday: "short" }).format(time),
  );

/** From when until when a shift lasts that is taken now; ms since 1970 UTC. */
export function shiftOf(span: ShiftSpan, now: number, shop: Shop): Omit<DutyShift, "person"> {
  const { timeZone, quietHours } = shop;
  const morning = (daysOn: number) =>
    momentAt(now, { daysOn, minutes: wakingMinutes(shop) }, timeZone);
  if (span === "night") {
    if (isQuietAt(now, timeZone, quietHours)) {
      return { from: now, until: notAtNight(now, timeZone, quietHours) };
    }
    return { from: now, until: morning(0) > now ? morning(0) : morning(1) };
  }
  if (span === "week") return { from: now, until: morning(7) };
  const day = weekday(now, timeZone);
  const toMonday = (MONDAY - day + 7) % 7;
  const toFriday = (FRIDAY - day + 7) % 7;
  const friday = momentAt(now, { daysOn: toFriday, minutes: WEEKEND_BEGINS }, timeZone);
  if (day === MONDAY && morning(0) > now) return { from: now, until: morning(0) };
  const isWeekend = day === 6 || day === 0 || (day === FRIDAY && friday <= now);
  if (isWeekend) return { from: now, until: morning(toMonday === 0 ? 7 : toMonday) };
  return { from: friday, until: morning(toFriday + 3) };
}

/** The roster with a shift added; shifts that are over for a day are dropped. */
export function withShift(
  duty: readonly DutyShift[] | undefined,
  shift: DutyShift,
  now: number,
): readonly DutyShift[] {
  return [...(duty ?? []).filter(({ until }) => until > now - DAY), shift];
}

/** The roster on which nobody has call-outs from now on. */
export function withoutDuty(
  duty: readonly DutyShift[] | undefined,
  now: number,
): readonly DutyShift[] {
  return (duty ?? [])
    .filter(({ from }) => from < now)
    .map((shift) => ({ ...shift, until: Math.min(shift.until, now) }));
}

const moment = (time: number): Arg => ({ time, style: "day-hour" });

/** Who has the call-outs now and next; whoever may can hand them to somebody. */
export function dutyMessage(desk: Desk, reader: Member): Message {
  const { members, now } = desk;
  const nameOf = (person: string) => members.find((one) => one.person === person)?.name ?? "";
  const standing = shiftAt(desk, now);
  const first =
    standing === null
      ? line(phrase("duty-nobody"), "heading")
      : line(
          phrase("duty-now", { who: nameOf(standing.person), until: moment(standing.until) }),
          "heading",
        );
  const coming = (desk.duty ?? [])
    .filter(({ from, person }) => from > now && nameOf(person) !== "")
    .sort((a, b) => a.from - b.from)
    .slice(0, SHIFTS_SHOWN)
    .map(({ person, from, until }): Line => {
      const words = { who: nameOf(person), from: moment(from), until: moment(until) };
      return line(phrase("duty-next", words), "bullet");
    });
  const lines = [first, ...coming, line(phrase("duty-what"))];
  if (!may(reader.role, "set-duty")) return { lines };
  const press = (value: string) => ({ revision: 0, act: "duty", value });
  const people = members.map((one) => button({ raw: one.name }, press(one.person)));
  const nobody = standing === null ? [] : [button(phrase("press-duty-nobody"), press("-"))];
  return { lines, buttons: [...people, ...nobody] };
}

/** How any other hours are written. */
export const typedHint = (name: string): Line => line(phrase("duty-typed", { who: name }));

/** For how long shall this person have the call-outs? */
export function shiftMessage(person: Member, desk: Desk): Message {
  const buttons = shiftSpans.map((span) => {
    const { from, until } = shiftOf(span, desk.now, desk.shop);
    const words = { from: moment(from), until: moment(until) };
    const press = { revision: 0, act: "duty", value: `${person.person}:${span}` };
    return button(phrase("duty-span", words), press);
  });
  const asked = line(phrase("duty-how-long", { who: person.name }), "heading");
  return { lines: [asked, typedHint(person.name)], buttons };
}
