import { describe, expect, it } from "vitest";
import { momentAt, notAtNight, presenceAt } from "../../src/talk/hours.ts";

const zone = "Europe/Berlin";
const hours = { monday: { from: "07:00", to: "17:30" }, friday: { from: "07:00", to: "15:00" } };
const at = (iso: string) => Date.parse(iso);
const iso = (time: number) => new Date(time).toISOString();

describe("when somebody of the shop is there", () => {
  it("is now, until closing time, within the hours of the place", () => {
    // Monday 3 November 2025, 09:00 in Berlin (UTC+1).
    const now = at("2025-11-03T08:00:00Z");
    expect(presenceAt(now, { hours, timeZone: zone })).toEqual({
      is: "open",
      until: at("2025-11-03T16:30:00Z"),
    });
  });

  it("is from the next opening on, days away if need be", () => {
    const evening = at("2025-11-03T18:00:00Z");
    expect(presenceAt(evening, { hours, timeZone: zone })).toEqual({
      is: "closed",
      opens: at("2025-11-07T06:00:00Z"),
    });
  });

  it("is not known where the shop tells no hours", () => {
    expect(presenceAt(0, { hours: {}, timeZone: zone }).is).toBe("unknown");
  });
});

describe("times of a place", () => {
  it("mind that clocks go forward: seven in the morning is an hour earlier in UTC", () => {
    // Central European Summer Time began on 30 March 2025, 01:00 UTC (EU Directive 2000/84/EC).
    const before = at("2025-03-29T12:00:00Z");
    expect(iso(momentAt(before, { daysOn: 1, minutes: 420 }, zone))).toBe(
      "2025-03-30T05:00:00.000Z",
    );
    expect(iso(momentAt(before, { daysOn: 0, minutes: 420 }, zone))).toBe(
      "2025-03-29T06:00:00.000Z",
    );
  });

  it("let nobody be woken: what comes at night waits for the morning", () => {
    const day = at("2025-11-03T12:00:00Z");
    expect(notAtNight(day, zone)).toBe(day);
    expect(iso(notAtNight(at("2025-11-03T22:30:00Z"), zone))).toBe("2025-11-04T06:00:00.000Z");
    expect(iso(notAtNight(at("2025-11-04T02:00:00Z"), zone))).toBe("2025-11-04T06:00:00.000Z");
  });
});
