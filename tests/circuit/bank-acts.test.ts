import { describe, expect, it } from "vitest";
import { openSimulator, simulateBlock } from "../../src/circuit/bank.ts";
import { createJoint } from "../../src/circuit/joint.ts";
import { standBank } from "../../src/circuit/standing-bank.ts";
import type { CircuitAct } from "../../src/domain/circuit.ts";
import type { CircuitEvidence } from "../../src/domain/joint-likelihood.ts";
import { circuitShares } from "../helpers/circuit-priors.ts";
import { circuitNamed, posterior, read, smallBank, told } from "../helpers/circuits.ts";

/** Covers what a bank holds of its machines after acts, and the names it is kept under. */
const circuit = circuitNamed("garden-tractor");
const bank = smallBank(circuit, 300);
const joint = createJoint([{ bank, weight: 1 }]);

const readAfter = (observation: string, value: number, after: CircuitAct): CircuitEvidence => ({
  ...read(observation, value),
  after,
});
const chance = (evidence: readonly CircuitEvidence[], hypothesis: string): number =>
  Math.exp(joint.logLikelihood(evidence)[joint.hypotheses.indexOf(hypothesis)] ?? 0);
const given = (
  before: readonly CircuitEvidence[],
  after: CircuitEvidence,
  hypothesis: string,
): number => chance([...before, after], hypothesis) / chance(before, hypothesis);

describe("machines after an act", () => {
  it("crank once the flat battery is charged, and show more volts at rest", () => {
    const clicks = [told("on-start", "fast-clicks"), read("battery-rest-volts", 11.7)];
    const full = readAfter("battery-rest-volts", 12.6, "charge");
    const turns = told("on-start", "turns", 0.9, "charge");
    expect(given(clicks, turns, "battery-flat")).toBeGreaterThan(0.6);
    expect(given(clicks, full, "battery-flat")).toBeGreaterThan(
      10 * given(clicks, full, "battery-dead"),
    );
  });

  it("lose the drop at a clamp once it is cleaned, and at no other joint", () => {
    const found = [told("on-start", "fast-clicks"), read("battery-rest-volts", 12.6)];
    const turns = told("on-start", "turns", 0.9, "clean");
    expect(given(found, turns, "minus-clamp-corroded")).toBeGreaterThan(0.6);
    expect(given(found, turns, "earth-strap-corroded")).toBeLessThan(0.1);
    expect(
      given(found, told("on-start", "turns", 0.9, "earth-lead"), "earth-strap-corroded"),
    ).toBeGreaterThan(0.6);
  });

  it("are the same machines as before: evidence of both times is weighed together", () => {
    // 12.3 V at rest and it clicked; the clamps were cleaned, now it cranks slowly at 9.6 V: the
    // clamp was bad and the battery is not good either, or the battery alone was bad from the start.
    const found = [told("on-start", "fast-clicks"), read("battery-rest-volts", 12.3)];
    const after = [
      told("on-start", "slow", 0.9, "clean"),
      readAfter("battery-start-volts", 9.6, "clean"),
    ];
    const before = posterior(joint, found, circuitShares);
    const now = posterior(joint, [...found, ...after], circuitShares);
    const clamps = (p: ReadonlyMap<string, number>) =>
      (p.get("plus-clamp-corroded") ?? 0) + (p.get("minus-clamp-corroded") ?? 0);
    expect(clamps(now)).toBeGreaterThan(1.2 * clamps(before));
    expect(now.get("earth-strap-corroded")).toBeLessThan(before.get("earth-strap-corroded") ?? 0);
    const low = readAfter("battery-start-volts", 9.2, "clean");
    const rested = (volts: number) => [
      told("on-start", "fast-clicks"),
      read("battery-rest-volts", volts),
    ];
    // Few machines chatter, rest so high and fall so low: this takes many.
    const many = simulateBlock(openSimulator(circuit), {
      ...{ hypothesis: "minus-clamp-corroded", celsius: 20, kelvinAround: 4 },
      ...{ seed: 1, machines: 2000 },
    });
    const clamp = createJoint([{ bank: standBank(circuit, [many]), weight: 1 }]);
    const lowAfter = (volts: number) =>
      (clamp.logLikelihood([...rested(volts), low])[0] ?? 0) -
      (clamp.logLikelihood(rested(volts))[0] ?? 0);
    expect(lowAfter(12.2)).toBeGreaterThan(lowAfter(12.7) + Math.log(1.7));
  });

  it("are not measured where nobody would: after bridging, or at rest after cleaning", () => {
    expect(joint.weighs(readAfter("battery-start-volts", 9.6, "bridge"))).toBe(false);
    expect(joint.weighs(readAfter("battery-rest-volts", 12.6, "clean"))).toBe(false);
    expect(joint.weighs(readAfter("battery-start-volts", 9.6, "clean"))).toBe(true);
    expect(joint.weighs({ ...told("lights-at-start", "dim"), after: "charge" })).toBe(true);
    expect(joint.weighs({ ...told("turns-by-hand", "free"), after: "charge" })).toBe(false);
  });
});
