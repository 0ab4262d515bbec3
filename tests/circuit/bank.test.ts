import { describe, expect, it } from "vitest";
import {
  hypothesesOf,
  NOTHING_WRONG,
  openSimulator,
  simulateBlock,
} from "../../src/circuit/bank.ts";
import { bandsAround, bandsAt, bankHypotheses, weighBanks } from "../../src/circuit/bank-build.ts";
import { createJoint } from "../../src/circuit/joint.ts";
import { circuitNamed, read, smallBank, told } from "../helpers/circuits.ts";

/** Covers banks and how their temperature bands are weighed. */
const circuit = circuitNamed("compact-tractor");
const request = { hypothesis: "battery-flat", celsius: 20, kelvinAround: 4, seed: 7, machines: 40 };

describe("a bank", () => {
  it("is a function of circuit, request and seed, whatever ran before", () => {
    const fresh = simulateBlock(openSimulator(circuit), request);
    const used = openSimulator(circuit);
    simulateBlock(used, { ...request, hypothesis: "hydrolock" });
    expect(simulateBlock(used, request)).toEqual(fresh);
    expect(simulateBlock(used, { ...request, seed: 8 })).not.toEqual(fresh);
  });

  it("holds nothing wrong and every fault, then the pairs asked for", () => {
    const pairs = ["charging-failed+plus-clamp-corroded"];
    const all = bankHypotheses(circuit, { band: "mild", seed: 1, machines: 1, pairs });
    expect(all[0]).toBe(NOTHING_WRONG);
    expect(all).toHaveLength(hypothesesOf(circuit).length + 1);
  });

  it("simulates two faults together: the earliest blocked stage is what is heard", () => {
    const simulator = openSimulator(circuit);
    const pair = { ...request, hypothesis: "fuse-blown+engine-seized" };
    const alone = { ...request, hypothesis: "fuse-blown" };
    const symptoms = (r: typeof request) =>
      simulateBlock(simulator, r).codes["symptom"]?.map((code) => code >> 1);
    expect(new Set(symptoms(pair))).toEqual(new Set(symptoms(alone)));
    expect(symptoms(alone)).toHaveLength(40);
    expect(() => simulateBlock(simulator, { ...request, hypothesis: "gremlins" })).toThrow(
      /gremlins/,
    );
  });

  it("does not let a harmless fault steal the frost's symptoms", () => {
    // At −15 °C healthy machines crank slowly; a standing leak of control wiring does not explain
    // that, because its twin without the fault is just as slow.
    const cold = { ...request, celsius: -15, machines: 120 };
    const simulator = openSimulator(circuit);
    const harmless = simulateBlock(simulator, { ...cold, hypothesis: "fuse-holder-corroded" });
    const slow = harmless.codes["symptom"] ?? new Uint8Array();
    let slowAndNoticed = 0;
    let slowAll = 0;
    slow.forEach((code, i) => {
      if (code >> 1 !== 6) return;
      slowAll += 1;
      slowAndNoticed += harmless.noticed[i] ?? 0;
    });
    expect(slowAll).toBeGreaterThan(0);
    expect(slowAndNoticed).toBeLessThan(slowAll);
  });

  it("makes thick oil matter only in the cold", () => {
    const noticed = (celsius: number) => {
      const block = simulateBlock(openSimulator(circuit), {
        ...request,
        ...{ hypothesis: "thick-oil", celsius },
      });
      return block.noticed.reduce((sum, one) => sum + one, 0) / block.machines;
    };
    expect(noticed(-15)).toBeGreaterThan(noticed(20) + 0.2);
  });
});

describe("temperature bands", () => {
  it("are interpolated between their middles and held beyond the ends", () => {
    expect(bandsAt(20)).toEqual([{ band: "mild", weight: 1 }]);
    expect(bandsAt(10)).toEqual([
      { band: "frost", weight: 0.5 },
      { band: "mild", weight: 0.5 },
    ]);
    expect(bandsAt(-40)).toEqual([{ band: "hard-frost", weight: 1 }]);
    expect(bandsAt(50)).toEqual([{ band: "hot", weight: 1 }]);
  });

  it("spread out when the temperature is uncertain, and always sum to one", () => {
    for (const [mean, spread] of [
      [12, 8],
      [-3, 2],
      [30, 15],
    ] as const) {
      const bands = bandsAround(mean, spread);
      expect(bands.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
    }
    expect(bandsAround(10, 10).length).toBeGreaterThan(2);
  });

  it("average the likelihood over them", () => {
    const mild = smallBank(circuit, 40);
    const twice = weighBanks([
      { bank: mild, weight: 3 },
      { bank: mild, weight: 1 },
      { bank: mild, weight: 0 },
    ]);
    expect(twice.map(({ weight }) => weight)).toEqual([0.75, 0.25]);
    const evidence = [told("on-start", "slow"), read("battery-rest-volts", 12.2)];
    const mixed = createJoint(twice).logLikelihood(evidence);
    const alone = createJoint([{ bank: mild, weight: 1 }]).logLikelihood(evidence);
    mixed.forEach((log, h) => void expect(log).toBeCloseTo(alone[h] ?? 0, 9));
  });
});
