import { describe, expect, it } from "vitest";
import { nextQuestion } from "../../src/talk/next-question.ts";
import { Dialog } from "../helpers/dialog.ts";

const about = (dialog: Dialog) => {
  const next = nextQuestion(dialog.state, dialog.desk);
  return next.kind === "ask" ? next.asking.about : next.kind;
};

describe("what comes next", () => {
  it("is safety first, then the kind, then the symptom", () => {
    const dialog = new Dialog();
    expect(about(dialog)).toBe("safety");
    dialog.say("hello").press("All is safe");
    expect(dialog.state.open.operator?.asking.about).toBe("kind");
  });

  it("asks of a pump what it does, then whether a key or a cord starts it", () => {
    const pump = () => new Dialog().say("petrol water pump").press("All is safe");
    const asked = (dialog: Dialog) => dialog.state.open.operator?.asking;
    expect(asked(pump())).toMatchObject({ check: "hear-try" });
    const turns = pump().press("It turns badly");
    const slow = turns.press(turns.labels()[0] ?? "");
    expect(asked(slow)).toMatchObject({ check: "how-started" });
    expect(asked(slow.press("With a pull cord"))).toMatchObject({
      about: "check",
      check: "where-are-you",
    });
  });

  it("asks of a cord where a cord was told of, and of the key where a key was", () => {
    const asked = (text: string) =>
      new Dialog().say(text).press("All is safe").state.open.operator?.asking;
    expect(asked("my petrol pump has a pull cord and won't start")).toMatchObject({
      check: "hear-pull",
    });
    expect(asked("my petrol ride-on mower won't start")).toMatchObject({ check: "hear-start" });
  });

  it("is the same for the same case, however often it is asked", () => {
    const dialog = new Dialog().say("petrol ride-on mower, one click").press("All is safe");
    expect(nextQuestion(dialog.state, dialog.desk)).toEqual(
      nextQuestion(dialog.state, dialog.desk),
    );
  });

  it("is what the shop needs once the engine has heard enough, each of it only once", () => {
    const dialog = new Dialog().say("petrol ride-on mower, one click").press("All is safe");
    const asked: string[] = [];
    for (let n = 0; n < 40 && dialog.state.open.operator !== null; n += 1) {
      asked.push(dialog.state.open.operator.asking.about);
      const labels = dialog.labels();
      const pass = labels.find((one) => /I don't know|Skip|I can't|None/.test(one)) ?? labels[0];
      dialog.press(pass ?? "");
    }
    const wanted = ["story", "urgency", "where"];
    for (const one of wanted) expect(asked.filter((about) => about === one)).toHaveLength(1);
    // Who leaves out place and number leaves out both.
    expect(asked).not.toContain("phone");
    expect(about(dialog)).toBe("done");
  });
});
