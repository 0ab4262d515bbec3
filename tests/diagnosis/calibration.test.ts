import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  binaryBrier,
  brierScore,
  type Claim,
  calibrationError,
  logLoss,
  reliability,
  wilson,
} from "../../src/diagnosis/calibration.ts";

const claims = (p: readonly number[], y: readonly number[]): Claim[] =>
  p.map((probability, k) => ({ probability, held: y[k] === 1 }));

describe("calibration", () => {
  // Input set of a well-known machine-learning library's documentation; recomputed.
  it("gives the documented Brier score and log losses", () => {
    const said = claims([0.1, 0.9, 0.8, 0.3], [0, 1, 1, 0]);
    expect(binaryBrier(said)).toBeCloseTo(0.0375, 12);
    const two = said.map(({ probability, held }) => ({
      probabilities: [1 - probability, probability],
      truth: Number(held),
    }));
    expect(brierScore(two)).toBeCloseTo(0.075, 12);
    expect(logLoss(two)).toBeCloseTo(0.19763488, 8);
    const trueClass = [0.9, 0.9, 0.8, 0.65].map((p) => ({ probabilities: [p, 1 - p], truth: 0 }));
    expect(logLoss(trueClass)).toBeCloseTo(0.21616187, 8);
  });

  // Documentation of a metrics library; definition as there, recomputed.
  it("gives the documented calibration errors", () => {
    const said = claims([0.25, 0.25, 0.55, 0.75, 0.75], [0, 0, 1, 1, 1]);
    const { l1, l2, max } = calibrationError(said, 2, "equal-width");
    expect(l1).toBeCloseTo(0.29, 12);
    expect(l2).toBeCloseTo(0.29183329, 8);
    expect(max).toBeCloseTo(0.31666667, 8);
  });

  // Wilson 1927; 8 of 10 gives 0.4902 to 0.9433 (common practice: any statistics package).
  it("gives Wilson's interval", () => {
    const { low, high } = wilson(8, 10);
    expect(low).toBeCloseTo(0.4902, 4);
    expect(high).toBeCloseTo(0.9433, 4);
    expect(wilson(0, 0)).toEqual({ value: 0, low: 0, high: 1 });
  });

  it("puts every claim into one bin, whatever the binning", () => {
    const anyClaim = fc.record({
      probability: fc.double({ min: 0, max: 1, noNaN: true }),
      held: fc.boolean(),
    });
    fc.assert(
      fc.property(
        fc.array(anyClaim, { minLength: 1 }),
        fc.integer({ min: 1, max: 9 }),
        (all, bins) => {
          for (const binning of ["equal-count", "equal-width"] as const) {
            const found = reliability(all, bins, binning);
            expect(found.reduce((sum, bin) => sum + bin.count, 0)).toBe(all.length);
            expect(calibrationError(all, bins, binning).l1).toBeLessThanOrEqual(1);
          }
        },
      ),
      { seed: 20, numRuns: 100 },
    );
  });
});
