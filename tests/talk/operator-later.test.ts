import { describe, expect, it } from "vitest";
import { ticked } from "../../src/talk/equipment.ts";
import { followUps } from "../../src/talk/follow-ups.ts";
import { laterTurn, photoTurn } from "../../src/talk/later.ts";
import { restLines, STARTER_REST } from "../../src/talk/rest.ts";
import { Dialog, settings, speech, workshop } from "../helpers/dialog.ts";

const underWay = () => new Dialog().say("petrol ride-on mower, one click").press("All is safe");
const where = (dialog: Dialog, answer: RegExp) => {
  for (let n = 0; n < 6; n += 1) {
    const label = dialog.labels().find((one) => answer.test(one));
    if (label !== undefined) return dialog.press(label);
    dialog.press(dialog.labels().find((one) => /know|Skip/.test(one)) ?? "");
  }
  throw new Error("where they are was never asked");
};

describe("a person who can walk to the machine once", () => {
  it("gets one list for the walk, not one walk a question", () => {
    const dialog = where(underWay(), /can go/);
    let lists = 0;
    for (let n = 0; n < 40 && dialog.state.open.operator !== null; n += 1) {
      if (dialog.state.open.operator.asking.about === "trip") lists += 1;
      const labels = dialog.labels();
      dialog.press(
        labels.find((one) => /know|Skip|looked|can't|None|all/i.test(one)) ?? labels[0] ?? "",
      );
    }
    expect(lists).toBeLessThanOrEqual(1);
    expect(dialog.state.interview).toBe("ended");
  });
});

describe("what is at hand", () => {
  it("is ticked and unticked", () => {
    expect(ticked(["meter"], "leads")).toEqual(["meter", "leads"]);
    expect(ticked(["meter", "leads"], "meter")).toEqual(["leads"]);
  });
});

describe("the starter's rest", () => {
  const tried =
    workshop.knowledge.checks.get("try-start") ??
    [...workshop.knowledge.checks.values()].find((one) => one.step === "try");
  const asking = { about: "check", check: tried?.id ?? "" } as const;

  it("is said until two minutes after the last try, and not before any", () => {
    const { state } = new Dialog();
    const at = 1_700_000_000_000;
    const acted = { ...state, actedAt: at };
    const lines = (now: number) =>
      restLines(asking, { state: acted, knowledge: workshop.knowledge, now });
    expect(lines(at + STARTER_REST - 1)).toHaveLength(1);
    expect(lines(at + STARTER_REST)).toEqual([]);
    expect(restLines(asking, { state, knowledge: workshop.knowledge, now: at })).toEqual([]);
  });
});

describe("what follows later", () => {
  it("is put on the clock by a turn, and says nothing to somebody who has answered meanwhile", () => {
    const dialog = underWay();
    const planned = followUps(new Dialog().state, dialog.state, dialog.desk);
    expect(planned.every((one) => one.effect.do === "tell")).toBe(true);
    const closed = underWay().say("stop");
    const silent = laterTurn(closed.state, { type: "look-in" }, closed.desk);
    expect(silent.effects).toEqual([]);
  });

  it("is a kind word on how to take a better photo, and none for a good one", () => {
    const dialog = underWay().send({ kind: "file", file: { id: "f1", kind: "photo" } });
    expect(photoTurn(dialog.state, "f1", "fine").effects).toEqual([]);
    const [hint] = photoTurn(dialog.state, "f1", "dark").effects;
    const text =
      hint?.effect.do === "tell" || hint === undefined
        ? ""
        : speech.wording.render(hint.effect.message, "en").text;
    expect(text).toContain("dark");
  });
});

describe("a machine that runs again by itself", () => {
  it("ends the case without a cause, and can be opened again", () => {
    const dialog = underWay().press("More …").press("It runs again");
    expect(dialog.state.closed).toMatchObject({ end: "nothing-found", cause: "" });
    dialog.press(dialog.labels()[0] ?? "");
    expect(dialog.state.closed).toBeNull();
  });
});

describe("talking to a person", () => {
  it("gives the shop's number, and by night the one on call where it is urgent", () => {
    const shop = { ...settings, onCallPhone: "555 0199", hours: {} };
    const dialog = new Dialog("en", { shop })
      .say("mower, one click, cows must be fed, very urgent")
      .press("All is safe");
    dialog.say("person");
    const said = dialog.shown.map((one) => one.rendered.text).join("\n");
    expect(said).toMatch(/555 0100|555 0199/);
  });
});
