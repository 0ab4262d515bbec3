import { describe, expect, it } from "vitest";
import { problemsOf } from "./small-flows.ts";

const says = (from: string, to: string) =>
  problemsOf({ from, to })
    .map((one) => one.says)
    .join("\n");

describe("what can be read but makes no sense", () => {
  it("wants to know what a fault does at the stage it blocks", () => {
    expect(says("    cranking: { slow: often, nothing: often }\n", "")).toContain(
      'add "cranking:"',
    );
    expect(says("    firing: { turns-no-fire: nearly-always }\n", "")).toBe(
      'It blocks "combustion", so say what the engine then does: add "firing:".',
    );
    expect(says("blocks: combustion", "blocks: none")).toBe("");
  });

  it("wants a menu where the answers do not fit the buttons", () => {
    const six =
      "states: { a: A, b: B, c: C, d: D, e: E, f: F }\n    usual: { a: 1 }\n    context: true";
    expect(
      says(
        "states: { summer: Summer, winter: Winter }\n    usual: { summer: 0.75, winter: 0.25 }\n    context: true",
        six,
      ),
    ).toContain("6 answers do not fit the buttons (5 at most)");
  });

  it("wants every answer once in a menu", () => {
    expect(says("states: [spins-alone, grinds,", "states: [grinds,")).toBe(
      "The menu must hold each answer once; missing or twice: spins-alone.",
    );
    expect(says("states: [spins-alone, grinds,", "states: [slow, spins-alone, grinds,")).toContain(
      "twice: slow",
    );
  });
});
