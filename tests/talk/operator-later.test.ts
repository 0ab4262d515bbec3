import { describe, expect, it } from "vitest";
import type { CaseState } from "../../src/domain/case-state.ts";
import { ticked } from "../../src/talk/equipment.ts";
import { followUps, SILENCE } from "../../src/talk/follow-ups.ts";
import { laterTurn, photoTurn } from "../../src/talk/later.ts";
import { restLines, STARTER_REST } from "../../src/talk/rest.ts";
import { Dialog, settings, speech, workshop } from "../helpers/dialog.ts";

/** Milliseconds that a whole interview may take on a busy machine. */
const PATIENCE = 60_000;

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
  it(
    "gets one list for the walk, not one walk a question",
    () => {
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
    },
    PATIENCE,
  );
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

/** What a decision says to its reader, in words. */
const wordsOf = ({ effects }: ReturnType<typeof laterTurn>): string =>
  effects
    .flatMap(({ effect }) =>
      effect.do === "tell" ? [] : [speech.wording.render(effect.message, "en").text],
    )
    .join("\n");

describe("somebody who fell silent", () => {
  it("is reminded of the open question after a while, once", () => {
    const dialog = underWay();
    const asked = dialog.state.open.operator?.askedAt ?? 0;
    const soon = { ...dialog.desk, now: asked + SILENCE / 2 };
    const later = { ...dialog.desk, now: asked + SILENCE + 60_000 };
    expect(laterTurn(dialog.state, { type: "look-in" }, soon).happenings).toEqual([]);
    const due = laterTurn(dialog.state, { type: "look-in" }, later);
    expect(wordsOf(due)).toContain("You have not answered for a while");
    expect(due.happenings).toContainEqual({ type: "operator.reminded" });
    const again = laterTurn({ ...dialog.state, reminded: true }, { type: "look-in" }, later);
    expect(again).toMatchObject({ happenings: [], effects: [] });
  });

  it("goes on days later where they were, with the same question open", () => {
    const dialog = underWay();
    const open = dialog.state.open.operator?.asking;
    dialog.send({ kind: "text", text: "sorry, I was away" }, "1", 3 * 24 * 3_600_000);
    expect(dialog.state.closed).toBeNull();
    expect(dialog.state.open.operator?.asking).toEqual(open);
  });
});

describe("a machine that was mended some days ago", () => {
  it("is asked after once, and not where nobody closed the case", () => {
    const dialog = underWay();
    expect(wordsOf(laterTurn(dialog.state, { type: "still-fine" }, dialog.desk))).toBe("");
    dialog.press("More …").press("It runs again");
    const asked = laterTurn(dialog.state, { type: "still-fine" }, dialog.desk);
    expect(wordsOf(asked)).toContain("still fine");
    expect(asked.happenings).toEqual([{ type: "aftermath.asked" }]);
    const told: CaseState = { ...dialog.state, aftermath: "asked" };
    expect(wordsOf(laterTurn(told, { type: "still-fine" }, dialog.desk))).toBe("");
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
