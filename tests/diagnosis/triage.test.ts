import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { triage } from "../../src/diagnosis/triage.ts";
import type { Evidence, Situation } from "../../src/domain/evidence.ts";
import { anyKnowledge, someMachine } from "../helpers/knowledge-maker.ts";

const situation: Situation = {
  performer: "operator",
  place: "at-machine",
  has: [],
  asked: [],
  refused: [],
  urgency: "normal",
};

const told = (observation: string, state: string): Evidence["reports"][number] => ({
  observation,
  epoch: 0,
  reporter: "operator",
  said: { kind: "states", weights: { [state]: 1 } },
  hedge: 0,
});

describe("triage", () => {
  it("says everything of a case, in agreement with itself", () => {
    fc.assert(
      fc.property(anyKnowledge({ faults: 5, observations: 4 }), (knowledge) => {
        const model = compileModel(knowledge, someMachine);
        const evidence: Evidence = { reports: [told("o0", "s0"), told("o1", "s1")], acts: [] };
        const said = triage(model, evidence, situation);
        const { causes, somethingElse, nothingWrong } = said.ranking;
        const sum = causes.reduce((total, cause) => total + cause.probability, 0);
        expect(sum + somethingElse + nothingWrong).toBeCloseTo(1, 9);
        expect(said.plan.expectedCost).toBeGreaterThanOrEqual(said.plan.bound - 1e-9);
        expect(said.plan.minutes.median).toBeLessThanOrEqual(said.plan.minutes.p90);
        expect(said.kit.covers).toBeLessThanOrEqual(1 + 1e-9);
        expect(said.ways.selfHelp).toBeLessThanOrEqual(said.ways.visit + 1e-9);
      }),
      { seed: 11, numRuns: 60 },
    );
  });
});
