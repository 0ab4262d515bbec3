import { describe, expect, it } from "vitest";
import { Dialog } from "../helpers/dialog.ts";

const underWay = () => new Dialog().say("petrol ride-on mower, one click").press("All is safe");

describe("the ways out, typed", () => {
  it.each(["Pause", "wait", "in a minute"])("pauses for %s", (text) => {
    expect(underWay().say(text).state.interview).toBe("paused");
  });

  it.each(["It runs again", "it started again by itself"])("ends for %s", (text) => {
    expect(underWay().say(text).state.closed?.end).toBe("nothing-found");
  });

  it("lists what can be changed", () => {
    const dialog = underWay().say("Change an earlier answer");
    expect(dialog.last()).toContain("Which answer");
  });

  it("takes what is said of a try for its outcome", () => {
    const dialog = underWay();
    dialog.asked({ about: "act", act: "move-controls", stage: "result" }).say("it runs now");
    expect(dialog.state.closed?.end).not.toBe("nothing-found");
  });
});
