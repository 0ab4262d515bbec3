import { describe, expect, it } from "vitest";
import { verdictLines } from "../../src/talk/moved.ts";
import { Dialog, workshop } from "../helpers/dialog.ts";
import { read, told } from "../helpers/told.ts";

const desk = new Dialog().desk;

/** The verdict shown for a reading, where these were told before. */
function verdict(reading: ReturnType<typeof read>, before: readonly (readonly [string, string])[]) {
  const { state } = new Dialog();
  const answers = before.map(([observation, as]) => ({
    report: told(observation, as),
    from: "operator" as const,
    at: 0,
  }));
  const [, line] = verdictLines(reading, { ...state, answers }, desk);
  return JSON.stringify(line).match(/verdict-read-[a-z]+-([a-z-]+)/)?.[1];
}

describe("what a reading means by what else was told", () => {
  // Low current and slow: resistance; high current and slow: drag or a shorted starter.
  // US Army TM 10-3930-671-24 and a training text on starter current draw.
  it.each([
    [40, "slow", "low-but-slow"],
    [40, "one-click", "low-and-still"],
    [40, "turns-no-fire", "low-and-turning"],
    [150, "slow", "usual-but-slow"],
    [150, "nothing", "usual-and-still"],
    [150, "starts", "usual-and-turning"],
    [450, "slow", "high-and-slow"],
    [450, "turns-then-stops", "high-and-still"],
    [450, "fires-then-dies", "high-and-turning"],
  ])("%d A on the starter and the key does %s: %s", (amps, start, expected) => {
    expect(verdict(read("starter-amps", amps), [["on-start", start]])).toBe(expected);
  });

  it("falls back on the current alone where nobody said how it turned", () => {
    expect(verdict(read("starter-amps", 450), [])).toBe("high-slow");
  });

  it("takes what was told last", () => {
    const both = [
      ["on-start", "slow"],
      ["on-start", "nothing"],
    ] as const;
    expect(verdict(read("starter-amps", 450), both)).toBe("high-and-still");
  });

  // A small diesel's service manual: 14.4 V plus or minus 0.3 at 20 degrees, 0.1 V more for each
  // 10 degrees colder.
  it.each([
    ["hard-frost", "cold-now"],
    ["hot", "warm-now"],
  ])("judges 15.1 V while charging by the weather: %s", (outdoors, expected) => {
    expect(verdict(read("charging-volts", 15.1), [["outdoors", outdoors]])).toBe(expected);
  });

  it("judges oil and diesel by the weather", () => {
    const shown = (id: string, state: string, outdoors: string) =>
      workshop.knowledge.checks
        .get(id)
        ?.verdicts.find(
          ({ states, onlyIf }) =>
            states.includes(state) && onlyIf.every(({ anyOf }) => anyOf.includes(outdoors)),
        )?.id;
    // SAE J300: 15W cranks to -20, 0W to -35 degrees. EN 590: class A to +5, D to -10, F to -20.
    expect(shown("ask-oil-grade", "all-year", "frost")).toBe("fits-light-frost");
    expect(shown("ask-oil-grade", "all-year", "hard-frost")).toBe("limit-in-frost");
    expect(shown("ask-oil-grade", "winter", "hard-frost")).toBe("fits-hard-frost");
    expect(shown("ask-oil-grade", "summer", "frost")).toBe("too-thick");
    expect(shown("ask-fuel-grade", "summer", "hard-frost")).toBe("waxes-surely");
    expect(shown("ask-fuel-grade", "summer", "frost")).toBe("waxes");
    expect(shown("ask-fuel-grade", "winter", "mild")).toBe("no-matter");
  });
});
