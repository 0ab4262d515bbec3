import { describe, expect, it } from "vitest";
import type { CalendarEntry } from "../../src/domain/paper.ts";
import { calendarText } from "../../src/paper/calendar.ts";

const entry = (more: Partial<CalendarEntry<string>> = {}): CalendarEntry<string> => ({
  ...{ kind: "calendar", uid: "case-4F7K@turnrow", sequence: 0, cancelled: false },
  made: Date.UTC(2026, 9, 24, 12),
  from: Date.UTC(2026, 9, 25, 0, 30),
  until: Date.UTC(2026, 9, 25, 2),
  title: "Case 4F7K",
  about: [],
  ...more,
});

/** The content lines, unfolded as RFC 5545, 3.1 says. */
const unfolded = (text: string) => text.replace(/\r\n[ \t]/g, "").split("\r\n");
/** What a TEXT value says, unescaped as RFC 5545, 3.3.11 says. */
const textOf = (lines: readonly string[], name: string) =>
  (lines.find((line) => line.startsWith(`${name}:`)) ?? "")
    .slice(name.length + 1)
    .replace(/\\([\\;,nN])/g, (_, sign: string) => (/n/i.test(sign) ? "\n" : sign));

describe("a calendar entry", () => {
  it("gives back every text as it was, whatever stands in it", () => {
    const title = 'Baler; "one click", path C:\\fields\nÅse Müller – 🚜 '.repeat(4);
    const lines = unfolded(
      calendarText(entry({ title, where: "lower, meadow", about: ["a", "b;c"] })),
    );
    expect(textOf(lines, "SUMMARY")).toBe(title);
    expect(textOf(lines, "LOCATION")).toBe("lower, meadow");
    expect(textOf(lines, "DESCRIPTION")).toBe("a\nb;c");
  });

  it("holds no line of more than 75 octets and cuts no character in two", () => {
    const text = calendarText(entry({ title: "Åse 🚜 ".repeat(60) }));
    for (const line of text.split("\r\n")) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
    expect(text).not.toContain("\uFFFD");
    expect(text.endsWith("\r\n")).toBe(true);
  });

  // The clocks went back in Berlin at 01:00 UTC on 25 October 2026, inside this window.
  it.each(["Europe/Berlin", "America/New_York", "Pacific/Auckland"])(
    "is the same moment in %s, across a change of the clocks",
    (timeZone) => {
      const lines = unfolded(calendarText(entry()));
      const [, y, m, d, h, min] =
        /^(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)00Z$/.exec(textOf(lines, "DTSTART")) ?? [];
      const read = Date.UTC(Number(y), Number(m) - 1, Number(d), Number(h), Number(min));
      const shown = (time: number) =>
        new Intl.DateTimeFormat("en", { timeZone, dateStyle: "full", timeStyle: "long" }).format(
          time,
        );
      expect(shown(read)).toBe(shown(entry().from));
    },
  );

  it("calls the same entry off under the same name with a higher number", () => {
    const lines = unfolded(calendarText(entry({ cancelled: true, sequence: 2 })));
    expect(lines).toContain("METHOD:CANCEL");
    expect(lines).toContain("STATUS:CANCELLED");
    expect(lines).toContain("UID:case-4F7K@turnrow");
    expect(lines).toContain("SEQUENCE:2");
  });
});
