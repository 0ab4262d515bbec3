import { describe, expect, it } from "vitest";
import { Dialog } from "../helpers/dialog.ts";

const asking = ({ state }: Dialog) => state.open.operator?.asking;

describe("an opening of several meanings", () => {
  it("is asked about as soon as everybody is safe, with the meanings as buttons", () => {
    const dialog = new Dialog().say("old diesel tractor, just clicks");
    expect(asking(dialog)).toEqual({ about: "safety" });
    dialog.press("All is safe");
    expect(asking(dialog)?.about).toBe("meaning");
    expect(dialog.labels()).toEqual(expect.arrayContaining(["One click", "Fast clicking"]));
    dialog.press("Fast clicking");
    expect(dialog.state.answers.map(({ report }) => report.observation)).toContain("on-start");
    expect(asking(dialog)?.about).not.toBe("meaning");
  });

  it("is not asked about where later words settle it", () => {
    const dialog = new Dialog().say("old diesel tractor, just clicks").say("one loud click");
    dialog.press("All is safe");
    expect(asking(dialog)?.about).not.toBe("meaning");
  });

  it("is asked about once: who does not know gets the ordinary question", () => {
    const dialog = new Dialog().say("old diesel tractor, just clicks").press("All is safe");
    dialog.press("I don't know");
    expect(asking(dialog)).toMatchObject({ about: "check" });
    expect(dialog.state.answers.map(({ report }) => report.observation)).not.toContain("on-start");
  });
});

describe("an answer on offer that is a danger itself", () => {
  it("is the same written as pressed", () => {
    const asked = () => new Dialog().say("hello").press("All is safe").press("Ride-on mower");
    const pressed = asked().press("The starter will not stop").state;
    const written = asked().say("The starter will not stop").state;
    expect(written.answers.map(({ report }) => report)).toEqual(
      pressed.answers.map(({ report }) => report),
    );
    expect(written.flags.map(({ flag }) => flag)).toEqual(["will-not-stop"]);
  });
});
