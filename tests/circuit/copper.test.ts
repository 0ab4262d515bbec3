import { describe, expect, it } from "vitest";
import { cableOhms, copperFactor, gaugeSquareMm } from "../../src/circuit/copper.ts";

describe("copper", () => {
  // ASTM B258 gauges at 20 °C, ohm per km, as printed in two wire tables.
  it.each([
    [20, 0.5176, 33.31],
    [14, 2.0809, 8.285],
    [6, 13.302, 1.296],
    [4, 21.151, 0.8152],
    [2, 33.631, 0.5127],
    [0, 53.475, 0.3224],
    [-3, 107.22, 0.1608],
  ])("makes gauge %i %f mm² and %f ohm per km", (gauge, squareMm, ohmsPerKm) => {
    expect(gaugeSquareMm(gauge) / squareMm).toBeCloseTo(1, 3);
    expect(cableOhms(gaugeSquareMm(gauge), 1000) / ohmsPerKm).toBeCloseTo(1, 3);
  });

  it("rejects a much-copied chart that prints 10 AWG 0.8441 and 8 AWG 0.6529 ohm per 1000 ft", () => {
    // One gauge is a ratio of 1.261, two are 1.590; the chart's two rows are 1.293 apart.
    const ratio = cableOhms(gaugeSquareMm(10), 1) / cableOhms(gaugeSquareMm(8), 1);
    expect(ratio).toBeCloseTo(1.59, 2);
    expect(Math.abs(0.8441 / 0.6529 - ratio)).toBeGreaterThan(0.2);
  });

  it("drops 0.08 V at 100 A over 3 ft of 4 AWG (diesel maker's worked example, stranded cable)", () => {
    expect(100 * cableOhms(gaugeSquareMm(4), 3 * 0.3048)).toBeCloseTo(0.08, 1);
  });

  it("finds one constant resistance behind a marine engine maker's cable table", () => {
    // Size in mm² against the greatest length there and back in m.
    const table = [
      [25, 1.3],
      [35, 1.8],
      [50, 2.6],
      [70, 3.7],
      [95, 4.8],
    ] as const;
    for (const [size, metres] of table) {
      const milliohms = 1000 * cableOhms(size, metres);
      expect(milliohms).toBeGreaterThan(0.86);
      expect(milliohms).toBeLessThan(0.92);
    }
  });

  it("follows the standard's temperature coefficient", () => {
    expect(copperFactor(20)).toBe(1);
    expect(copperFactor(-20)).toBeCloseTo(0.843, 3);
    expect(copperFactor(75)).toBeCloseTo(1.216, 3);
  });
});
