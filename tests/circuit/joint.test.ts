import { describe, expect, it } from "vitest";
import { NOTHING_WRONG } from "../../src/circuit/bank.ts";
import { createJoint } from "../../src/circuit/joint.ts";
import type { CircuitEvidence } from "../../src/domain/joint-likelihood.ts";
import { circuitShares } from "../helpers/circuit-priors.ts";
import { circuitNamed, posterior, read, smallBank, told } from "../helpers/circuits.ts";

/** Covers the joint likelihood with its readings, evidence tables and standing bank. */
const circuit = circuitNamed("garden-tractor");
const bank = smallBank(circuit, 200);
const joint = createJoint([{ bank, weight: 1 }]);
const evidence: readonly CircuitEvidence[] = [
  told("on-start", "fast-clicks"),
  read("battery-rest-volts", 12.6),
  read("battery-start-volts", 12.1),
  read("stud-start-volts", 6.2),
  read("plus-clamp-drop-volts", 5.8),
];

describe("the joint likelihood", () => {
  it("is a probability: likelihoods of the states of one observation sum to one", () => {
    const sums = new Float64Array(joint.hypotheses.length);
    for (const state of joint.statesOf("on-start")) {
      const weights = { [state]: 1 };
      const one = joint.logLikelihood([{ kind: "state", observation: "on-start", weights }]);
      one.forEach((log, h) => {
        sums[h] = (sums[h] ?? 0) + Math.exp(log);
      });
    }
    for (const sum of sums) expect(sum).toBeCloseTo(1, 4);
  });

  it("does not depend on the order of the answers, nor on what was asked before", () => {
    const forward = joint.logLikelihood(evidence);
    const backward = createJoint([{ bank, weight: 1 }]).logLikelihood(evidence.toReversed());
    forward.forEach((log, h) => void expect(log).toBeCloseTo(backward[h] ?? 0, 9));
    joint.logLikelihood(evidence.slice(0, 2));
    expect(joint.logLikelihood(evidence)).toEqual(forward);
  });

  it("follows the chain rule: P(a, b) = P(a) P(b | a)", () => {
    const known = evidence.slice(0, 2);
    const after = joint.predictive(known, { observation: "lights-at-start" });
    const states = joint.statesOf("lights-at-start");
    const before = joint.logLikelihood(known);
    states.forEach((state, s) => {
      const item = { kind: "state", observation: "lights-at-start", weights: { [state]: 1 } };
      const both = joint.logLikelihood([...known, { ...item, kind: "state" }]);
      both.forEach((log, h) => {
        const chance = after[h * states.length + s] ?? 0;
        expect(Math.exp(log - (before[h] ?? 0))).toBeCloseTo(chance, 4);
      });
    });
  });

  it("gives rows that sum to one, for states, acts and bands of volts", () => {
    for (const question of [
      { observation: "on-start" },
      { observation: "on-start", after: "jump" },
      { observation: "jump-start" },
      { observation: "ground-drop-volts", edges: [0.2, 0.5, 1] },
    ] as const) {
      const rows = joint.predictive(evidence.slice(0, 2), question);
      const width = rows.length / joint.hypotheses.length;
      for (let h = 0; h < joint.hypotheses.length; h++) {
        const row = rows.subarray(h * width, (h + 1) * width);
        expect(row.reduce((a, b) => a + b)).toBeCloseTo(1, 9);
      }
    }
  });

  it("finds the corroded plus clamp, and expects what was measured", () => {
    const found = posterior(joint, evidence, circuitShares);
    expect(found.get("plus-clamp-corroded")).toBeGreaterThan(0.9);
    const h = joint.hypotheses.indexOf("plus-clamp-corroded");
    const drop = joint.expected(evidence.slice(0, 4), "plus-clamp-drop-volts")[h];
    // A meter cannot follow the chatter, so the range is wide; a sound clamp shows next to 0 V.
    expect(drop?.low).toBeGreaterThan(2.5);
    expect(drop?.high).toBeLessThan(9);
    expect(drop?.median).toBeGreaterThanOrEqual(drop?.low ?? 0);
  });

  it("lets doubt about where the probes were soften a reading", () => {
    // 6.9 V "at the battery" with a bad plus clamp is the clamp; at the post it must be the battery.
    const volts = read("battery-start-volts", 6.9);
    const chatter = told("on-start", "fast-clicks");
    const rest = read("battery-rest-volts", 12.6);
    const clamp = (places?: Record<string, number>) =>
      posterior(
        joint,
        [chatter, rest, { ...volts, ...(places ? { places } : {}) }],
        circuitShares,
      ).get("plus-clamp-corroded") ?? 0;
    expect(clamp({ post: 0.5, clamp: 0.5 })).toBeGreaterThan(2 * clamp());
    expect(clamp({ clamp: 1 })).toBeGreaterThan(clamp({ post: 0.5, clamp: 0.5 }));
  });

  it("weighs reports of what came after an act", () => {
    const after = [told("on-start", "fast-clicks"), told("on-start", "turns", 0.95, "clean")];
    const found = posterior(joint, after, circuitShares);
    const clamps = ["plus-clamp-corroded", "minus-clamp-corroded"].map((id) => found.get(id) ?? 0);
    expect(clamps.reduce((a, b) => a + b)).toBeGreaterThan(0.7);
  });

  it("stays finite whatever is said: 48 V on a 12 V machine, everything at once", () => {
    const wild = [
      ...evidence,
      read("battery-rest-volts", 48),
      told("on-start", "turns", 1),
      told("lights-on", "dead", 1),
      read("battery-start-volts", 0),
    ];
    for (const log of joint.logLikelihood(wild)) expect(Number.isFinite(log)).toBe(true);
    for (const share of joint.predictive(wild, { observation: "on-start" })) {
      expect(Number.isFinite(share)).toBe(true);
    }
  });

  it("mixes banks: a machine of 6 or 12 V is either", () => {
    const six = smallBank(circuitNamed("old-tractor-6v"), 60);
    const twelve = smallBank(circuitNamed("old-tractor-12v"), 60);
    const either = createJoint([
      { bank: six, weight: 0.5 },
      { bank: twelve, weight: 0.5 },
    ]);
    expect(either.hypotheses).toContain("solenoid-hold-in-open");
    const rest = [read("battery-rest-volts", 6.25, 0.05)];
    const h = either.hypotheses.indexOf(NOTHING_WRONG);
    const only6 = createJoint([{ bank: six, weight: 1 }]);
    const own = only6.logLikelihood(rest)[only6.hypotheses.indexOf(NOTHING_WRONG)] ?? 0;
    // Half of it stands on 6 V machines, next to nothing on the others.
    expect(either.logLikelihood(rest)[h]).toBeCloseTo(own - Math.LN2, 1);
  });

  it("says what it cannot weigh and refuses it", () => {
    expect(joint.weighs(told("spark", "none", 1))).toBe(false);
    expect(joint.weighs({ ...told("lights-on", "dim"), after: "jump" })).toBe(false);
    expect(joint.weighs(read("fuel-volts", 3))).toBe(false);
    expect(() => joint.logLikelihood([told("spark", "none", 1)])).toThrow(RangeError);
    expect(joint.observations.has("battery-rest-volts")).toBe(true);
  });

  it("knows how often a fault is noticed", () => {
    const noticed = (fault: string) => joint.noticed[joint.hypotheses.indexOf(fault)] ?? -1;
    expect(noticed("fuse-blown")).toBe(1);
    expect(noticed("thick-oil")).toBeLessThan(0.2);
  });

  it("speaks only for test points that all the circuits have", () => {
    const garden = circuitNamed("garden-tractor");
    const compact = circuitNamed("compact-tractor");
    const both = createJoint([
      { bank: smallBank(garden, 20), weight: 0.5 },
      { bank: smallBank(compact, 20), weight: 0.5 },
    ]);
    const points = (circuit: typeof garden) => circuit.testPoints.map(({ id }) => id);
    const alone = points(garden).filter((id) => !points(compact).includes(id));
    expect(alone.length).toBeGreaterThan(0);
    for (const id of alone) expect(both.observations.has(id)).toBe(false);
    expect(both.observations.has("battery-rest-volts")).toBe(true);
  });
});
