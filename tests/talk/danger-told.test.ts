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

  it("names in the knowledge only states that exist", () => {
    for (const { seenAs } of knowledge.redFlags.values()) {
      for (const { observation, anyOf } of seenAs) {
        const states = knowledge.observations.get(observation)?.states.map(({ id }) => id) ?? [];
        for (const one of anyOf) expect(states).toContain(one);
      }
    }
  });
});
