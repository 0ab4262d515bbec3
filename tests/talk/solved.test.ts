import { describe, expect, it } from "vitest";
import type { Ranking } from "../../src/domain/triage.ts";
import { complaintOf, curingAct, judgeCure } from "../../src/talk/solved.ts";
import { Dialog, workshop } from "../helpers/dialog.ts";

const title = (fault: string) => workshop.knowledge.faults.get(fault)?.title ?? "";
const ranking = (chances: Readonly<Record<string, number>>): Ranking => ({
  causes: Object.entries(chances)
    .sort(([, a], [, b]) => b - a)
    .map(([fault, probability]) => ({ fault, group: "other", probability, reasons: [] })),
  somethingElse: 0,
  nothingWrong: 0,
  doesNotFit: [],
  unexplained: [],
  alike: null,
  wouldChangeMind: null,
});
const act = (cures: Record<string, number>, masks: Record<string, number>) => ({
  cures: new Map(Object.entries(cures)),
  masks: new Map(Object.entries(masks)),
});

describe("whether what was done has cured the machine or only hidden the trouble", () => {
  it("weighs each cause by how often the act cures it and how often it hides it", () => {
    // 0.6·0.9/1 cured against 0.4·1 hidden: gone, and the leader among the cured is named.
    const moved = act({ pto: 0.9 }, { pto: 0.1, seat: 0.3 });
    expect(judgeCure(moved, ranking({ pto: 0.6, seat: 0.4 }))).toEqual({
      isGone: true,
      fault: "pto",
    });
    expect(judgeCure(moved, ranking({ pto: 0.4, seat: 0.6 }))).toEqual({
      isGone: false,
      fault: "seat",
    });
  });

  it("passes over a leader that the act does not touch", () =>
    expect(judgeCure(act({ tap: 0.8 }, {}), ranking({ battery: 0.9, tap: 0.1 }))).toEqual({
      isGone: true,
      fault: "tap",
    }));

  it("does not call it cured where nothing explains that it runs", () =>
    expect(judgeCure(act({}, {}), ranking({ battery: 1 }))).toEqual({
      isGone: false,
      fault: null,
    }));

  it("never takes a jump start for a cure", () => {
    const jump = workshop.knowledge.acts.get("jump-start");
    if (jump === undefined) throw new Error("no jump start");
    for (const fault of workshop.knowledge.faults.keys()) {
      expect(judgeCure(jump, ranking({ [fault]: 1 })).isGone, fault).toBe(false);
    }
  });

  it("knows the act only by its having cured", () => {
    const done = { type: "act.done", act: "open-tap", performer: "operator" } as const;
    expect(curingAct([{ ...done, outcome: "no-change" }])).toBeNull();
    expect(curingAct([{ ...done, outcome: "cured" }])).toBe("open-tap");
  });
});

/** A garden tractor whose operator is asked to move the controls. */
function offered(told: boolean): Dialog {
  const dialog = new Dialog()
    .say("petrol garden tractor, nothing at all when i turn the key")
    .press("All is safe");
  if (told) dialog.say("talk to a person");
  for (let n = 0; n < 12 && dialog.state.open.operator?.asking.about !== "act"; n += 1) {
    const labels = dialog.labels();
    const wanted = ["Yes, beside it", "Nothing more", "I don't know", "None of these", "Go on"];
    dialog.press(wanted.find((label) => labels.includes(label)) ?? "");
  }
  return dialog.press("Done").press("Then it started");
}

describe("a machine that runs after the operator moved its controls", () => {
  it("closes the case with complaint, cause and correction, and says kindly what it was", () => {
    const dialog = offered(false);
    const { closed, confirmed } = dialog.state;
    expect(closed).toMatchObject({
      end: "solved-by-chat",
      complaint: "nothing",
      correction: "move-controls",
    });
    expect(confirmed).toEqual({ faults: [closed?.cause], how: "ran-after-this" });
    expect(dialog.last()).toContain(title(closed?.cause ?? "?"));
    expect(dialog.last()).toContain(dialog.state.id);
  });

  it("does not trouble a counter that never heard of the case", () => {
    expect(offered(false).shown.some((one) => one.to === "2")).toBe(false);
    expect(offered(true).shown.findLast((one) => one.slot === "slip-2")?.rendered.text).toContain(
      "Closed",
    );
  });

  it("can be opened again when it happens again", () => {
    const dialog = offered(false).press("Open it again");
    expect(dialog.state.closed).toBeNull();
    expect(complaintOf(dialog.state)).toBe("nothing");
  });
});

describe("a machine that runs after a jump start", () => {
  const jumped = () => {
    const dialog = new Dialog()
      .say("petrol garden tractor turns slowly, lights are dim")
      .press("All is safe");
    const asking = { about: "act", act: "jump-start", stage: "result" } as const;
    return dialog.asked(asking).press("It started and ran");
  };

  it("is not closed: the operator hears what may be behind it, and the shop has the case", () => {
    const dialog = jumped();
    expect(dialog.state.closed).toBeNull();
    expect(dialog.state.interview).toBe("ended");
    expect(dialog.state.shopTold).toBe(true);
    const told = dialog.shown.filter((one) => one.to === "1").map((one) => one.rendered.text);
    expect(told.join()).toContain("only hide the trouble");
    expect(told.join()).toContain("may not start a second time");
    expect(dialog.shown.some((one) => one.slot === "slip-2")).toBe(true);
  });
});
