import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  fluxAt,
  type Motor,
  runningPoint,
  stalledAmps,
  stalledTorque,
} from "../../src/circuit/motor.ts";

const series: Motor = {
  ...{ ohms: 0.0046, flux: 0.042, saturationAmps: 45, brushVolts: 0.5, frictionNm: 1.1 },
};
const permanent: Motor = {
  ...{ ohms: 0.022, flux: 0.0151, saturationAmps: 0, brushVolts: 0.65, frictionNm: 0.3 },
};
/** A bench supply: the volts at the motor's terminals. */
const bench = (volts: number) => ({ volts, ohms: 0 });
const noLoad = { fixedNm: 0, perRadianNm: 0 };

describe("the starter motor", () => {
  it("locked at 4 V draws what two car makers print: 680 to 980 A", () => {
    const amps = stalledAmps(series, bench(4));
    expect(amps).toBeGreaterThan(680);
    expect(amps).toBeLessThan(980);
  });

  it("running free at 11 V draws at most the 90 A that three car makers print", () => {
    const { amps, speed } = runningPoint(series, bench(11), noLoad);
    expect(amps).toBeLessThan(90);
    // Geared starters: at least 1820 rpm at the pinion; the armature runs several times faster.
    expect(speed * 9.549).toBeGreaterThan(1820);
  });

  it("built from those two ends meets the printed load point between: 9.1 Nm at 300 A", () => {
    const torque = fluxAt(series, 300) * 300 - series.frictionNm;
    expect(Math.abs(torque / 9.1 - 1)).toBeLessThan(0.15);
    const point = runningPoint(series, bench(7.7), { fixedNm: 9.1, perRadianNm: 0 });
    const share = (9.1 * point.speed) / (7.7 * point.amps);
    // Printed load points give 33 to 46 %; the model has no gear losses before the drive's own.
    expect(share).toBeGreaterThan(0.25);
    expect(share).toBeLessThan(0.75);
  });

  it("agrees with the closed form of a permanent-magnet motor", () => {
    // k I = friction + a + b w and w = (V' − R I) / k give I = (Tf + a + b V'/k) / (k + b R/k).
    const feed = { volts: 12.3, ohms: 0.018 };
    const load = { fixedNm: 0.5, perRadianNm: 0.001 };
    const k = permanent.flux;
    const push = feed.volts - permanent.brushVolts;
    const ohms = feed.ohms + permanent.ohms;
    const amps =
      (permanent.frictionNm + load.fixedNm + (load.perRadianNm * push) / k) /
      (k + (load.perRadianNm * ohms) / k);
    const point = runningPoint(permanent, feed, load);
    expect(point.amps).toBeCloseTo(amps, 9);
    expect(point.speed).toBeCloseTo((push - ohms * amps) / k, 6);
  });

  it("balances torque wherever it runs, and stands where it cannot", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 13, noNaN: true }),
        fc.double({ min: 0, max: 0.02, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (volts, ohms, fixedNm) => {
          const feed = { volts, ohms };
          const point = runningPoint(series, feed, { fixedNm, perRadianNm: 0.002 });
          if (stalledTorque(series, feed) <= fixedNm) {
            expect(point.speed).toBe(0);
            return;
          }
          const made = fluxAt(series, point.amps) * point.amps - series.frictionNm;
          expect(made).toBeCloseTo(fixedNm + 0.002 * point.speed, 6);
        },
      ),
      { numRuns: 100, seed: 3 },
    );
  });

  it("draws nothing below its brush drop", () => {
    expect(stalledAmps(series, bench(0.3))).toBe(0);
  });
});
