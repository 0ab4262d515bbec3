import { type ShopSettings, weekdays } from "../domain/settings.ts";
import { DAY, MINUTE } from "./desk.ts";

const MINUTES_A_DAY = 24 * 60;
/** Nobody is woken for what can wait: from nine in the evening to seven in the morning. */
const NIGHT = { from: "21:00", to: "07:00" };

type Opening = Pick<ShopSettings, "hours" | "timeZone">;

interface Local {
  readonly day: (typeof weekdays)[number];
  /** Minutes since midnight. */
  readonly minutes: number;
}

/** Day and time of day at a place. @param time milliseconds since 1970 UTC */
function localTime(time: number, timeZone: string): Local {
  const parts = new Intl.DateTimeFormat("en-GB", {
    ...{ timeZone, weekday: "long", hour: "2-digit", minute: "2-digit", hourCycle: "h23" },
  }).formatToParts(time);
  const part = (type: string) => parts.find((one) => one.type === type)?.value ?? "";
  const name = part("weekday").toLowerCase();
  const day = weekdays.find((one) => one === name) ?? "monday";
  return { day, minutes: Number(part("hour")) * 60 + Number(part("minute")) };
}

const minutesOf = (clock: string) => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3, 5));

/** The moment at which the clock of a place shows that time, so many days from now. */
export function momentAt(
  now: number,
  from: { readonly daysOn: number; readonly minutes: number },
  zone: string,
): number {
  const here = localTime(now, zone);
  const guess =
    Math.floor(now / MINUTE) * MINUTE + from.daysOn * DAY + (from.minutes - here.minutes) * MINUTE;
  // The clocks may have been put forward or back in between.
  const off = from.minutes - localTime(guess, zone).minutes;
  const wrapped = off > MINUTES_A_DAY / 2 ? off - MINUTES_A_DAY : off;
  return guess + (wrapped < -MINUTES_A_DAY / 2 ? wrapped + MINUTES_A_DAY : wrapped) * MINUTE;
}

/** When somebody of the shop is there. */
export type Presence =
  | { readonly is: "open"; readonly until: number }
  | { readonly is: "closed"; readonly opens: number }
  /** The shop tells no hours. */
  | { readonly is: "unknown" };

/** Is somebody there at this moment, and until or from when? Moments are ms since 1970 UTC. */
export function presenceAt(now: number, { hours, timeZone }: Opening): Presence {
  const here = localTime(now, timeZone);
  const today = hours[here.day];
  if (today !== undefined) {
    const [from, to] = [minutesOf(today.from), minutesOf(today.to)];
    const until = () => momentAt(now, { daysOn: 0, minutes: to }, timeZone);
    if (here.minutes >= from && here.minutes < to) return { is: "open", until: until() };
  }
  for (let daysOn = 0; daysOn <= 7; daysOn += 1) {
    const name = weekdays[(weekdays.indexOf(here.day) + daysOn) % 7] ?? here.day;
    const opening = hours[name];
    if (opening === undefined) continue;
    const minutes = minutesOf(opening.from);
    if (daysOn === 0 && minutes <= here.minutes) continue;
    return { is: "closed", opens: momentAt(now, { daysOn, minutes }, timeZone) };
  }
  return { is: "unknown" };
}

type Quiet = ShopSettings["quietHours"];

/** Is this a time at which nobody is written to for what can wait? */
export function isQuietAt(time: number, timeZone: string, quiet: Quiet = NIGHT): boolean {
  const { minutes } = localTime(time, timeZone);
  const [from, to] = [minutesOf(quiet.from), minutesOf(quiet.to)];
  return from <= to ? minutes >= from && minutes < to : minutes >= from || minutes < to;
}

/** The first moment from this one on at which nobody is woken. */
export function notAtNight(time: number, timeZone: string, quiet: Quiet = NIGHT): number {
  if (!isQuietAt(time, timeZone, quiet)) return time;
  const to = minutesOf(quiet.to);
  const daysOn = localTime(time, timeZone).minutes < to ? 0 : 1;
  return momentAt(time, { daysOn, minutes: to }, timeZone);
}
