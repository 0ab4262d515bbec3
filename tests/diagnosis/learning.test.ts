import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compileModel } from "../../src/diagnosis/compile.ts";
import {
  type Closing,
  learn,
  learnRates,
  learnReporters,
  REPORTER_STRENGTH,
  usableClosings,
  weightOf,
} from "../../src/diagnosis/learning.ts";
import { UnknownId } from "../../src/domain/result.ts";
import {
  makeFault,
  makeKnowledge,
  makeObservation,
  noisyConfusion,
} from "../helpers/knowledge-maker.ts";
import { told } from "../helpers/told.ts";

const knowledge = makeKnowledge({
  faults: [
    makeFault("a", { share: 3, rows: new Map([["o", [0.9, 0.1]]]) }),
    makeFault("b", { share: 1, rows: new Map([["o", [0.2, 0.8]]]) }),
  ],
  observations: [
    makeObservation("o", ["x", "y"], [0.5, 0.5], { confusion: noisyConfusion(2, 0.8) }),
  ],
  rates: { shareStrength: 20, nothingWrong: 0, somethingElse: 0 },
});

const closing = (given: Partial<Closing> = {}): Closing => ({
  case: "c1",
  at: 1,
  kind: "combine",
  faults: ["b"],
  how: "measured",
  cameBack: false,
  reports: [],
  ...given,
});

describe("learning from closed cases", () => {
  it("weighs a closing by how its cause was confirmed", () => {
    expect(weightOf(closing({ how: "ran-after-this" }))).toBe(1);
    expect(weightOf(closing({ how: "measured" }))).toBe(1);
    expect(weightOf(closing({ how: "several-at-once", faults: ["a", "b"] }))).toBe(0.5);
    expect(weightOf(closing({ how: "guess" }))).toBe(0);
    expect(weightOf(closing({ cameBack: true }))).toBe(0);
  });

  it("shrinks counts to the shipped share of the kind", () => {
    const closings = Array.from({ length: 10 }, (_, k) => closing({ case: `c${k}` }));
    const times = learnRates(knowledge, closings, "combine");
    const model = compileModel(knowledge, { kind: "combine" }, { times });
    expect(model.hypotheses.prior[2]).toBeCloseTo((20 * 0.25 + 10) / 30, 12);
    expect(learnRates(knowledge, closings, "skid-steer").size).toBe(0);
  });

  it("moves a reporter's reliability by expected counts", () => {
    const reports = [told("o", "x")];
    const [learned] = [...learnReporters(knowledge, [closing({ reports })]).values()];
    // P(truth x | fault b, told x) = 0.2·0.8 ÷ (0.2·0.8 + 0.8·0.2) = 1/2.
    const strength = REPORTER_STRENGTH;
    expect(learned?.operator?.[0]?.[0]).toBeCloseTo((strength * 0.8 + 0.5) / (strength + 0.5), 12);
    expect(learned?.operator?.[1]?.[0]).toBeCloseTo((strength * 0.2 + 0.5) / (strength + 0.5), 12);
    expect(learned?.technician).toBeUndefined();
  });

  it("is undone exactly, and does not depend on the order of the list", () => {
    const anyClosing = fc.record({
      case: fc.string({ minLength: 1, maxLength: 4 }),
      at: fc.nat(50),
      kind: fc.constant("combine" as const),
      faults: fc.constantFrom(["a"], ["b"], ["a", "b"]),
      how: fc.constantFrom("measured", "several-at-once", "guess", "ran-after-this"),
      cameBack: fc.boolean(),
      reports: fc.constantFrom([told("o", "x")], [told("o", "y")], []),
    });
    const lists = fc.uniqueArray(anyClosing, {
      selector: (c) => c.case,
      minLength: 1,
      maxLength: 12,
    });
    fc.assert(
      fc.property(lists, anyClosing, (closings, extra) => {
        const before = learn(knowledge, closings, "combine");
        learn(knowledge, [...closings, extra], "combine");
        expect(learn(knowledge, closings, "combine")).toEqual(before);
        expect(learn(knowledge, [...closings].reverse(), "combine")).toEqual(before);
      }),
      { seed: 61, numRuns: 100 },
    );
  });

  it("says which fault it does not know, and can leave such closings out", () => {
    const gone = closing({ faults: ["gone"] });
    expect(() => learn(knowledge, [gone], "combine")).toThrow(UnknownId);
    expect(usableClosings(knowledge, [gone, closing()])).toEqual([closing()]);
  });
});
