import fc from "fast-check";
import { Matrix, solve } from "ml-matrix";
import { describe, expect, it } from "vitest";
import {
  createWorkspace,
  type Link,
  planElimination,
  solveNetwork,
} from "../../src/circuit/star-mesh.ts";

interface Resistor extends Link {
  readonly siemens: number;
}

/** Volts of every point for one pattern of currents; every point leaks 1e-7 S to the reference. */
function volts(points: number, resistors: readonly Resistor[], amps: readonly number[]): number[] {
  const { plan, places } = planElimination(points, resistors);
  const room = createWorkspace(plan);
  room.ground.fill(1e-7);
  places.forEach((place, i) => {
    const list = place >= 0 ? room.link : room.ground;
    const at = place >= 0 ? place : -1 - place;
    list[at] = (list[at] ?? 0) + (resistors[i]?.siemens ?? 0);
  });
  room.first.set(amps);
  solveNetwork(plan, room);
  return [...room.first];
}

describe("the star-mesh solver", () => {
  it("divides 12 V by two resistors: 1 ohm over 3 ohm leaves 9 V", () => {
    // 12 V behind 1 ohm is 12 A into 1 S; 3 ohm to the reference.
    const [middle] = volts(1, [{ from: 0, to: -1, siemens: 1 + 1 / 3 }], [12]);
    expect(middle).toBeCloseTo(9, 5);
  });

  it("finds the Thévenin pair of a bridge by hand: 12 V, arms 1-2 and 2-1 ohm", () => {
    // Left arm 1 over 2 ohm gives 8 V, right arm 2 over 1 ohm gives 4 V: 4 V between the middles.
    // Seen from there the arms are 2/3 + 2/3 = 4/3 ohm.
    const source = 1e6;
    const arms: Resistor[] = [
      { from: 0, to: -1, siemens: source },
      { from: 0, to: 1, siemens: 1 },
      { from: 1, to: -1, siemens: 1 / 2 },
      { from: 0, to: 2, siemens: 1 / 2 },
      { from: 2, to: -1, siemens: 1 },
    ];
    const open = volts(3, arms, [12 * source, 0, 0]);
    expect((open[1] ?? 0) - (open[2] ?? 0)).toBeCloseTo(4, 4);
    const amp = volts(3, arms, [0, 1, -1]);
    expect((amp[1] ?? 0) - (amp[2] ?? 0)).toBeCloseTo(4 / 3, 4);
  });

  it("keeps full precision on a wire that hangs in the air behind 1e9 ohm", () => {
    // 12 V over 1e9 ohm and the two points' leaks of 1e7 ohm: 12 × 5e6 / (1e9 + 5e6) V, while the
    // wire itself is 0.1 milliohm. Ordinary elimination loses nine of sixteen digits here.
    const open = 1e-9;
    const wire: Resistor[] = [
      { from: 0, to: -1, siemens: 1e9 },
      { from: 0, to: 1, siemens: open },
      { from: 1, to: 2, siemens: 1e4 },
    ];
    const found = volts(3, wire, [12e9, 0, 0])[2] ?? 0;
    const expected = (12 * 5e6) / (1e9 + 5e6);
    expect(Math.abs(found / expected - 1)).toBeLessThan(1e-9);
  });

  it("agrees with a linear-algebra library on random networks", () => {
    const network = fc.integer({ min: 2, max: 12 }).chain((points) =>
      fc.record({
        points: fc.constant(points),
        resistors: fc.array(
          fc.record({
            from: fc.integer({ min: 0, max: points - 1 }),
            step: fc.integer({ min: 1, max: points }),
            power: fc.double({ min: -3, max: 3, noNaN: true }),
          }),
          { minLength: points, maxLength: 3 * points },
        ),
        amps: fc.array(fc.double({ min: -10, max: 10, noNaN: true }), {
          minLength: points,
          maxLength: points,
        }),
      }),
    );
    fc.assert(
      fc.property(network, ({ points, resistors, amps }) => {
        const links = resistors.map(({ from, step, power }): Resistor => {
          const to = (from + step) % (points + 1);
          return { from, to: to === points ? -1 : to, siemens: 10 ** power };
        });
        const usable = links.filter(({ from, to }) => from !== to);
        const matrix = Matrix.zeros(points, points);
        for (let p = 0; p < points; p++) matrix.set(p, p, 1e-7);
        for (const { from, to, siemens } of usable) {
          matrix.set(from, from, matrix.get(from, from) + siemens);
          if (to < 0) continue;
          matrix.set(to, to, matrix.get(to, to) + siemens);
          matrix.set(from, to, matrix.get(from, to) - siemens);
          matrix.set(to, from, matrix.get(to, from) - siemens);
        }
        const found = volts(points, usable, amps);
        const check = matrix.mmul(Matrix.columnVector(found)).to1DArray();
        const oracle = solve(matrix, Matrix.columnVector(amps)).to1DArray();
        const size = Math.max(1, ...oracle.map(Math.abs));
        const amount = Math.max(1, ...amps.map(Math.abs));
        for (let p = 0; p < points; p++) {
          // The library loses digits on islands that only leak; the currents it must give back
          // are then the sharper check.
          const close = Math.abs((found[p] ?? 0) - (oracle[p] ?? 0)) < 1e-6 * size;
          const balanced = Math.abs((check[p] ?? 0) - (amps[p] ?? 0)) < 1e-8 * amount * size;
          expect(close || balanced).toBe(true);
        }
      }),
      { numRuns: 150, seed: 11 },
    );
  });

  it("refuses a link from a point to itself", () => {
    expect(() => planElimination(2, [{ from: 1, to: 1 }])).toThrow(RangeError);
  });
});
