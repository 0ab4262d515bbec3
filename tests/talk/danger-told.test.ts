import { describe, expect, it } from "vitest";
import { dangersTold } from "../../src/talk/danger-told.ts";
import { Dialog, workshop } from "../helpers/dialog.ts";
import { named, told } from "../helpers/told.ts";

const { knowledge } = workshop;
const { state } = new Dialog();
const flagsOf = (...reports: ReturnType<typeof told>[]) => {
  const happenings = reports.map((report) => ({ type: "answer.given", report }) as const);
  return dangersTold(happenings, state, knowledge).flatMap((one) =>
    one.type === "flag.raised" ? [one.flag] : [],
  );
};

describe("a danger that is pressed as an answer", () => {
  it("is one: the starter that will not stop, the machine that stood in water", () => {
    expect(flagsOf(told("on-start", "keeps-cranking"))).toEqual(["will-not-stop"]);
    expect(flagsOf(named("recent-event", ["flooded", "charged"]))).toEqual(["water-in-engine"]);
  });

  it("is none where the answer says something else, or denies it", () => {
    expect(flagsOf(told("on-start", "one-click"))).toEqual([]);
    expect(flagsOf(named("recent-event", ["charged"], ["flooded"]))).toEqual([]);
  });

  it("stops the interview, and is not raised again once it was said to be over", () => {
    const dialog = new Dialog().say("petrol ride-on mower").press("All is safe");
    dialog.press("The starter will not stop");
    expect(dialog.last()).toContain("Stop.");
    expect(dialog.state.flags.map(({ flag }) => flag)).toEqual(["will-not-stop"]);
    dialog.press("It is safe now, go on");
    expect(dialog.state.open.operator?.asking.about).toBe("check");
    expect(dialog.state.flags).toHaveLength(1);
  });

  it.each(["press", "say"] as const)("closes the question it answers (%s)", (how) => {
    const dialog = new Dialog().say("petrol ride-on mower").press("All is safe");
    dialog[how]("The starter will not stop");
    expect(dialog.state.safety).toBe("not-clear");
    const [question, ...more] = dialog.shown.filter(({ slot }) => slot?.includes("check"));
    expect(more).toEqual([]);
    expect(question?.rendered.buttons).toEqual([]);
    expect(question?.rendered.text).toMatch(/: (The s|S)tarter will not stop$/);
    dialog.press("It is safe now, go on");
    expect(question?.rendered.buttons).toEqual([]);
    expect(dialog.open()?.text).not.toBe(question?.rendered.text);
  });

  it("in the middle of a question leaves nothing to press but what belongs to it", () => {
    const dialog = new Dialog().say("petrol ride-on mower").press("All is safe");
    const asked = dialog.open()?.text ?? "";
    dialog.say("i smell petrol, there is a puddle");
    const acts = () =>
      dialog.shown
        .filter(({ to }) => to === "1")
        .flatMap(({ rendered }) => rendered.buttons.flat().map(({ press }) => press.act));
    expect(new Set(acts())).toEqual(new Set(["safe-now", "person"]));
    dialog.say("It is safe now, go on");
    expect(dialog.open()?.text).toBe(asked.split("\n\n").at(-1));
    const answers = dialog.open()?.buttons.flat().length ?? 0;
    expect(acts()).toHaveLength(answers + 2);
  });

  it("names in the knowledge only states that exist", () => {
    for (const { seenAs } of knowledge.redFlags.values()) {
      for (const { observation, anyOf } of seenAs) {
        const states = knowledge.observations.get(observation)?.states.map(({ id }) => id) ?? [];
        for (const one of anyOf) expect(states).toContain(one);
      }
    }
  });
});
