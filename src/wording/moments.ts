import type { Formatters } from "./formatters.ts";

export type MomentStyle = "day" | "hour" | "day-hour";

const day = { weekday: "short", day: "numeric", month: "short" } as const;
const hour = { hour: "2-digit", minute: "2-digit" } as const;
const styles: Readonly<Record<MomentStyle, Intl.DateTimeFormatOptions>> = {
  day,
  hour,
  "day-hour": { ...day, ...hour },
};

/**
 * A moment as people of the shop say it.
 * @param time milliseconds since 1970 UTC
 * @param timeZone IANA name
 * @returns a dash for a moment that no calendar holds
 */
export function formatMoment(
  time: number,
  style: MomentStyle,
  place: { readonly forms: Formatters; readonly timeZone: string },
): string {
  if (!Number.isFinite(time) || Math.abs(time) > 8.64e15) return "–";
  return place.forms.date(time, { ...styles[style], timeZone: place.timeZone });
}
