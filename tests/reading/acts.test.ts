import { describe, expect, it } from "vitest";
import { reader, says } from "../helpers/english-reader.ts";

const acts = (text: string) =>
  reader
    .read(text, { languages: ["en"] })
    .acts.map(({ act, outcome, span }) => [act, outcome, text.slice(...span)]);
const done = (text: string) => acts(text).map(([act, outcome]) => `${act} ${outcome}`);

describe("things done about the trouble", () => {
  it.each([
    ["charged it overnight, no better", "charge-battery no-change"],
    ["put the charger on again overnight, nothing", "charge-battery no-change"],
    ["cleaned the terminals, same thing", "clean-and-tighten-clamps no-change"],
    ["battery charged, then it started", "charge-battery cured"],
    ["it started after I cleaned the clamps", "clean-and-tighten-clamps cured"],
    ["turned the fuel tap on and it ran", "open-tap cured"],
    ["new battery, no change", "replace-battery no-change"],
    ["new coil: started", "renew-coil cured"],
    ["I changed the spark plug. It made no difference.", "renew-plug no-change"],
  ])("%s → %s", (text, act) => expect(done(text)).toEqual([act]));

  it("are as many as were told", () =>
    expect(done("already replaced the battery and the starter")).toEqual([
      "replace-battery no-change",
      "replace-starter no-change",
    ]));

  it.each([
    "charged it overnight",
    "I have not charged it, no change",
    "new starter last year and now one click",
    "I ran it out of diesel, put fuel in, it ran a moment and stopped",
    "it started fine yesterday",
  ])("need a word on what came of it, and not any trouble will do: %s", (text) =>
    expect(acts(text)).toEqual([]),
  );

  it("are no events before the trouble when done in vain, nor the machine as found", () => {
    expect(says("charged it overnight, no better")).toEqual([]);
    expect(says("charged it last month and drove about")).toContain("recent-event=charged");
    expect(says("it started after I cleaned the clamps")).not.toContain("on-start=starts");
    expect(says("charged it overnight, still nothing")).toEqual(["on-start=nothing"]);
  });

  it("are found in their place", () =>
    expect(acts("last night I charged it, no better")[0]?.[2]).toBe("charged it"));
});
