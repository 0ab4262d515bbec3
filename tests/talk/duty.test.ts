import { describe, expect, it } from "vitest";
import { dutyMessage, onDuty, shiftOf, withoutDuty, withShift } from "../../src/talk/duty.ts";
import { Dialog, members } from "../helpers/dialog.ts";

const shop = { timeZone: "Europe/Berlin", quietHours: { from: "21:00", to: "07:00" } };
const at = (iso: string) => Date.parse(iso);
const iso = ({ from, until }: { from: number; until: number }) => [
  new Date(from).toISOString(),
  new Date(until).toISOString(),
];
/** A Wednesday, 15:00 at the shop. */
const WEDNESDAY = at("2026-11-25T14:00:00Z");

describe("a shift", () => {
  it("for the night lasts until the quiet hours are over", () => {
    expect(iso(shiftOf("night", WEDNESDAY, shop))[1]).toBe("2026-11-26T06:00:00.000Z");
    const late = at("2026-11-26T02:00:00Z");
    expect(iso(shiftOf("night", late, shop))[1]).toBe("2026-11-26T06:00:00.000Z");
  });

  it("for the weekend begins on Friday afternoon, or now where it is weekend", () => {
    expect(iso(shiftOf("weekend", WEDNESDAY, shop))).toEqual([
      "2026-11-27T16:00:00.000Z",
      "2026-11-30T06:00:00.000Z",
    ]);
    for (const day of ["2026-11-27T18:00:00Z", "2026-11-28T10:00:00Z", "2026-11-29T22:30:00Z"]) {
      expect(iso(shiftOf("weekend", at(day), shop))).toEqual([
        new Date(at(day)).toISOString(),
        "2026-11-30T06:00:00.000Z",
      ]);
    }
    // Monday before the quiet hours end is still the weekend; after that the next one is meant.
    expect(iso(shiftOf("weekend", at("2026-11-30T04:00:00Z"), shop))[1]).toBe(
      "2026-11-30T06:00:00.000Z",
    );
    expect(iso(shiftOf("weekend", at("2026-11-30T09:00:00Z"), shop))[0]).toBe(
      "2026-12-04T16:00:00.000Z",
    );
  });

  it("for a week ends on a morning, also where the clocks change in between", () => {
    expect(iso(shiftOf("week", at("2026-10-21T12:00:00Z"), shop))[1]).toBe(
      "2026-10-28T06:00:00.000Z",
    );
  });
});

describe("the roster", () => {
  const shift = (person: string, from: number, until: number) => ({ person, from, until });

  it("says who has the call-outs at a moment; of two the later entry counts", () => {
    const duty = [shift("2", 0, 100), shift("3", 50, 80)];
    const who = (moment: number) => onDuty({ duty, members }, moment)?.person ?? null;
    expect([10, 50, 79, 80, 99, 100].map(who)).toEqual(["2", "3", "3", "2", "2", null]);
  });

  it("passes over somebody who is not in the shop any more", () => {
    const duty = [shift("2", 0, 100), shift("gone", 0, 100)];
    expect(onDuty({ duty, members }, 10)?.person).toBe("2");
    expect(onDuty({ duty: [shift("gone", 0, 100)], members }, 10)).toBeNull();
  });

  it("drops what is long over, and ends for everybody from now on", () => {
    const day = 24 * 60 * 60 * 1000;
    const duty = withShift([shift("2", 0, 10)], shift("3", 0, 9 * day), 2 * day);
    expect(duty).toHaveLength(1);
    const ended = withoutDuty([...duty, shift("2", 4 * day, 5 * day)], 3 * day);
    expect(ended).toEqual([shift("3", 0, 3 * day)]);
  });

  it("offers people to those who may set it, and only shows it to technicians", () => {
    const { desk } = new Dialog();
    const [dispatcher, technician] = members;
    if (dispatcher === undefined || technician === undefined) throw new Error("no members");
    expect(dutyMessage(desk, dispatcher).buttons).toHaveLength(members.length);
    expect(dutyMessage(desk, technician).buttons).toBeUndefined();
  });
});
