import { describe, expect, it } from "vitest";
import { Dialog, workshop } from "../helpers/dialog.ts";
import { handBackFine } from "../helpers/hand-back.ts";

/** A call that was taken by chat and handed to the technician. */
function handedOver(): Dialog {
  const dialog = new Dialog()
    .say("petrol garden tractor, one click, lights stay bright")
    .press("All is safe")
    .press("More …")
    .press("Talk to a person");
  return dialog.press("Hand to a technician", "2").press("Ilse", "2");
}

/** It ran and restarted, and stays silent where it must. */
function giveBack(dialog: Dialog): void {
  dialog.press("Yes, all of it", "3");
  handBackFine(dialog);
}

describe("the counter", () => {
  it("shows the slip with causes, plan and kit, and changes it in place", () => {
    const dialog = handedOver();
    const slips = dialog.shown.filter((one) => one.slot === "slip-2");
    expect(slips).toHaveLength(1);
    const text = slips[0]?.rendered.text ?? "";
    expect(text).toContain("Likely causes");
    expect(text).toContain("Plan");
    expect(text).toContain("To load");
    expect(text).toContain("With Ilse");
  }, 30_000);

  it("says who has the case already instead of handing it over twice", () => {
    const dialog = handedOver();
    const before = dialog.shown.length;
    dialog.press("Ilse", "2");
    expect(dialog.toast).toContain("has it already");
    expect(dialog.shown).toHaveLength(before);
  });

  it("takes a case back and tells the technician", () => {
    const dialog = handedOver().press("Take back", "2");
    expect(dialog.state.technician).toBeNull();
    expect(dialog.last("3")).toContain("taken back");
  });

  it("lets nobody act who is not at the counter", () => {
    const dialog = handedOver();
    const press = dialog.pressOf("Take back", "2");
    dialog.send({ kind: "press", press }, "3");
    expect(dialog.state.technician?.id).toBe("3");
  });
});

describe("the technician's visit", () => {
  const begun = () => handedOver().press("Start at the machine", "3");

  it("gets the sheet with reasons, plan, kit and cautions before leaving", () => {
    const dialog = handedOver();
    const sheet = dialog.shown.find((one) => one.slot === "sheet-3")?.rendered.text ?? "";
    expect(sheet).toContain("Likely causes");
    expect(sheet).toContain("Caution:");
    expect(sheet).toContain("for it:");
  });

  it.each(["12.4", "12,4 V"])("takes %s, shows how the list moved, and the next step", (typed) => {
    const dialog = begun();
    const earlier = dialog.state.revision;
    let tries = 0;
    while (!dialog.last("3").includes("Type the reading") && tries < 6) {
      dialog.press("Could not do it, next", "3");
      tries += 1;
    }
    dialog.say(typed, "3");
    const reading = dialog.state.answers.findLast((one) => one.from === "technician");
    expect(reading?.report.said).toEqual({ kind: "value", value: 12.4 });
    expect(dialog.last("3")).toContain("→");
    expect(dialog.state.revision).toBeGreaterThan(earlier);
  });

  it("tells the operator once that they are on the way, and shows it at the counter", () => {
    const dialog = handedOver();
    const press = dialog.pressOf("I am on my way", "3");
    dialog.send({ kind: "press", press }, "3");
    expect(dialog.last("1")).toContain("Ilse of Hill Farm workshop is on the way");
    const slip = () => dialog.shown.find((one) => one.slot === "slip-2")?.rendered.text ?? "";
    expect(slip()).toContain("Ilse is on the way");
    const told = dialog.sentToOperator;
    dialog.send({ kind: "press", press }, "3");
    expect(dialog.sentToOperator).toBe(told);
    dialog.press("Start at the machine", "3");
    expect(slip()).toContain("Ilse is on the machine");
  });

  it("takes a reading back", () => {
    const dialog = begun();
    while (!dialog.last("3").includes("Type the reading"))
      dialog.press("Could not do it, next", "3");
    dialog.say("12.4 V", "3").press("Undo the last step", "3");
    expect(dialog.state.answers.some((one) => one.from === "technician")).toBe(false);
  });

  it("takes back a step that was left out, and offers it again", () => {
    const dialog = begun();
    const offered = dialog.state.open.technician?.asking;
    dialog.press("Could not do it, next", "3");
    expect(dialog.state.open.technician?.asking).not.toEqual(offered);
    dialog.press("Undo the last step", "3");
    expect(dialog.last("3")).toContain("I took that back");
    expect(dialog.state.open.technician?.asking).toEqual(offered);
    dialog.press("Undo the last step", "3");
    expect(dialog.toast).toContain("nothing before");
  });

  it("does not apply a result twice when its button is pressed again", () => {
    const dialog = begun().press("I found the cause", "3");
    const choice = dialog.pressOf(dialog.labels("3")[0] ?? "", "3");
    dialog.send({ kind: "press", press: choice }, "3");
    dialog.send({ kind: "press", press: choice }, "3");
    expect(dialog.toast).toContain("closed");
    expect(dialog.state.confirmed?.faults).toHaveLength(1);
  });

  it("closes with complaint, cause and correction once it ran and restarted, and tells everybody", () => {
    const dialog = begun().press("I found the cause", "3");
    dialog.press(dialog.labels("3")[0] ?? "", "3").press("Done – it runs", "3");
    expect(dialog.state.closed).toBeNull();
    giveBack(dialog);
    expect(dialog.state.closed?.complaint).toBe("one-click");
    const { cause = "", correction } = dialog.state.closed ?? {};
    expect(workshop.knowledge.faults.get(cause)?.remedies).toContain(correction);
    expect(dialog.last("1")).toContain("is closed");
    expect(dialog.shown.find((one) => one.slot === "slip-2")?.rendered.text).toContain("Closed");
  });

  it("stays open when it did not run", () => {
    const dialog = begun().press("I found the cause", "3");
    dialog.press(dialog.labels("3")[0] ?? "", "3");
    dialog.press("Done – it runs", "3").press("Not yet", "3");
    expect(dialog.state.closed).toBeNull();
    expect(dialog.shown.map((one) => one.rendered.text).join("\n")).toContain("stays open");
    // What was said to have made it run did not: the plan goes on from there.
    expect(dialog.state.remediesDone).toEqual([]);
    expect(dialog.state.open.technician?.asking.about).not.toBe("ran");
  });

  it("takes a cause in the technician's own words", () => {
    const dialog = begun().press("I found the cause", "3").press("Something else", "3");
    giveBack(dialog.say("mouse nest in the fan shroud", "3"));
    expect(dialog.state.closed?.cause).toBe("mouse nest in the fan shroud");
    expect(dialog.state.closed?.correction).not.toBe("");
  });
});
