import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildHypotheses, MOST_INDEPENDENT_PAIRS } from "../../src/diagnosis/hypotheses.ts";
import { OutOfRange, UnknownId } from "../../src/domain/result.ts";
import { anyKnowledge, makeFault, makeKnowledge, someMachine } from "../helpers/knowledge-maker.ts";

describe("the hypotheses of a machine", () => {
  it("have a prior that sums to 1, with the stated rates", () => {
    fc.assert(
      fc.property(anyKnowledge({ faults: 6, observations: 1 }), (knowledge) => {
        const { prior, count } = buildHypotheses(knowledge, someMachine, {});
        expect(prior.reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 12);
        expect(prior[0]).toBe(knowledge.rates.nothingWrong);
        expect(prior[count - 1]).toBe(knowledge.rates.somethingElse);
        expect(Math.min(...prior)).toBeGreaterThan(0);
      }),
      { seed: 101, numRuns: 60 },
    );
  });

  it("take a declared pair out of its root's own share", () => {
    const knowledge = makeKnowledge({
      faults: [makeFault("root", { brings: new Map([["flat", 0.25]]) }), makeFault("flat")],
      rates: { nothingWrong: 0, somethingElse: 0 },
    });
    const { prior, first, second, declared } = buildHypotheses(knowledge, someMachine, {});
    expect([...prior.subarray(1, 4)]).toEqual([0.375, 0.5, 0.125]);
    expect([first[3], second[3], declared[3]]).toEqual([0, 1, 1]);
  });

  it("keep independent pairs down to the cut-off and never more than the bound", () => {
    const faults = Array.from({ length: 60 }, (_, k) => makeFault(`f${k}`, { share: 1 + k }));
    const at = (pairCutOff: number) =>
      buildHypotheses(makeKnowledge({ faults, rates: { pairCutOff } }), someMachine, {}).count - 62;
    expect(at(1)).toBe(0);
    expect(at(3e-5)).toBeGreaterThan(0);
    expect(at(3e-5)).toBeLessThan(at(2e-5));
    expect(at(1e-12)).toBeLessThanOrEqual(MOST_INDEPENDENT_PAIRS);
    expect(at(1e-12)).toBeGreaterThan(MOST_INDEPENDENT_PAIRS - 10);
  });

  it("move with the machine's facts and with what was learned", () => {
    const knowledge = makeKnowledge({
      faults: [
        makeFault("old", { factors: [{ when: { ageFrom: 10 }, times: 3, because: "age" }] }),
        makeFault("glow", { needs: { fuels: ["diesel"] } }),
        makeFault("rest"),
      ],
      rates: { nothingWrong: 0, somethingElse: 0 },
    });
    const of = (
      facts: Parameters<typeof buildHypotheses>[1],
      times?: ReadonlyMap<string, number>,
    ) => {
      const built = buildHypotheses(knowledge, facts, times === undefined ? {} : { times });
      return Object.fromEntries(built.faults.map((id, f) => [id, built.prior[f + 1]]));
    };
    expect(of({ kind: "other", fuel: "petrol", ageYears: 12 })).toEqual({ old: 0.75, rest: 0.25 });
    expect(of({ kind: "other", fuel: "petrol", ageYears: 3 })).toEqual({ old: 0.5, rest: 0.5 });
    expect(of({ kind: "other", fuel: "petrol" })).toEqual({ old: 0.5, rest: 0.5 });
    expect(of({ kind: "other" })["glow"]).toBeCloseTo(1 / 3 / (2 + 1 / 3), 12);
    const learned = of({ kind: "other", fuel: "petrol" }, new Map([["rest", 3]]));
    expect(learned).toEqual({ old: 0.25, rest: 0.75 });
  });

  it("refuse rates and ids that cannot be", () => {
    const faults = [makeFault("a")];
    const build = (rates: object, times?: ReadonlyMap<string, number>) => () =>
      buildHypotheses(makeKnowledge({ faults, rates }), someMachine, times ? { times } : {});
    expect(build({ nothingWrong: 1 })).toThrow(OutOfRange);
    expect(build({ somethingElse: Number.NaN })).toThrow("somethingElse");
    expect(build({ pairCutOff: 0 })).toThrow("pairCutOff");
    expect(build({}, new Map([["zz", 2]]))).toThrow(UnknownId);
    expect(build({}, new Map([["a", -1]]))).toThrow(OutOfRange);
  });
});
