import { describe, expect, it } from "vitest";
import { markable } from "../../src/talk/photo-mark.ts";
import { Dialog, workshop } from "../helpers/dialog.ts";
import { told } from "../helpers/told.ts";

const PHOTO = { kind: "file", file: { id: "p1", kind: "photo" } } as const;

/** A call with a photo of the battery, with the shop. */
const call = () =>
  new Dialog()
    .say("petrol garden tractor, one click, lights dim")
    .press("All is safe")
    .send(PHOTO)
    .press("More …")
    .press("Talk to a person");
const look = (dialog: Dialog) =>
  dialog.press("Photos and files", "2").press("Say what it shows", "2");
const corroded = (dialog: Dialog) =>
  dialog.send(
    {
      kind: "press",
      press: { case: "4F7K", revision: 0, act: "mark", value: "0:joint-look:corroded" },
    },
    "2",
  );
const chance = (dialog: Dialog, group: string) =>
  dialog.desk
    .triage(dialog.state, "technician")
    .ranking.causes.filter((cause) => cause.group === group)
    .reduce((sum, cause) => sum + cause.probability, 0);

describe("marking what a photo shows", () => {
  it("offers what can be seen on a photo of this machine, what bears on its causes first", () => {
    const dialog = call();
    const ids = markable(dialog.state, dialog.desk).map(({ id }) => id);
    expect(ids.slice(0, 7)).toContain("joint-look");
    const shown = new Set(
      [...workshop.knowledge.checks.values()].filter((one) => one.photo).map((one) => one.yields),
    );
    for (const id of ids) expect(shown.has(id), id).toBe(true);
    // A petrol tractor has no glow plug to look at.
    expect(ids).not.toContain("preheat-lamp");
    look(dialog);
    expect(dialog.labels("2")).toHaveLength(9);
  });

  it("is evidence with the reliability of a photo, and moves the causes", () => {
    const dialog = call();
    const before = chance(dialog, "terminals");
    corroded(dialog);
    const report = dialog.state.answers.at(-1)?.report;
    expect(report).toMatchObject({ observation: "joint-look", reporter: "photo", epoch: 0 });
    expect(chance(dialog, "terminals")).toBeGreaterThan(before);
    expect(dialog.state.files[0]?.marks).toEqual([
      { observation: "joint-look", state: "corroded" },
    ]);
    // From the slip on everybody sees it as a reason.
    const slip = dialog.shown.find((one) => one.slot === "slip-2")?.rendered.text ?? "";
    expect(slip.toLowerCase()).toContain("corroded");
  });

  it("stands beside what the operator says of the same thing, and does not replace it", () => {
    const dialog = call();
    const said = { type: "answer.given", report: told("joint-look", "clean") } as const;
    dialog.happened(said);
    corroded(dialog);
    const both = dialog.state.answers.filter((one) => one.report.observation === "joint-look");
    expect(both.map((one) => one.report.reporter)).toEqual(["operator", "photo"]);
  });

  it("can be taken back, and the causes stand as before", () => {
    const dialog = call();
    const before = dialog.desk.triage(dialog.state, "technician").ranking.causes;
    corroded(dialog).press("Take that back", "2");
    expect(dialog.state.files[0]?.marks).toEqual([]);
    expect(dialog.desk.triage(dialog.state, "technician").ranking.causes).toEqual(before);
    dialog.press("Take that back", "2");
    expect(dialog.toast).not.toBeNull();
  });

  it("says how the thing looked when the photo came, not after what was done since", () => {
    const dialog = call();
    dialog.happened({
      ...{
        type: "act.done",
        act: "clean-and-tighten-clamps",
        performer: "operator",
        outcome: "no-change",
      },
    } as const);
    corroded(dialog);
    expect(dialog.state.epoch).toBe(1);
    expect(dialog.state.answers.at(-1)?.report.epoch).toBe(0);
  });

  it("of a danger stops the operator at once, and counts as seen by whoever marked it", () => {
    const dialog = look(call()).press("A danger", "2");
    const flag = dialog.labels("2")[0] ?? "";
    dialog.press(flag, "2");
    expect(dialog.state.safety).toBe("not-clear");
    expect(dialog.state.flags.at(-1)?.seenBy).toBe("2");
    expect(dialog.last("1")).toMatch(/Stop|Ring/);
  });

  it("is refused for a file that is no picture, or is not there", () => {
    const dialog = call();
    const before = dialog.state;
    for (const value of ["7:joint-look:corroded", "0:joint-look:purple", "0:nothing:corroded"]) {
      dialog.send({ kind: "press", press: { case: "4F7K", revision: 0, act: "mark", value } }, "2");
    }
    expect(dialog.state.answers).toEqual(before.answers);
  });
});
