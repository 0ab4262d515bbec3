import { describe, expect, it } from "vitest";
import type { CaseHappening } from "../../src/domain/case-events.ts";
import { stamped } from "../../src/domain/case-events.ts";
import { foldCase } from "../../src/domain/fold-case.ts";
import { minutesOnSite } from "../../src/talk/minutes-on-site.ts";

const MINUTE = 60_000;
const started: CaseHappening = { type: "visit.started" };
const cutShort: CaseHappening = { type: "visit.cut-short", missing: "starter" };
const takenBack: CaseHappening = { type: "case.taken-back" };
const closed: CaseHappening = {
  type: "case.closed",
  ...{ end: "visit", complaint: "one-click", cause: "battery-flat", correction: "" },
};

/** Minutes after which each of these happened, and what. */
const minutesOf = (...course: readonly (readonly [number, CaseHappening])[]) =>
  minutesOnSite(
    foldCase(
      "A1",
      course.map(([minutes, what]) =>
        stamped(what, { at: minutes * MINUTE, by: "3", update: null }),
      ),
    ),
  );

describe("the minutes at the machine", () => {
  it("run from the start of the visit to its end", () => {
    expect(minutesOf([10, started], [55, closed])).toBe(45);
  });

  it("count every visit, and nothing between them", () => {
    expect(
      minutesOf([10, started], [30, cutShort], [300, started], [340, takenBack], [400, closed]),
    ).toBe(60);
  });

  it("are at least one, and unknown before the end or where nobody was there", () => {
    expect(minutesOf([10, started], [10, closed])).toBe(1);
    expect(minutesOf([10, started], [30, cutShort])).toBeNull();
    expect(minutesOf([10, closed])).toBeNull();
  });
});
