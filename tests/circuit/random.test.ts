import { describe, expect, it } from "vitest";
import { createRandom } from "../../src/circuit/random.ts";

describe("seeded random numbers", () => {
  it("repeat for the same seed and stream and differ for another", () => {
    const draw = (seed: number, stream: string) => {
      const random = createRandom(seed, stream);
      return Array.from({ length: 5 }, () => random.next());
    };
    expect(draw(7, "a")).toEqual(draw(7, "a"));
    expect(draw(7, "a")).not.toEqual(draw(7, "b"));
    expect(draw(7, "a")).not.toEqual(draw(8, "a"));
  });

  it("fill [0, 1) evenly", () => {
    const random = createRandom(1, "even");
    const counts = new Array<number>(10).fill(0);
    for (let i = 0; i < 20_000; i++) {
      const value = random.next();
      counts[Math.floor(value * 10)] = (counts[Math.floor(value * 10)] ?? 0) + 1;
    }
    expect(counts.reduce((sum, n) => sum + n, 0)).toBe(20_000);
    expect(counts).toHaveLength(10);
    // Chi square of 9 degrees of freedom: 27.9 is passed by chance once in a thousand.
    const chiSquare = counts.reduce((sum, n) => sum + (n - 2000) ** 2 / 2000, 0);
    expect(chiSquare).toBeLessThan(27.9);
  });

  it("give a normal distribution of mean 0 and deviation 1", () => {
    const random = createRandom(3, "normal");
    const values = Array.from({ length: 20_000 }, () => random.normal());
    const mean = values.reduce((a, b) => a + b, 0) / values.length;
    const square = values.reduce((a, b) => a + b * b, 0) / values.length;
    const beyondTwo = values.filter((v) => Math.abs(v) > 2).length / values.length;
    expect(mean).toBeCloseTo(0, 1);
    expect(square).toBeCloseTo(1, 1);
    expect(beyondTwo).toBeGreaterThan(0.04);
    expect(beyondTwo).toBeLessThan(0.051);
  });
});
