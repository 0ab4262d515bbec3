import { describe, expect, it } from "vitest";
import type { Plan, PlanStep } from "../../src/domain/triage.ts";
import { mainLine, planLines } from "../../src/talk/plan-lines.ts";
import { Dialog } from "../helpers/dialog.ts";

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

describe("the plan in lines", () => {
  const flat = plan(
    ...["a", "b", "c", "d"].map((id, n) =>
      step(id, "remedy", [{ result: "no-change", chance: 1, next: "bcd"[n] ?? null }]),
    ),
  );
  const keys = (steps: number) =>
    planLines(flat, { steps, turnings: 2 }, new Dialog().desk).map(({ say }) => say);

  it("shows the first steps of a long one and says how many are left", () => {
    expect(keys(3)).toContainEqual({ key: "plan-more", args: { count: 1 } });
    expect(keys(1)).toContainEqual({ key: "plan-more", args: { count: 3 } });
  });

  it("says nothing of the kind where all of it is shown", () => {
    expect(JSON.stringify(keys(4))).not.toContain("plan-more");
  });
});
