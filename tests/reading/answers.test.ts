import { describe, expect, it } from "vitest";
import { read, says } from "../helpers/english-reader.ts";

const asked = (observation: string) => ({ expecting: { observation } });
const lights = {
  expecting: {
    observation: "lights-on",
    offered: [
      { state: "normal", title: "As bright as always" },
      { state: "dim", title: "Dim" },
      { state: "dead", title: "No light at all" },
    ],
  },
};

describe("answers to an open question", () => {
  it.each([
    ["2", "dim"],
    ["2)", "dim"],
    ["the second", "dim"],
    ["2nd one", "dim"],
    ["last one", "dead"],
    ["dim", "dim"],
    ["Dim!", "dim"],
    ["bright", "normal"],
    ["no light", "dead"],
  ])("takes %s as a button", (text, state) =>
    expect(says(text, lights)).toEqual([`lights-on=${state}`]),
  );

  it.each(["4", "0", "not dim", "1.5", "on the roof"])("does not take %s as one", (text) =>
    expect(says(text, lights)).toEqual([]),
  );

  it.each(["12,4", "12.4 v", "about 12.4 volts", "it says 12.4"])("takes %s as a reading", (text) =>
    expect(says(text, asked("battery-rest-volts"))).toEqual(["battery-rest-volts=12.4"]),
  );

  it("takes a bare number beside one of another place for no answer, and one with its unit for one", () => {
    const amps = asked("starter-amps");
    expect(says("battery 12.5 at rest, 12.1 cranking", amps)).toEqual([
      "battery-rest-volts=12.5",
      "battery-start-volts=12.1",
    ]);
    expect(says("battery 12.5 at rest, 180 A", amps)).toEqual([
      "battery-rest-volts=12.5",
      "starter-amps=180",
    ]);
  });

  it.each(["battery 12.6 V at rest", "at rest the battery shows 12.6 volts"])(
    "takes a number whose own place is named for that place alone: %s",
    (text) => expect(says(text, asked("dash-volts-start"))).toEqual(["battery-rest-volts=12.6"]),
  );

  it("counts a number once, as the answer, where the words name no other place", () =>
    expect(says("I read 9.1 V at the battery", asked("battery-start-volts"))).toEqual([
      "battery-start-volts=9.1",
    ]));

  it("is less sure when volts are called amps", () => {
    const [amps] = read("12.4 amps", asked("battery-rest-volts")).understood;
    expect(amps?.probability).toBeLessThan(0.8);
  });

  it("hands back what cannot be", () => {
    const result = read("124", asked("battery-rest-volts"));
    expect(result.understood).toEqual([]);
    expect(result.implausible).toMatchObject([{ value: 124, range: [0, 15] }]);
  });

  it("lets the question decide what an ambiguous word means", () => {
    expect(says("it turns over", asked("engine-turns"))).toEqual(["engine-turns=normal"]);
    expect(says("it won't turn over", asked("engine-turns"))).toEqual(["engine-turns=no"]);
  });

  it("takes a length of time where the states are lengths of time", () =>
    expect(says("about three weeks", asked("last-use"))).toEqual(["last-use=weeks"]));

  it("still reads other things said beside the answer", () =>
    expect(says("the lights are bright and I had it on the charger", lights)).toEqual([
      "lights-on=normal",
      "recent-event=charged",
    ]));
});

describe("commands", () => {
  it.each([
    ["back", "back"],
    ["I don't know", "dont-know"],
    ["no idea", "dont-know"],
    ["can i talk to a person", "person"],
    ["I want to talk to a person please", "person"],
    ["STOP", "stop"],
    ["yes", "yes"],
    ["nope", "no"],
    ["more", "more"],
  ])("%s", (text, command) => expect(read(text).command).toBe(command));

  it.each(["no rush", "it won't stop", "back wheel is flat", "the more I try the worse it gets"])(
    "are not found in: %s",
    (text) => expect(read(text).command).toBeNull(),
  );
});
