import type { DutyShift, Member } from "../domain/documents.ts";
import { DAY } from "./desk.ts";
import { momentAt } from "./hours.ts";

/** Longer than this a day or a month was mistyped. */
const LONGEST = 31 * DAY;

const DATE = String.raw`(?:(\d{1,2})\.(\d{1,2})\.?\s+)?`;
const CLOCK = String.raw`(\d{1,2})[:.](\d{2})`;
const SHIFT = new RegExp(String.raw`^(.+?)\s+${DATE}${CLOCK}\s*[-–]\s*${DATE}${CLOCK}$`, "u");

interface Local {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

function localDate(time: number, timeZone: string): Local {
  const parts = new Intl.DateTimeFormat("en-GB", {
    ...({ timeZone, year: "numeric", month: "numeric", day: "numeric" } as const),
  }).formatToParts(time);
  const part = (type: string) => Number(parts.find((one) => one.type === type)?.value);
  return { year: part("year"), month: part("month"), day: part("day") };
}

/** Days from today to that day of the month, this year or the next; null: there is no such day. */
function daysUntil(day: number, month: number, today: Local): number | null {
  const start = Date.UTC(today.year, today.month - 1, today.day);
  for (const year of [today.year, today.year + 1]) {
    const date = new Date(Date.UTC(year, month - 1, day));
    const isReal = date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
    const days = Math.round((date.getTime() - start) / DAY);
    if (isReal && days >= 0) return days;
  }
  return null;
}

const plain = (text: string) => text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();

/** Whom a name means: the whole name, else the only one that begins like it. */
function memberNamed(name: string, members: readonly Member[]): Member | null {
  const wanted = plain(name.trim());
  const whole = members.filter((one) => plain(one.name) === wanted);
  const found = whole.length > 0 ? whole : members.filter((m) => plain(m.name).startsWith(wanted));
  const [only, ...others] = found;
  return only === undefined || others.length > 0 ? null : only;
}

export interface DutyBook {
  readonly members: readonly Member[];
  /** Milliseconds since 1970 UTC. */
  readonly now: number;
  readonly timeZone: string;
}

/**
 * Reads a shift by the clock of the shop: `Ilse 17:00-22:00`, `Ilse 27.11. 17:00 - 30.11. 07:00`.
 * Without days the next such hours are meant; an end before its beginning is on the day after.
 * @returns the shift, ms since 1970 UTC; null where it is none, over already, or over a month long
 */
export function readShift(text: string, { members, now, timeZone }: DutyBook): DutyShift | null {
  const found = SHIFT.exec(text.trim());
  const member = memberNamed(found?.[1] ?? "", members);
  if (found === null || member === null) return null;
  const [d1, m1, h1, n1, d2, m2, h2, n2] = found.slice(2).map((one) => Number(one ?? 0));
  const today = localDate(now, timeZone);
  const clock = (hours = 0, minutes = 0) =>
    hours < 24 && minutes < 60 ? hours * 60 + minutes : null;
  const [starts, ends] = [clock(h1, n1), clock(h2, n2)];
  const first = d1 === 0 ? 0 : daysUntil(d1 ?? 0, m1 ?? 0, today);
  if (starts === null || ends === null || first === null) return null;
  const last = d2 === 0 ? first + Number(ends <= starts) : daysUntil(d2 ?? 0, m2 ?? 0, today);
  if (last === null) return null;
  const shift = (later: number): DutyShift => ({
    person: member.person,
    from: momentAt(now, { daysOn: first + later, minutes: starts }, timeZone),
    until: momentAt(now, { daysOn: last + later, minutes: ends }, timeZone),
  });
  const isDated = d1 !== 0 || d2 !== 0;
  const taken = !isDated && shift(0).until <= now ? shift(1) : shift(0);
  const isFit = taken.until > Math.max(now, taken.from) && taken.until - taken.from <= LONGEST;
  return isFit ? taken : null;
}
