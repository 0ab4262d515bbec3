import { describe, expect, it } from "vitest";
import { createRandom } from "../../src/circuit/random.ts";
import { choose, drawFigure, middleOf } from "../../src/circuit/spread.ts";
import type { Spread } from "../../src/domain/circuit.ts";

const draws = (spread: Spread, count = 4000) => {
  const random = createRandom(5, "spread");
  return Array.from({ length: count }, () => drawFigure(spread, random)).sort((a, b) => a - b);
};

describe("spreads", () => {
  it("keep an even spread between its ends", () => {
    const values = draws({ kind: "even", low: 3, high: 5 });
    expect(values[0]).toBeGreaterThanOrEqual(3);
    expect(values.at(-1)).toBeLessThanOrEqual(5);
    expect(values[2000]).toBeCloseTo(4, 1);
  });

  it("put two in three of an about-spread between middle ÷ factor and middle × factor", () => {
    const values = draws({ kind: "about", middle: 10, spread: 2 });
    const inside = values.filter((v) => v > 5 && v < 20).length / values.length;
    expect(inside).toBeGreaterThan(0.65);
    expect(inside).toBeLessThan(0.72);
    expect(Math.abs((values[2000] ?? 0) - 10)).toBeLessThan(0.6);
  });

  it("never leave their limits", () => {
    const spread: Spread = { kind: "normal", middle: 0, spread: 10, low: -1, high: 1 };
    for (const value of draws(spread, 500)) expect(Math.abs(value)).toBeLessThanOrEqual(1);
  });

  it("draw choices by weight and take the likeliest for the middle", () => {
    const exact = (value: number): Spread => ({ kind: "exact", value });
    const spread: Spread = {
      kind: "choice",
      choices: [
        { weight: 1, spread: exact(1) },
        { weight: 3, spread: exact(2) },
      ],
    };
    expect(draws(spread).filter((v) => v === 2).length / 4000).toBeCloseTo(0.75, 1);
    expect(middleOf(spread)).toBe(2);
    expect(() => choose([], createRandom(1, "x"))).toThrow(RangeError);
  });
});
