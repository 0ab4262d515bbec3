import { describe, expect, it } from "vitest";
import type { Desk } from "../../src/talk/desk.ts";
import { helpsFor } from "../../src/talk/self-help.ts";
import { Dialog, workshop } from "../helpers/dialog.ts";

/** One ranking for each opening: what is tried is what is offered, not how it is weighed. */
const weighed = (opening: string): Partial<Desk> => {
  const first = new Dialog().say(opening);
  const standing = first.desk.triage(first.state, "technician");
  return { triage: () => standing };
};
const SILENT = "petrol garden tractor, nothing at all when I turn the key, lights bright";
const SLOW = "petrol garden tractor, turns over very slowly, lights dim";
const known = new Map([SILENT, SLOW].map((opening) => [opening, weighed(opening)]));

const call = (opening = SILENT, desk = known.get(opening)) =>
  new Dialog("en", desk)
    .say(opening)
    .press("All is safe")
    .press("More …")
    .press("Talk to a person");
const offered = (dialog: Dialog) =>
  dialog.press("More acts …", "2").press("Give the operator something to try", "2");
const give = (dialog: Dialog, value: string) =>
  dialog.send({ kind: "press", press: { case: "4F7K", revision: 0, act: "help", value } }, "2");

describe("self-help from the counter", () => {
  it("offers only what an operator may do and what may cure or hide this trouble", () => {
    const dialog = call();
    const helps = helpsFor(dialog.state, dialog.desk);
    expect(helps[0]?.act.id).toBe("move-controls");
    for (const { act, cures, masks } of helps) {
      expect(act.performers).toContain("operator");
      expect(cures + masks).toBeGreaterThan(0);
      expect(cures + masks).toBeLessThanOrEqual(1);
    }
    offered(dialog);
    expect(dialog.labels("2")[0]).toMatch(/^Cures \d+%/);
  });

  it("puts it to the operator like an act of the interview, and what came of it is evidence", () => {
    const dialog = call();
    const before = dialog.state.revision;
    offered(dialog).press(dialog.labels("2")[0] ?? "", "2");
    expect(dialog.last("1")).toContain("Jonas of the shop suggests");
    expect(dialog.state.open.operator?.asking).toMatchObject({ act: "move-controls" });
    expect(dialog.state.revision).toBeGreaterThan(before);
    dialog.press("Done");
    dialog.press("No change");
    expect(dialog.state.acts.at(-1)).toMatchObject({ act: "move-controls", outcome: "no-change" });
    const ids = helpsFor(dialog.state, dialog.desk).map(({ act }) => act.id);
    expect(ids).not.toContain("move-controls");
  });

  it("ends the case where it cured, also after the interview was over", () => {
    const dialog = call(SILENT, {}).happened(
      { type: "interview.ended", because: "nothing-left" },
      { type: "shop.told" },
    );
    give(dialog, "move-controls").press("Done");
    const runs = dialog.labels().find((label) => /start|run/i.test(label)) ?? "";
    dialog.press(runs);
    expect(dialog.state.closed?.end).toBe("solved-by-chat");
  });

  it("does not offer what needs things the operator does not have", () => {
    const dialog = call(SLOW);
    const needing = () =>
      helpsFor(dialog.state, dialog.desk).filter(({ act }) => act.operatorHas.length > 0);
    expect(needing().length).toBeGreaterThan(0);
    dialog.happened({ type: "equipment.told", has: [] });
    expect(needing()).toEqual([]);
  });

  it("gives nothing while a danger stands, and nothing that is not on offer", () => {
    const dialog = call();
    dialog.happened({ type: "flag.raised", flag: "fuel-leak" });
    const open = dialog.state.open.operator;
    give(dialog, "move-controls");
    expect(dialog.last("2")).toContain("danger");
    expect(dialog.state.open.operator).toEqual(open);
    const strange = give(call(), "no-such-act");
    expect(strange.toast).toBe("That was tried already");
    expect(strange.state.open.operator?.asking.about).not.toBe("act");
  });

  it("is read aloud by phone, with its cautions", () => {
    const dialog = call();
    dialog.happened({
      ...{ type: "operator.joined", operator: "", name: "", chat: "", language: "en" },
    } as const);
    give(dialog, "move-controls");
    expect(dialog.last("2")).toContain("Read aloud");
    const hazards = workshop.knowledge.acts.get("move-controls")?.hazards ?? [];
    expect(hazards.length).toBeGreaterThan(0);
    expect(dialog.last("2").length).toBeGreaterThan(120);
  });
});
