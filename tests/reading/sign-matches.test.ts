import { describe, expect, it } from "vitest";
import { readerModel } from "../../src/reading/reader-model.ts";
import { shippedKnowledge, shippedReader } from "../helpers/shipped.ts";

describe("words that make a sign something else", async () => {
  const reader = await shippedReader(readerModel(await shippedKnowledge()), "en");
  const states = (text: string): readonly string[] =>
    reader
      .read(text, { languages: ["en"] })
      .understood.map((one) => `${one.observation}=${"state" in one ? one.state : one.value}`);

  it.each([
    ["no click at all", "on-start=nothing"],
    ["it grinds", "on-start=grinds"],
    ["rattling", "on-start=fast-clicks"],
    ["seized", "engine-turns=no"],
    ["ran out", "recent-event=ran-dry"],
    ["the timing is out", "timing-marks=wrong"],
    ["the plugged coil", "found-bad=coil"],
    ["half a turn", "on-start=turns-then-stops"],
    ["it grunts", "on-start=slow"],
  ])("the bare words count: %s", (text, state) => expect(states(text)).toContain(state));

  it.each([
    ["no click at all from the shut-off on the pump", "on-start=nothing"],
    ["the gearbox grinds in second", "on-start=grinds"],
    ["there is a rattling in the gearbox", "on-start=fast-clicks"],
    ["the brakes are seized", "engine-turns=no"],
    ["I ran out of daylight", "recent-event=ran-dry"],
    ["it works three times out of four", "timing-marks=wrong"],
    ["the plugs and coil", "found-bad=coil"],
    ["the nut is half a turn from falling out", "on-start=turns-then-stops"],
    ["it has not so much as grunted", "on-start=slow"],
  ])("beside another thing they do not: %s", (text, state) =>
    expect(states(text)).not.toContain(state),
  );

  // What is lost between two places is neither's own voltage; a level that sags is no loss.
  it.each([
    ["4.4 V lost between battery and starter stud", "plus-side-drop-volts=4.4"],
    ["engine vs chassis 3.2 V on crank", "ground-drop-volts=3.2"],
    ["post to frame rail 5.1 V with the key held", "ground-drop-volts=5.1"],
    ["post to cable lug 0.1 V", "plus-clamp-drop-volts=0.1"],
    ["battery stud on the solenoid drops to 5.4 V", "stud-start-volts=5.4"],
  ])("measured between two places: %s", (text, reading) => expect(states(text)).toEqual([reading]));

  it.each([
    ["the stud nut was finger loose", "joint-look=loose"],
    ["getting slower each morning", "came-on=gradually"],
    ["the battery was bulging", "found-bad=battery"],
    ["tail of the barrel snapped", "found-bad=key-switch"],
    ["coil primary infinite", "found-bad=coil"],
    ["arrestor mesh completely shut with carbon", "exhaust-look=blocked"],
  ])("what a mechanic found: %s", (text, state) => expect(states(text)).toContain(state));

  it("only within their clause", () => {
    expect(states("the shut-off is fine, no click at all")).toContain("on-start=nothing");
  });
});
