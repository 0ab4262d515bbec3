import { describe, expect, it } from "vitest";
import { knowledgeOf, problemsOf } from "./small-flows.ts";

const says = (from: string, to: string) => problemsOf({ from, to }).map((one) => one.says);
const bands = "bands: { low: { title: Under 12, to: 12 }, good: { title: Over 12, from: 12 } }";

describe("observations", () => {
  it("keeps bands, unit, plausible span and whether it scales", () => {
    expect(knowledgeOf().observations.get("rest-volts")).toMatchObject({
      kind: "number",
      unit: "V",
      scalesWithVolts: true,
      plausible: [0, 15],
      states: [
        { id: "low", title: "Under 12", to: 12 },
        { id: "good", title: "Over 12", from: 12 },
      ],
    });
  });

  it("wants bands that run upwards without gaps, open at both ends", () => {
    const wrong = [
      "bands: { low: { title: A, to: 11 }, good: { title: B, from: 12 } }",
      "bands: { low: { title: A, from: 0, to: 12 }, good: { title: B, from: 12 } }",
      "bands: { low: { title: A, to: 12 }, good: { title: B, from: 12, to: 15 } }",
      "bands: { low: { title: A, to: 12 }, mid: { title: M, from: 12, to: 12 }, good: { title: B, from: 12 } }",
    ];
    for (const text of wrong) expect(says(bands, text)[0]).toContain("Bands must run upwards");
    expect(says(bands, "bands: { good: { title: B } }").join()).toContain("at least two");
  });

  it("wants the unit and the plausible span of a number", () => {
    expect(says("    unit: V\n", "")[0]).toContain('add "unit:"');
    expect(says("    plausible: 0 to 15\n", "")[0]).toContain('needs "plausible:"');
  });

  it("wants states, and how often each is seen when nothing is wrong", () => {
    const season = "    states: { summer: Summer, winter: Winter }\n";
    expect(says(season, "").join()).toContain("Which states can it have?");
    expect(says("    usual: { summer: 0.75, winter: 0.25 }\n", "")[0]).toContain('Add "usual:"');
  });

  it("holds the states of on-start to what the program knows", () => {
    expect(says("nothing: N,", "silence: N,").join()).toContain(
      "wrong or missing: silence, nothing",
    );
  });

  it("takes a follower's rows only when every state of its parent has one", () => {
    expect(says("nothing: { no: 1 }, one-click", "one-click")[0]).toBe(
      'The row for "nothing" is missing.',
    );
  });
});
