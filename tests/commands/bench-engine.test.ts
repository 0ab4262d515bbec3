import { describe, expect, it } from "vitest";
import { benchEngine, spentOn } from "../../src/commands/bench-engine.ts";
import { compareLibrary } from "../../src/commands/bench-library.ts";
import { compareOrders } from "../../src/commands/bench-orders.ts";
import { syntheticAnswers, syntheticKnowledge } from "../../src/commands/synthetic-knowledge.ts";
import { compileModel } from "../../src/diagnosis/compile.ts";

describe("the bench of the engine", () => {
  const knowledge = syntheticKnowledge({ faults: 20, observations: 12, pairs: true, seed: 3 });

  it("measures the engine's plan against fixed orders on the same troubles, repeatably", () => {
    const costs = compareOrders(knowledge, { calls: 6, seed: 5 });
    expect(compareOrders(knowledge, { calls: 6, seed: 5 })).toEqual(costs);
    for (const minutes of Object.values(costs)) expect(minutes).toBeGreaterThan(0);
    expect(costs.engine).toBeLessThan(costs.cheap);
  });

  it("holds the same network as the library, which is there in development", () => {
    const { name, ratio } = compareLibrary({ seed: 4 });
    expect(name).toBe("bayesjs");
    expect(ratio).toBeGreaterThan(1);
  });

  it("invents knowledge that compiles, the same for the same seed", () => {
    const size = { faults: 20, observations: 12, pairs: true, seed: 3 };
    expect(syntheticKnowledge(size)).toEqual(knowledge);
    expect(compileModel(knowledge, { kind: "other" }).hypotheses.count).toBeGreaterThan(22);
    expect(syntheticAnswers(knowledge, 5, 1).reports).toHaveLength(5);
  });
});

describe("the whole bench of the engine", () => {
  it("measures every part, and how the update grows over the sizes it tells", () => {
    const found = benchEngine(null, { repeats: 2, calls: 2, seed: 1 });
    expect(found.faults).toBe(100);
    expect(found.hypotheses).toBeGreaterThan(found.faults);
    for (const { medianMs, p99Ms } of [found.compile, found.update, found.next, found.plan]) {
      expect(medianMs).toBeGreaterThan(0);
      expect(p99Ms).toBeGreaterThanOrEqual(medianMs);
    }
    const { points, exponent } = found.growth;
    expect(points.map(({ faults }) => faults)).toEqual([25, 50, 100, 200, 400]);
    // The slope of the line through the logarithms, worked out by its two-point differences:
    // the sizes double, so their weights about the middle are -2, -1, 0, 1, 2.
    const logs = points.map(({ medianMs }) => Math.log2(medianMs));
    const byHand = logs.reduce((sum, log, n) => sum + (n - 2) * log, 0) / 10;
    expect(exponent).toBeCloseTo(byHand, 9);
    expect(found.orders).toEqual(
      compareOrders(syntheticKnowledge({ faults: 100, observations: 80, pairs: true, seed: 1 }), {
        calls: 2,
        seed: 1,
      }),
    );
  }, 120_000);

  it("takes the middle of the calls and the slowest of few, after a warm-up", () => {
    let calls = 0;
    const { medianMs, p99Ms } = spentOn(() => {
      calls += 1;
    }, 7);
    expect(calls).toBe(5 + 7);
    expect(p99Ms).toBeGreaterThanOrEqual(medianMs);
  });
});
