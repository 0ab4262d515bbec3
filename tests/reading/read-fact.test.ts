import { describe, expect, it } from "vitest";
import { readFact } from "../../src/reading/read-fact.ts";
import { model, reader } from "../helpers/english-reader.ts";

const tools = { model, reader, options: { languages: ["en"] } };
const said = (key: string, value: unknown) =>
  readFact(key, value, tools).understood.map(
    (one) => `${one.observation}=${"state" in one ? one.state : one.value}`,
  );

describe("entries of a case file", () => {
  it.each([
    ["on-start", "one-click", ["on-start=one-click"]],
    ["on-start", "just one loud click", ["on-start=one-click", "click-sound=loud"]],
    ["lights-on", "normal", ["lights-on=normal"]],
    ["engine-turns", "no", ["engine-turns=no"]],
    ["battery-rest-volts", "12.6 V", ["battery-rest-volts=12.6"]],
    ["battery-rest-volts", "12,6", ["battery-rest-volts=12.6"]],
    ["battery-rest-volts", 12.6, ["battery-rest-volts=12.6"]],
    ["ground-drop-volts", "0.9 V", ["ground-drop-volts=0.9"]],
    ["battery_rest_V", "12.7", ["battery-rest-volts=12.7"]],
    ["dash_lights", "none", ["lights-on=dead"]],
    ["noise", "none", ["on-start=nothing"]],
    ["jump tried", "no change", ["jump-start=no-change"]],
    ["battery", "tested good under load", []],
    ["how it stopped", "under load", ["how-stopped=under-load"]],
  ])("%s: %s", (key, value, expected) => expect(said(key, value)).toEqual(expected));

  it("know the general name for both kinds of lights", () => {
    expect(said("lights", "dim")).toEqual(["lights-on=dim"]);
    expect(said("lights", "go-out")).toEqual(["lights-at-start=go-out"]);
    expect(said("lights", "headlights and panel work")).toEqual(["lights-on=normal"]);
  });

  it("may be lists", () =>
    expect(said("recent-event", ["welded", "charged"])).toEqual([
      "recent-event=welded",
      "recent-event=charged",
    ]));

  it("read a text under a known key", () =>
    expect(said("recent-work", "new starter last year")).toEqual([
      "recent-work=starter-work",
      "recent-event=parts-replaced",
    ]));

  it.each([
    ["jump-lead-block-to-minus", "cranks at full speed", []],
    ["switch-looped-for-the-test", "turns over well", []],
    ["on-the-key", "turns over well, no fire", ["engine-turns=normal", "on-start=turns-no-fire"]],
    ["engine-turns", "turns over well", ["engine-turns=normal"]],
  ])("of a technician tell of a trial what came of it only: %s: %s", (key, value, expected) => {
    const mended = { ...tools, options: { ...tools.options, mended: true } };
    const { understood, ambiguous } = readFact(key, value, mended);
    const states = understood.map((one) => `${one.observation}=${"state" in one && one.state}`);
    expect(states.sort()).toEqual(expected);
    expect(ambiguous).toEqual([]);
  });

  it("tell nothing of what was not tried", () => {
    const { understood, ambiguous } = readFact("tried-to-crank", "no", tools);
    expect([...understood, ...ambiguous]).toEqual([]);
    expect(said("cranks", "no")).toEqual(["engine-turns=no"]);
  });

  it("hand back what they cannot place, and never fail", () => {
    expect(readFact("serial-number", "AB-12", tools).notUnderstood).toEqual([
      "serial-number: AB-12",
    ]);
    expect(readFact("on-start", "purple", tools).notUnderstood).toEqual(["on-start: purple"]);
    for (const value of [null, undefined, true, {}, [], Number.NaN, ""]) {
      expect(() => readFact("on-start", value, tools)).not.toThrow();
    }
  });
});
