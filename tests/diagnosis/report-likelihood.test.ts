import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bandWeights } from "../../src/diagnosis/report-likelihood.ts";
import { OutOfRange } from "../../src/domain/result.ts";
import { makeObservation } from "../helpers/knowledge-maker.ts";

const rest = makeObservation("rest-volts", ["flat", "low", "full"], [0.2, 0.3, 0.5], {
  kind: "number",
  states: [
    { id: "flat", title: "flat", to: 11.8 },
    { id: "low", title: "low", from: 11.8, to: 12.4 },
    { id: "full", title: "full", from: 12.4 },
  ],
  scalesWithVolts: true,
  meterError: { absolute: 0.03, relative: 0.005 },
});

describe("a reading as bands", () => {
  it("gives chances that sum to 1 and follow the reading", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 30, noNaN: true }), (volts) => {
        const weights = bandWeights(rest, volts, 12) ?? new Float64Array();
        expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 9);
        const rising = bandWeights(rest, volts + 0.1, 12)?.[2] ?? 0;
        expect(rising).toBeGreaterThanOrEqual((weights[2] ?? 0) - 1e-7);
      }),
      { seed: 111, numRuns: 200 },
    );
  });

  it("is even on the edge of two bands, and scales with the system's volts", () => {
    const edge = bandWeights(rest, 12.4, 12);
    expect(edge?.[1]).toBeCloseTo(0.5, 6);
    expect(edge?.[2]).toBeCloseTo(0.5, 6);
    expect(bandWeights(rest, 25.2, 24)?.[2]).toBeGreaterThan(0.99);
    expect(bandWeights(rest, 6.3, 6)?.[2]).toBeGreaterThan(0.7);
    expect(bandWeights(rest, 6.3, 12)?.[0]).toBeGreaterThan(0.99);
  });

  it("is sharp without meter error, and refuses what is no number", () => {
    const exact = makeObservation("v", ["lo", "hi"], [0.5, 0.5], {
      kind: "number",
      states: [
        { id: "lo", title: "lo", to: 12 },
        { id: "hi", title: "hi", from: 12 },
      ],
    });
    expect([...(bandWeights(exact, 12, 12) ?? [])]).toEqual([0, 1]);
    expect([...(bandWeights(exact, 11.99, 12) ?? [])]).toEqual([1, 0]);
    expect(() => bandWeights(exact, Number.NaN, 12)).toThrow(OutOfRange);
  });
});
