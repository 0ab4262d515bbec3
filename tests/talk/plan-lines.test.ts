import { describe, expect, it } from "vitest";
import type { Plan, PlanStep } from "../../src/domain/triage.ts";
import { mainLine } from "../../src/talk/plan-lines.ts";

const step = (id: string, kind: PlanStep["kind"], then: PlanStep["then"]): PlanStep => ({
  ...{ id, kind, then, who: "technician", minutes: 5, reached: 1 },
  ...{ tools: [], parts: [], hazards: [], cures: [] },
});
const plan = (...steps: PlanStep[]): Plan => ({
  ...{ steps, minutes: { median: 10, p90: 20 }, expectedCost: 1, bound: 1 },
});

describe("the main line of a plan", () => {
  const measured = plan(
    step("drop", "check", [
      { result: "high", chance: 0.7, next: "strap" },
      { result: "ok", chance: 0.3, next: "relay" },
    ]),
    step("relay", "remedy", []),
    step("strap", "remedy", [
      { result: "cured", chance: 0.9, next: null },
      { result: "no-change", chance: 0.1, next: "starter" },
    ]),
    step("starter", "remedy", [{ result: "no-change", chance: 1, next: "drop" }]),
  );

  it("follows each check's most likely result, and a repair that did not help", () => {
    expect(mainLine(measured).map((one) => one.step.id)).toEqual(["drop", "strap", "starter"]);
  });

  it("names the turnings that leave it", () => {
    expect(mainLine(measured)[0]?.otherwise).toMatchObject([
      { result: "ok", next: { id: "relay" } },
    ]);
  });

  it("holds no step twice, however the plan leads back", () => {
    const ids = mainLine(measured).map((one) => one.step.id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("is empty for an empty plan", () => {
    expect(mainLine(plan())).toEqual([]);
  });
});
