import { describe, expect, it } from "vitest";
import type { Member } from "../../src/domain/documents.ts";
import { readShift } from "../../src/talk/duty-hours.ts";

const member = (person: string, name: string): Member => ({
  ...({ person, name, chat: person, language: "en", role: "technician" } as const),
});
const members = [member("3", "Ilse Brandt"), member("4", "Piet Ås"), member("5", "Piet Moor")];
/** A Wednesday, 15:00 at the shop. */
const now = Date.parse("2026-11-25T14:00:00Z");
const read = (text: string, at = now) => {
  const shift = readShift(text, { members, now: at, timeZone: "Europe/Berlin" });
  const iso = (time: number) => new Date(time).toISOString().slice(0, 16);
  return shift === null ? null : [shift.person, iso(shift.from), iso(shift.until)].join(" ");
};

describe("a shift by stated hours", () => {
  it.each([
    ["Ilse 17:00-22:00", "3 2026-11-25T16:00 2026-11-25T21:00"],
    ["ilse brandt 17.00 – 22.00", "3 2026-11-25T16:00 2026-11-25T21:00"],
    // It has begun already and is not over.
    ["Ilse 14:00-16:00", "3 2026-11-25T13:00 2026-11-25T15:00"],
    // Today it is over: tomorrow is meant.
    ["Ilse 8:00-12:00", "3 2026-11-26T07:00 2026-11-26T11:00"],
    ["Ilse 22:00-06:00", "3 2026-11-25T21:00 2026-11-26T05:00"],
    ["piet as 27.11. 17:00 - 30.11. 07:00", "4 2026-11-27T16:00 2026-11-30T06:00"],
    ["Ilse 27.11. 20:00-04:00", "3 2026-11-27T19:00 2026-11-28T03:00"],
    // Over the turn of the year.
    ["Ilse 31.12. 20:00 - 1.1. 08:00", "3 2026-12-31T19:00 2027-01-01T07:00"],
  ])("reads %s", (text, shift) => {
    expect(read(text)).toBe(shift);
  });

  it("goes by the clock of the place, also where it is put back in between", () => {
    // Sunday 25 October 2026, 03:00 summer time becomes 02:00.
    const before = Date.parse("2026-10-24T10:00:00Z");
    expect(read("Ilse 20:00-08:00", before)).toBe("3 2026-10-24T18:00 2026-10-25T07:00");
  });

  it.each([
    "Ilse",
    "17:00-22:00",
    "Nobody 17:00-22:00",
    "Piet 17:00-22:00",
    "Ilse 25:00-26:00",
    "Ilse 17:60-22:00",
    "Ilse 31.2. 08:00 - 31.2. 09:00",
    "Ilse 30.11. 08:00 - 27.11. 09:00",
    "Ilse 27.11. 08:00 - 27.3. 09:00",
    "Ilse 25.11. 08:00 - 25.11. 09:00",
  ])("takes no shift from %s", (text) => {
    expect(read(text)).toBeNull();
  });
});
