import { describe, expect, it } from "vitest";
import { Dialog } from "../helpers/dialog.ts";
import { GOOD_RESULTS, handBackFine } from "../helpers/hand-back.ts";

const STARTER = "petrol garden tractor, one click, lights stay bright";

/** One ranking, plan and kit for all: what is tried here is how a visit ends, not how it is planned. */
const first = new Dialog().say(STARTER);
const standing = first.desk.triage(first.state, "technician");

/** A visit at which the technician names the cause with this id and puts it right. */
function repaired(opening: string, cause: string): Dialog {
  const dialog = new Dialog("en", { triage: () => standing })
    .say(opening)
    .press("All is safe")
    .press("More …")
    .press("Talk to a person");
  dialog.press("Hand to a technician", "2").press("Ilse", "2").press("Start at the machine", "3");
  dialog.press("I found the cause", "3");
  const revision = dialog.state.open.technician?.revision ?? 0;
  const press = { case: "4F7K", revision, act: "cause", value: cause };
  dialog.send({ kind: "press", press }, "3");
  while (dialog.state.open.technician?.asking.about === "remedy")
    dialog.press("Done – it runs", "3");
  return dialog;
}

const starting = () => repaired(STARTER, "solenoid-contacts-burnt");
const YES = "Yes, all of it";

describe("giving a machine back", () => {
  it("closes work on the starting circuit only after the hand-back check", () => {
    const dialog = starting().press(YES, "3");
    expect(dialog.state.closed).toBeNull();
    expect(dialog.state.open.technician?.asking.about).toBe("hand-back");
    handBackFine(dialog);
    expect(dialog.state.closed?.end).toBe("visit");
  });

  it("does not ask it where nothing of the starting circuit was touched", () => {
    const dialog = repaired("petrol ride-on mower, turns over but does not fire", "tank-empty");
    dialog.press(YES, "3");
    expect(dialog.state.closed?.cause).toBe("tank-empty");
  });

  it("stays open while the machine starts when it must not", () => {
    const dialog = starting().press(YES, "3");
    while (!dialog.labels("3").includes("It cranks")) {
      dialog.press(dialog.labels("3").find((one) => GOOD_RESULTS.includes(one)) ?? "", "3");
    }
    dialog.press("It cranks", "3");
    expect(dialog.state.closed).toBeNull();
    expect(dialog.last("3")).toContain("must not go back like this");
    expect(dialog.state.open.technician?.asking.about).toBe("hand-back");
  });

  it("takes 'could not test' only with a reason, and tells the operator", () => {
    const dialog = starting().press(YES, "3").press("Could not test it", "3");
    expect(dialog.state.closed).toBeNull();
    dialog.say("PTO shaft is off for repair", "3");
    handBackFine(dialog);
    expect(dialog.last("1")).toContain("PTO shaft is off for repair");
    expect(dialog.state.handBack[0]).toMatchObject({ outcome: "could-not" });
  });

  it("asks it after a cause in words of one's own, which may mean anything", () => {
    const dialog = starting().press("I found the cause", "3").press("Something else", "3");
    dialog.say("a nut fallen into the starter", "3").press(YES, "3");
    expect(dialog.state.open.technician?.asking.about).toBe("hand-back");
  });
});

describe("a visit that cannot finish", () => {
  it("keeps the case open for a second visit and says what to bring", () => {
    const dialog = starting().press("Something is missing: second visit", "3");
    dialog.say("the right solenoid", "3");
    expect(dialog.state.closed).toBeNull();
    expect(dialog.state.visit).toBe("assigned");
    expect(dialog.state.cutShort).toEqual(["the right solenoid"]);
    expect(dialog.last("1")).toContain("the right solenoid");
    expect(dialog.shown.find((one) => one.slot === "slip-2")?.rendered.text).toContain(
      "the right solenoid",
    );
  });
});

describe("the record of a closed case", () => {
  const closed = () => {
    const dialog = starting().press(YES, "3");
    handBackFine(dialog);
    return dialog;
  };

  it("says how long it took by the clock, and takes the technician's own figure", () => {
    const dialog = closed();
    const record = () =>
      dialog.shown.find((one) => one.slot === "record-4F7K")?.rendered.text ?? "";
    expect(record()).toMatch(/On the machine: \d+/);
    const label = dialog.labels("3").find((one) => one.startsWith("45"));
    dialog.press(label ?? "", "3");
    expect(record()).toContain("45");
    expect(dialog.state.work.minutes).toBe(45);
  });

  it("notes parts used, and which loaded ones came back", () => {
    const dialog = closed();
    const part = dialog
      .open("3")
      ?.buttons.flat()
      .find(({ press }) => press.value?.startsWith("used:"));
    if (part === undefined) throw new Error("no part is offered");
    dialog.press(part.label, "3");
    const id = part.press.value?.slice("used:".length) ?? "";
    expect(dialog.state.work.used).toEqual([id]);
    expect(dialog.state.work.back).not.toContain(id);
  });

  it("takes a second cause, neither being known to have been it alone", () => {
    const dialog = closed().press("There was another cause too", "3");
    const other = dialog.labels("3").find((label) => !label.startsWith("✓") && label !== "Done");
    dialog.press(other ?? "", "3").press("Done", "3");
    expect(dialog.state.confirmed?.faults).toHaveLength(2);
    expect(dialog.state.confirmed?.how).not.toBe("ran-after-this");
  });

  it("takes how the cause is known", () => {
    const dialog = closed().press("a guess", "3");
    expect(dialog.state.confirmed?.how).toBe("guess");
  });
});
