import { describe, expect, it } from "vitest";
import { type CaseFigures, comebacksIn } from "../../src/cases/case-figures.ts";
import { closingsIn, createLearning } from "../../src/cases/learning.ts";
import { workshop } from "../helpers/dialog.ts";

const DAY = 24 * 60 * 60 * 1000;
const { knowledge } = workshop;
const fault = "solenoid-contacts-burnt";

const closedCase = (id: string, more: Partial<CaseFigures> = {}): CaseFigures => ({
  ...{ id, operator: id, kind: "garden-tractor", profile: null, openedAt: 0, triedInVain: 0 },
  ...{ minutes: 30, reports: [], toldOfComeback: false, foreseen: null, cutShort: [] },
  closed: { end: "visit", at: DAY, complaint: "one-click", cause: fault, correction: "" },
  confirmed: { faults: [fault], how: "measured" },
  ...more,
});

describe("what closed cases teach", () => {
  it("makes a cause that was found likelier, and forgets it with the case", () => {
    let all: readonly CaseFigures[] = [];
    let revision = 0;
    const learning = createLearning({
      ...{ knowledge, comebackDays: 30 },
      figures: () => all,
      revision: () => revision,
    });
    const before = learning("garden-tractor");
    all = [closedCase("A"), closedCase("B")];
    revision += 1;
    const after = learning("garden-tractor");
    expect(after.options.times?.get(fault)).toBeGreaterThan(1);
    expect(after.key).not.toBe(before.key);
    all = [];
    revision += 1;
    expect(learning("garden-tractor")).toEqual(before);
  });

  it("teaches nothing about other kinds of machine", () => {
    const learning = createLearning({
      ...{ knowledge, comebackDays: 30, figures: () => [closedCase("A")], revision: () => 1 },
    });
    expect(learning("combine").options.times?.get(fault) ?? 1).toBe(1);
  });

  it("leaves out cases without a cause, and open ones", () => {
    const open = closedCase("A", { closed: null });
    const unknown = closedCase("B", { confirmed: null });
    expect(closingsIn([open, unknown], 30)).toEqual([]);
  });
});

describe("comebacks", () => {
  const again = (id: string, days: number) =>
    closedCase(id, { operator: "op", openedAt: days * DAY });
  const first = closedCase("A", { operator: "op" });

  it("are the same person's machine with the same complaint within the window", () => {
    expect([...comebacksIn([first, again("B", 20)], 30)]).toEqual(["A"]);
    expect([...comebacksIn([first, again("B", 40)], 30)]).toEqual([]);
  });

  it("do not hang on the order in which the cases are read", () => {
    expect([...comebacksIn([again("B", 20), first], 30)]).toEqual(["A"]);
  });

  it("are taken at the operator's word", () => {
    expect([...comebacksIn([closedCase("A", { toldOfComeback: true })], 30)]).toEqual(["A"]);
  });

  it("take what was learned back", () => {
    const [closing] = closingsIn([first, again("B", 20)], 30);
    expect(closing?.cameBack).toBe(true);
  });
});
