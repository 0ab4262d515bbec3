import { describe, expect, it } from "vitest";
import type { CaseFigures } from "../../src/cases/case-figures.ts";
import { reportOf } from "../../src/cases/report.ts";
import { caseTable } from "../../src/cases/tables.ts";

const DAY = 24 * 60 * 60 * 1000;

const closedCase = (id: string, more: Partial<CaseFigures> = {}): CaseFigures => ({
  ...{ id, operator: id, kind: "garden-tractor", profile: null, openedAt: 0, triedInVain: 0 },
  ...{ minutes: 30, reports: [], toldOfComeback: false, cutShort: [] },
  foreseen: {
    causes: [
      { fault: "worn", probability: 0.6 },
      { fault: "flat", probability: 0.3 },
    ],
    medianMinutes: 40,
    p90Minutes: 90,
  },
  closed: { end: "visit", at: DAY, complaint: "one-click", cause: "worn", correction: "" },
  confirmed: { faults: ["worn"], how: "measured" },
  ...more,
});
const chat = (id: string) =>
  closedCase(id, {
    closed: { end: "solved-by-chat", at: DAY, complaint: "nothing", cause: "", correction: "" },
    foreseen: null,
  });

describe("the shop's report", () => {
  it("counts first visits that fixed it: no second trip, no comeback", () => {
    const report = reportOf(
      [
        closedCase("A"),
        closedCase("B", { cutShort: ["relay"] }),
        closedCase("C", { toldOfComeback: true }),
        closedCase("D", { minutes: 100 }),
      ],
      30,
    );
    expect(report.firstVisitFix).toMatchObject({ value: 0.5, of: 4 });
    expect(report.secondTrips).toBe(1);
    expect(report.missing).toEqual([{ what: "relay", count: 1 }]);
    expect(report.minutes).toMatchObject({ visits: 4, foreseen: 40, taken: 30 });
    expect(report.minutes.withinP90.value).toBe(0.75);
  });

  it("takes the share solved by chat of what was closed in earnest", () => {
    const off = closedCase("C", {
      closed: { end: "called-off", at: DAY, complaint: "", cause: "", correction: "" },
    });
    expect(reportOf([closedCase("A"), chat("B"), off], 30).solvedByChat).toMatchObject({
      value: 0.5,
      of: 2,
    });
  });

  it("holds the percentages against what was found, guesses left out", () => {
    const wrong = closedCase("B", { confirmed: { faults: ["flat"], how: "measured" } });
    const guess = closedCase("C", { confirmed: { faults: ["flat"], how: "guess" } });
    const { calibration } = reportOf([closedCase("A"), wrong, guess], 30);
    expect(calibration.claims).toBe(2);
    // Two claims of 0.6, one held: ((0.6 - 1)² + 0.6²) / 2.
    expect(calibration.brier).toBeCloseTo(0.26, 12);
    // −(ln 0.6 + ln 0.3) / 2.
    expect(calibration.logLoss).toBeCloseTo(-(Math.log(0.6) + Math.log(0.3)) / 2, 12);
  });

  it("says nothing of what there is none of", () => {
    const report = reportOf([], 30);
    expect(report.firstVisitFix).toEqual({ value: 0, low: 0, high: 1, of: 0 });
    expect(report.minutes.taken).toBeNull();
    expect(report.calibration.brier).toBeNull();
  });

  it("does not hang on the order of the cases", () => {
    const all = [closedCase("A"), closedCase("B", { cutShort: ["relay"] }), chat("C")];
    expect(reportOf([...all].reverse(), 30)).toEqual(reportOf(all, 30));
  });
});

describe("the table of cases", () => {
  it("has a row for each and as many cells in each as the head", () => {
    const rows = caseTable([closedCase("A"), chat("B")], 30);
    expect(rows).toHaveLength(3);
    expect(new Set(rows.map((row) => row.length)).size).toBe(1);
  });
});
