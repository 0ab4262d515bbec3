import ICAL from "ical.js";
import { describe, expect, it } from "vitest";
import { calendarText } from "../../src/paper/calendar.ts";
import { typedWindow } from "../../src/talk/booking.ts";

/** A half of the year's clock: the offset that holds, and the rule by which it begins. */
const half = (name: string, offset: readonly [string, string], rule: string) => `BEGIN:${name}
DTSTART:19700101T${name === "DAYLIGHT" ? "0200" : "0300"}00
TZOFFSETFROM:${offset[0]}
TZOFFSETTO:${offset[1]}
RRULE:FREQ=YEARLY;${rule}
END:${name}`;

/**
 * The clocks of three places by their present rules, as calendars write them (RFC 5545, 3.6.5).
 * Source of the rules: IANA Time Zone Database, files europe, northamerica, australasia.
 */
const zones = {
  "Europe/Berlin": [
    half("DAYLIGHT", ["+0100", "+0200"], "BYMONTH=3;BYDAY=-1SU"),
    half("STANDARD", ["+0200", "+0100"], "BYMONTH=10;BYDAY=-1SU"),
  ],
  "America/Chicago": [
    half("DAYLIGHT", ["-0600", "-0500"], "BYMONTH=3;BYDAY=2SU"),
    half("STANDARD", ["-0500", "-0600"], "BYMONTH=11;BYDAY=1SU"),
  ],
  "Australia/Adelaide": [
    half("DAYLIGHT", ["+0930", "+1030"], "BYMONTH=10;BYDAY=1SU"),
    half("STANDARD", ["+1030", "+0930"], "BYMONTH=4;BYDAY=1SU"),
  ],
} as const;
type Zone = keyof typeof zones;

function zoneOf(name: Zone): ICAL.Timezone {
  const text = `BEGIN:VTIMEZONE\nTZID:${name}\n${zones[name].join("\n")}\nEND:VTIMEZONE`;
  return new ICAL.Timezone(new ICAL.Component(ICAL.parse(text.replaceAll("\n", "\r\n"))));
}

const read = (text: string) => {
  const calendar = new ICAL.Component(ICAL.parse(text));
  const event = calendar.getFirstSubcomponent("vevent");
  if (event === null) throw new Error("no event");
  return new ICAL.Event(event);
};

const entry = {
  ...({ kind: "calendar", uid: "case-4F7K@turnrow", sequence: 3, cancelled: false } as const),
  ...{ made: 0, title: "Case 4F7K", about: [] },
};

/** What the dispatcher typed, as it comes out of the calendar's file; seconds since 1970 UTC. */
function written(typed: string, now: number, zone: Zone): number[] {
  const window = typedWindow(typed, now, zone);
  if (window === null) throw new Error(`not understood: ${typed}`);
  const { startDate, endDate } = read(calendarText({ ...entry, ...window }));
  return [startDate.toUnixTime(), endDate.toUnixTime()];
}

/** The moment at which the clock of that place shows this; seconds since 1970 UTC. */
function clockAt(wall: string, zone: Zone): number {
  const time = ICAL.Time.fromDateTimeString(wall);
  time.zone = zoneOf(zone);
  return time.toUnixTime();
}

describe("a visit in the calendar, read back by another program", () => {
  it.each([
    // Clocks go back on Sunday 25 October 2026; a visit before it, on it, after it.
    ["Europe/Berlin", "24.10. 9-11", ["2026-10-24T09:00:00", "2026-10-24T11:00:00"]],
    ["Europe/Berlin", "25.10. 9-11", ["2026-10-25T09:00:00", "2026-10-25T11:00:00"]],
    ["Europe/Berlin", "26.10. 14:30-16", ["2026-10-26T14:30:00", "2026-10-26T16:00:00"]],
    // Clocks go forward on Sunday 14 March 2027, and back on 1 November 2026.
    ["America/Chicago", "31.10. 8-12", ["2026-10-31T08:00:00", "2026-10-31T12:00:00"]],
    ["America/Chicago", "1.11. 8-12", ["2026-11-01T08:00:00", "2026-11-01T12:00:00"]],
    ["America/Chicago", "14.3. 7-9", ["2027-03-14T07:00:00", "2027-03-14T09:00:00"]],
    // In the south it is the other way round: forward on 4 October 2026, back on 4 April 2027.
    ["Australia/Adelaide", "3.10. 9-11", ["2026-10-03T09:00:00", "2026-10-03T11:00:00"]],
    ["Australia/Adelaide", "4.10. 9-11", ["2026-10-04T09:00:00", "2026-10-04T11:00:00"]],
    ["Australia/Adelaide", "5.4. 9-11", ["2027-04-05T09:00:00", "2027-04-05T11:00:00"]],
  ] as const)("stands in %s at the time that was typed: %s", (zone, typed, walls) => {
    const moments = walls.map((wall) => clockAt(wall, zone));
    expect(written(typed, Date.UTC(2026, 8, 28, 12), zone)).toEqual(moments);
  });

  it("lasts as long as the clock of the place says, the hour that is twice included", () => {
    const window = typedWindow("25.10. 1-4", Date.UTC(2026, 9, 20), "Europe/Berlin");
    if (window === null) throw new Error("not understood");
    expect(read(calendarText({ ...entry, ...window })).duration.toSeconds()).toBe(4 * 60 * 60);
  });

  it("keeps every text as it was written, with its signs and scripts", () => {
    const title = 'Baler; "one click", path C:\\fields Åse Müller – 🚜 '.repeat(5).trim();
    const [where, about] = ["lower, meadow; by the oak", ["Åse", "Phone: +49 30 1234"]];
    const [from, until] = [Date.UTC(2026, 9, 25, 7), Date.UTC(2026, 9, 25, 9)];
    const place = { latitude: 52.5, longitude: -13.25 };
    const text = calendarText({ ...entry, from, until, title, where, about, place });
    const event = read(text);
    expect(event.summary).toBe(title);
    expect(event.location).toBe(where);
    expect(event.description).toBe("Åse\nPhone: +49 30 1234");
    expect([event.uid, event.sequence]).toEqual(["case-4F7K@turnrow", 3]);
    expect(event.component.getFirstPropertyValue("geo")).toEqual([52.5, -13.25]);
    expect(event.startDate.toJSDate().getTime()).toBe(from);
  });

  it("is called off in the calendar that has it", () => {
    const [from, until] = [Date.UTC(2026, 9, 25, 7), Date.UTC(2026, 9, 25, 9)];
    const text = calendarText({ ...entry, from, until, cancelled: true });
    expect(new ICAL.Component(ICAL.parse(text)).getFirstPropertyValue("method")).toBe("CANCEL");
    expect(read(text).component.getFirstPropertyValue("status")).toBe("CANCELLED");
  });
});
