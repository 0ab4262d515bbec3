import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { updateBelief } from "../../src/diagnosis/belief.ts";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { packKit } from "../../src/diagnosis/kit.ts";
import { DEFAULT_PLAN_OPTIONS, planVisit } from "../../src/diagnosis/plan.ts";
import { efficientOrder } from "../../src/diagnosis/repair-order.ts";
import { startOf } from "../../src/diagnosis/repair-problem.ts";
import { visitProblem } from "../../src/diagnosis/visit-problem.ts";
import { weighWays } from "../../src/diagnosis/ways.ts";
import type { Evidence } from "../../src/domain/evidence.ts";
import {
  anyKnowledge,
  makeAct,
  makeCheck,
  makeFault,
  makeKnowledge,
  makeObservation,
  makePart,
  makeRemedy,
  someMachine,
} from "../helpers/knowledge-maker.ts";
import { operatorThere, technicianThere, told } from "../helpers/told.ts";

const nothing: Evidence = { reports: [], acts: [] };
const quick = { ...DEFAULT_PLAN_OPTIONS, nodes: 300, samples: 100 };

/** A frequent dear repair and a rarer one, with a check that tells them apart. */
const knowledge = makeKnowledge({
  faults: [
    makeFault("battery", { share: 4, rows: new Map([["volts", [0.95, 0.05]]]) }),
    makeFault("starter", { share: 4, rows: new Map([["volts", [0.05, 0.95]]]) }),
  ],
  observations: [makeObservation("volts", ["low", "full"], [0.1, 0.9])],
  checks: [
    makeCheck("measure", "volts", { minutes: 2, performers: ["technician"], access: "hood" }),
  ],
  remedies: [
    makeRemedy("mend-battery", { minutes: 30, parts: ["battery"], tools: ["spanner"] }),
    makeRemedy("mend-starter", { minutes: 90, parts: ["starter"], access: "hood" }),
  ],
  parts: [makePart("battery", { carryMinutes: 3 }), makePart("starter", { carryMinutes: 4 })],
  accessGroups: new Map([["hood", { id: "hood", title: "hood", minutes: 6 }]]),
  rates: { nothingWrong: 0.02, somethingElse: 0.02 },
});
const model = compileModel(knowledge, someMachine);

describe("the plan of a visit", () => {
  const plan = planVisit(model, nothing, technicianThere);

  it("says what to do, what then, and how likely it comes to that", () => {
    const [first, second] = plan.steps;
    expect(first).toMatchObject({ id: "hood", kind: "open-up", minutes: 6, reached: 1 });
    expect(second).toMatchObject({ id: "measure", kind: "check" });
    const next = Object.fromEntries((second?.then ?? []).map(({ result, next }) => [result, next]));
    expect(next).toEqual({ low: "mend-battery", full: "mend-starter" });
    const chances = (second?.then ?? []).reduce((sum, { chance }) => sum + chance, 0);
    expect(chances).toBeCloseTo(1, 9);
    const ids = new Set(plan.steps.map((step) => step.id));
    expect(ids.size).toBe(plan.steps.length);
    for (const { then } of plan.steps) {
      for (const { next: id } of then) expect(id === null || ids.has(id), String(id)).toBe(true);
    }
    const remedy = plan.steps.find((step) => step.id === "mend-battery");
    expect(remedy).toMatchObject({ parts: ["battery"], cures: ["battery"], who: "technician" });
  });

  it("gives the same minutes for the same seed, median at most the 90 %", () => {
    expect(planVisit(model, nothing, technicianThere).minutes).toEqual(plan.minutes);
    expect(plan.minutes.median).toBeLessThanOrEqual(plan.minutes.p90);
    expect(plan.minutes.median).toBeGreaterThanOrEqual(30);
    expect(plan.expectedCost).toBeGreaterThanOrEqual(plan.bound - 1e-9);
  });

  it("adds the trip for somebody who is not there yet", () => {
    const away = planVisit(model, nothing, { ...operatorThere, urgency: "low", travelMinutes: 25 });
    const there = planVisit(model, nothing, {
      ...technicianThere,
      carried: ["battery", "starter"],
    });
    expect(away.expectedCost - there.expectedCost).toBeCloseTo(50, 6);
  });

  it("simulates minutes that agree with the expected cost", () => {
    const situation = { ...technicianThere, carried: ["battery", "starter"] };
    const problem = visitProblem(model, nothing, {
      situation,
      probability: updateBelief(model, nothing).probability,
      onBoard: new Set(situation.carried),
    });
    expect(problem.runs).toBeCloseTo(0.02, 9);
    const { minutes, expectedCost } = planVisit(model, nothing, situation, {
      ...DEFAULT_PLAN_OPTIONS,
      samples: 4000,
    });
    expect(expectedCost).toBeGreaterThan(0.5 * minutes.median);
    expect(expectedCost).toBeLessThan(2 * minutes.p90);
  });

  it("is never dearer than the plain order of probability per cost", () => {
    fc.assert(
      fc.property(anyKnowledge({ faults: 6, observations: 4 }), (given) => {
        const any = compileModel(given, someMachine);
        const evidence: Evidence = { reports: [told("o0", "s0")], acts: [] };
        const { probability } = updateBelief(any, evidence);
        const situation = { ...technicianThere, carried: [] };
        const { problem, runs } = visitProblem(any, evidence, {
          situation,
          probability,
          onBoard: new Set(),
        });
        const plain = efficientOrder(problem, startOf(problem)).cost + 5 * runs;
        const planned = planVisit(any, evidence, situation, quick);
        expect(planned.expectedCost).toBeLessThanOrEqual(plain + 1e-6);
        expect(planned.bound).toBeLessThanOrEqual(planned.expectedCost + 1e-9);
      }),
      { seed: 81, numRuns: 25 },
    );
  });

  it("does not repeat a repair that did not help, and goes on to what is left", () => {
    const evidence: Evidence = {
      reports: [],
      acts: [{ act: "mend-battery", epoch: 1, by: "technician", outcome: "no-change" }],
    };
    const again = planVisit(model, evidence, technicianThere);
    expect(again.steps.map((step) => step.id)).not.toContain("mend-battery");
    expect(again.steps.map((step) => step.id)).toContain("mend-starter");
  });

  it("looks for the cause after curing only what it brought along", () => {
    const pair = makeKnowledge({
      faults: [
        makeFault("flat", { share: 1, blocks: "motor" }),
        makeFault("charging", {
          share: 3,
          blocks: "none",
          brings: new Map([["flat", 0.9]]),
          rows: new Map([["charge-volts", [0.97, 0.03]]]),
        }),
      ],
      observations: [makeObservation("charge-volts", ["low", "good"], [0.03, 0.97])],
      checks: [makeCheck("run-and-measure", "charge-volts", { performers: ["technician"] })],
      remedies: [
        makeRemedy("mend-flat", { minutes: 10 }),
        makeRemedy("mend-charging", { minutes: 60 }),
      ],
    });
    const { steps } = planVisit(compileModel(pair, someMachine), nothing, technicianThere);
    const named = steps.map((step) => step.id);
    expect(named).toContain("run-and-measure");
    expect(named).toContain("mend-charging");
  });
});

describe("the kit", () => {
  it("carries what is worth a second trip, and says what it covers", () => {
    const kit = packKit(model, nothing, operatorThere);
    expect(kit.items.map(({ part, carry }) => [part, carry])).toEqual([
      ["battery", true],
      ["starter", true],
    ]);
    expect(kit.covers).toBeCloseTo(0.98, 9);
    expect(kit.items[0]?.adds).toBeCloseTo(kit.items[0]?.chance ?? 0, 9);
    expect(kit.tools).toContain("spanner");
    const small = packKit(model, nothing, operatorThere, { capacity: 1 });
    expect(small.items.filter((item) => item.carry).map((item) => item.part)).toEqual(["battery"]);
  });

  it("takes an alternate for the part, universal stock for granted, and needs bundles whole", () => {
    const stock = makeKnowledge({
      faults: [makeFault("a", { share: 3 }), makeFault("b")],
      remedies: [
        makeRemedy("mend-a", { parts: ["valve", "seal", "tape"] }),
        makeRemedy("mend-b", { parts: ["valve-b"] }),
      ],
      parts: [
        makePart("valve", { carryMinutes: 5 }),
        makePart("seal", { carryMinutes: 5 }),
        makePart("valve-b", { alternates: ["valve"], carryMinutes: 5 }),
        makePart("tape", { universal: true }),
      ],
    });
    const kit = packKit(compileModel(stock, someMachine), nothing, operatorThere);
    expect(kit.items.filter((item) => item.carry).map((item) => item.part)).toEqual([
      "seal",
      "valve",
    ]);
    expect(kit.universal).toEqual(["tape"]);
    expect(kit.covers).toBeCloseTo(0.98, 9);
  });
});

describe("the ways to go", () => {
  it("prefer safe self-help where it is likely to end the trouble", () => {
    const lever = {
      ...knowledge,
      acts: new Map([["wiggle", makeAct("wiggle", { cures: new Map([["battery", 0.8]]) })]]),
    };
    const ways = weighWays(compileModel(lever, someMachine), nothing, operatorThere);
    expect(ways.selfHelp).toBeLessThan(ways.visit);
    expect(ways.byChat).toBeCloseTo(0.02 + (0.96 * 4 * 0.8) / 8, 9);
    const without = weighWays(model, nothing, operatorThere);
    expect(without.selfHelp).toBe(without.visit);
    expect(without.byChat).toBeCloseTo(0.02, 9);
  });
});
