import { describe, expect, it } from "vitest";
import { type CaseFigures, comebacksIn } from "../../src/cases/case-figures.ts";

const DAY = 24 * 60 * 60 * 1000;

/** A case of Bo's compact tractor, opened on that day and closed on the next. */
const onDay = (id: string, day: number, more: Partial<CaseFigures> = {}): CaseFigures => ({
  ...{ id, operator: "bo", kind: "compact-tractor", profile: null, openedAt: day * DAY },
  ...{ minutes: 30, reports: [], toldOfComeback: false, cutShort: [], triedInVain: 0 },
  ...{ foreseen: null, confirmed: null },
  closed: { end: "visit", at: (day + 1) * DAY, complaint: "one-click", cause: "", correction: "" },
  ...more,
});
const back = (...cases: readonly CaseFigures[]) => [...comebacksIn(cases, 30)];

describe("comebacks", () => {
  it("are the same kind of machine again, counted at the case that did not hold", () => {
    expect(back(onDay("A", 0), onDay("B", 5))).toEqual(["A"]);
  });

  it("are found where the operator chose the machine that the first case was kept under", () => {
    expect(back(onDay("A", 0), onDay("B", 5, { profile: "A" }))).toEqual(["A"]);
    const [second, third] = [onDay("B", 5, { profile: "A" }), onDay("C", 9, { profile: "A" })];
    expect(back(onDay("A", 0), second, third)).toEqual(["A", "B"]);
  });

  it("are not another machine, another complaint, another person, or after the window", () => {
    expect(back(onDay("A", 0), onDay("B", 5, { profile: "X" }))).toEqual([]);
    expect(back(onDay("A", 0), onDay("B", 5, { kind: "atv" }))).toEqual([]);
    expect(back(onDay("A", 0), onDay("B", 5, { operator: "cem" }))).toEqual([]);
    const slow = {
      end: "visit",
      at: 6 * DAY,
      complaint: "slow",
      cause: "",
      correction: "",
    } as const;
    expect(back(onDay("A", 0), onDay("B", 5, { closed: slow }))).toEqual([]);
    expect(back(onDay("A", 0), onDay("B", 31))).toEqual(["A"]);
    expect(back(onDay("A", 0), onDay("B", 31.01))).toEqual([]);
  });

  it("are not callers by phone, of whom nobody knows whether they are the same", () => {
    expect(back(onDay("A", 0, { operator: "" }), onDay("B", 5, { operator: "" }))).toEqual([]);
  });

  it("count where the operator said that it came back", () => {
    expect(back(onDay("A", 0, { toldOfComeback: true }))).toEqual(["A"]);
  });
});
