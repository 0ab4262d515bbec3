import { describe, expect, it } from "vitest";
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
