import { describe, expect, it } from "vitest";
import { Dialog } from "../helpers/dialog.ts";

const call = () => {
  const dialog = new Dialog().say("petrol ride-on mower, one click").press("All is safe");
  return dialog.say("I want to talk to a person").press("I look after it", "2");
};
const page = () => call().press("More acts …", "2").press("The machine: look, put right", "2");

// The first call makes the model of the machine ready, on a busy computer slowly.
describe("the machine of a case at the counter", { timeout: 30_000 }, () => {
  it("is shown, and put right by buttons", () => {
    const dialog = page();
    expect(dialog.last("2")).toContain("Runs on: Petrol");
    dialog.press("It runs on: Diesel", "2").press("It has 24\u{a0}V", "2");
    expect(dialog.state.machine).toMatchObject({
      kind: "ride-on-mower",
      fuel: "diesel",
      volts: 24,
    });
    expect(dialog.last("2")).toContain("Battery system: 24\u{a0}V");
  });

  it("can be another kind, through the same lists as for its operator", () => {
    const dialog = page().press("It is another kind of machine", "2");
    const [other] = dialog.labels("2").slice(-1);
    dialog
      .press(other ?? "", "2")
      .press("Harvest", "2")
      .press("Combine", "2");
    expect(dialog.state.machine.kind).toBe("combine");
  });

  it("gets the name and the number that the dispatcher writes next, and nothing after that", () => {
    const dialog = page().press("Write its serial number", "2").say("AB 12-34", "2");
    expect(dialog.state.machine.serial).toBe("AB 12-34");
    expect(dialog.state.prompt).toBeNull();
    dialog.press("Change its name", "2").say("Old Berta", "2");
    expect(dialog.state.machine.words).toBe("Old Berta");
    expect(dialog.last("2")).toMatch(/^Old Berta/);
    dialog.say("ring her back at noon", "2");
    expect(dialog.state.machine.words).toBe("Old Berta");
  });

  it("is nobody's business outside the shop", () => {
    const dialog = page();
    const press = { case: dialog.state.id, revision: 0, act: "machine", value: "fuel:diesel" };
    dialog.counter({ kind: "press", press }, "1");
    expect(dialog.state.machine.fuel).toBe("petrol");
    expect(dialog.toast).not.toBeNull();
  });

  it("stays as it is for what is no fuel, voltage or kind", () => {
    const dialog = page();
    for (const value of [
      "fuel:water",
      "volts:99",
      "kind:boat",
      "kind:>nowhere",
      "x:y",
      "toString",
    ]) {
      const before = dialog.state.machine;
      const press = { case: dialog.state.id, revision: 0, act: "machine", value };
      dialog.send({ kind: "press", press }, "2");
      expect(dialog.state.machine).toEqual(before);
    }
  });
});
