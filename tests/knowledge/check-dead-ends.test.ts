import { describe, expect, it } from "vitest";
import { problemsOf } from "./small-flows.ts";

const says = (from: string, to: string) =>
  problemsOf({ from, to })
    .map((one) => one.says)
    .join("\n");

describe("dead ends", () => {
  it("finds an observation that nothing finds", () => {
    expect(
      says(
        "  ask-season: { title: Season, finds: season, step: talk, by: operator, ask: Which season?, minutes: 1 }\n",
        "",
      ),
    ).toBe('No check and no act finds "season"; add a check, or remove it.');
  });

  it("lets pass what people only tell unasked", () => {
    const unasked =
      "  ask-season: { title: Season, finds: season, step: talk, by: operator, ask: Which season?, minutes: 1 }\n";
    const found = problemsOf(
      { from: unasked, to: "" },
      {
        from: "    title: Season\n    states",
        to: "    title: Season\n    told-only: true\n    states",
      },
    );
    expect(found.map((one) => one.says)).toEqual([]);
  });

  it("finds an observation that no fault shows in", () => {
    expect(says(", crank-volts: { low: 1 } }", " }")).toContain('No fault shows in "crank-volts"');
  });

  it("finds a fault that no machine can have", () => {
    expect(
      says("needs: { fuels: petrol, features: choke }", "needs: { fuels: gas, features: choke }"),
    ).toBe(
      'No machine kind can have "empty-tank": look at its "needs:" and at the machines\' fuels and features.',
    );
  });

  it("finds checks that wait for each other", () => {
    const found = problemsOf(
      { from: "ask: Which season?,", to: "ask: Which season?, after: ask-events," },
      { from: "ask: What happened?,", to: "ask: What happened?, after: ask-season," },
    );
    expect(found.map(({ at }) => at)).toEqual([
      "checks.ask-season.after",
      "checks.ask-events.after",
    ]);
  });

  it("finds remedies and parts that nobody uses", () => {
    expect(says("remedies: new-pump", "remedies: new-battery")).toContain(
      "No fault names this remedy",
    );
    expect(says("parts: pump,", "parts: battery,")).toContain("No remedy needs this part");
  });
});
