import type { CalendarEntry } from "../domain/paper.ts";

/** RFC 5545, 3.1: lines end with CRLF and should hold at most 75 octets, the break not counted. */
const LINE_END = "\r\n";
const LINE_OCTETS = 75;

const octets = (text: string) => new TextEncoder().encode(text).length;

/** RFC 5545, 3.3.11: backslash, semicolon, comma and line break are escaped in texts. */
function escaped(text: string): string {
  return text
    .replace(/[\\;,]/g, (sign) => `\\${sign}`)
    .replace(/\r\n|\r|\n/g, "\\n")
    .replace(/\p{Cc}/gu, " ");
}

/** Folds a long line; a character is never cut in two. */
function folded(line: string): string {
  const lines: string[] = [];
  let current = "";
  for (const character of line) {
    // A continuation begins with one blank, which counts.
    const room = lines.length === 0 ? LINE_OCTETS : LINE_OCTETS - 1;
    if (octets(current + character) > room) {
      lines.push(current);
      current = "";
    }
    current += character;
  }
  return [...lines, current].join(`${LINE_END} `);
}

/** A moment in UTC: no calendar can then be wrong about a clock that was put forward or back. */
const moment = (time: number) =>
  new Date(time)
    .toISOString()
    .replace(/[-:]/g, "")
    .replace(/\.\d+Z$/, "Z");

/** The appointment as an iCalendar file (RFC 5545) with one event. */
export function calendarText(entry: CalendarEntry<string>): string {
  const { uid, sequence, made, from, until, title, where, about, place } = entry;
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Turnrow//Visit//EN",
    "CALSCALE:GREGORIAN",
    `METHOD:${entry.cancelled ? "CANCEL" : "PUBLISH"}`,
    "BEGIN:VEVENT",
    `UID:${escaped(uid)}`,
    `SEQUENCE:${sequence}`,
    `DTSTAMP:${moment(made)}`,
    `DTSTART:${moment(from)}`,
    `DTEND:${moment(until)}`,
    `STATUS:${entry.cancelled ? "CANCELLED" : "CONFIRMED"}`,
    `SUMMARY:${escaped(title)}`,
    ...(where === undefined ? [] : [`LOCATION:${escaped(where)}`]),
    ...(place === undefined ? [] : [`GEO:${place.latitude};${place.longitude}`]),
    `DESCRIPTION:${escaped(about.join("\n"))}`,
    "END:VEVENT",
    "END:VCALENDAR",
  ];
  return lines.map((line) => folded(line) + LINE_END).join("");
}
