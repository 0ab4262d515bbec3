import { describe, expect, it } from "vitest";
import { coldFactor, crankshaftDrag, oilViscosity } from "../../src/circuit/engine-drag.ts";
import type { Oil } from "../../src/domain/circuit.ts";

const tenThirty: Oil = { id: "10W-30", cold: [-25, 4900], warm: [27, 110] };
const twentyFifty: Oil = { id: "20W-50", cold: [-15, 6650], warm: [27, 320] };

describe("the engine's drag", () => {
  it("goes through both ends of an oil's line and falls with warmth", () => {
    expect(oilViscosity(tenThirty, -25)).toBeCloseTo(4900, 3);
    expect(oilViscosity(tenThirty, 27)).toBeCloseTo(110, 6);
    for (let c = -30; c < 50; c += 5) {
      expect(oilViscosity(tenThirty, c)).toBeGreaterThan(oilViscosity(tenThirty, c + 5));
    }
  });

  // The trade's table of what an engine needs against cold; origin unknown, widely copied.
  it.each([
    [0, 155],
    [-17.8, 210],
  ])("at %f °C asks for %i %% of its warm torque within 20 points", (celsius, percent) => {
    const factor = coldFactor(tenThirty, tenThirty, celsius);
    expect(Math.abs(100 * factor - percent)).toBeLessThan(20);
  });

  it("is one when warm with its usual oil and more with a thicker one", () => {
    expect(coldFactor(tenThirty, tenThirty, 27)).toBeCloseTo(1, 12);
    expect(coldFactor(twentyFifty, tenThirty, -15)).toBeGreaterThan(
      1.2 * coldFactor(tenThirty, tenThirty, -15),
    );
  });

  it("reaches the stated torque at the stated speed", () => {
    const { fixedNm, perRadianNm } = crankshaftDrag(36, 1, 22);
    expect(fixedNm + 22 * perRadianNm).toBeCloseTo(36, 12);
  });
});
