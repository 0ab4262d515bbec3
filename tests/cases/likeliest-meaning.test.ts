import { describe, expect, it } from "vitest";
import { likeliestMeanings } from "../../src/cases/likeliest-meaning.ts";
import type { Report } from "../../src/domain/evidence.ts";
import type { Ambiguous } from "../../src/domain/reading.ts";

const unclear = (...options: readonly [string, string, number][]): Ambiguous => ({
  span: [0, 5],
  options: options.map(([observation, state, probability]) => ({
    observation,
    state,
    probability,
  })),
});

const told: Report = {
  observation: "engine-turns",
  epoch: 0,
  reporter: "operator",
  hedge: 0,
  said: { kind: "states", weights: { slow: 1 } },
};

describe("words with several meanings in a written-down case", () => {
  it("enter as their likeliest meaning, no surer than it is likely", () => {
    const words = unclear(["engine-turns", "no", 0.75], ["on-start", "turns-no-fire", 0.25]);
    const [report, ...more] = likeliestMeanings([words], [], "operator");
    expect(more).toEqual([]);
    expect(report).toMatchObject({ observation: "engine-turns", hedge: 0.25 });
    expect(report?.said).toEqual({ kind: "states", weights: { no: 1 } });
  });
  it("enter as open where they leave the states of one thing open", () => {
    const words = unclear(
      ["battery-goes-flat", "overnight", 0.4],
      ["battery-goes-flat", "days", 0.4],
      ["battery-goes-flat", "weeks", 0.2],
    );
    const [report] = likeliestMeanings([words], [], "operator");
    expect(report?.hedge).toBe(0);
    expect(report?.said).toEqual({
      kind: "states",
      weights: { overnight: 0.4, days: 0.4, weeks: 0.2 },
    });
  });
  it("say nothing where no meaning is likelier than not, or where it was told plainly", () => {
    const even = unclear(["engine-turns", "no", 0.45], ["on-start", "starts", 0.55]);
    const split = unclear(["a", "x", 0.4], ["b", "y", 0.35], ["c", "z", 0.25]);
    expect(likeliestMeanings([split], [], "operator")).toEqual([]);
    const words = unclear(["engine-turns", "no", 0.75], ["on-start", "turns-no-fire", 0.25]);
    expect(likeliestMeanings([words], [told], "operator")).toEqual([]);
    expect(likeliestMeanings([even, even], [], "technician")).toHaveLength(1);
  });
});
