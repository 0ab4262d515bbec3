import { describe, expect, it } from "vitest";
import { openSimulator, simulateBlock } from "../../src/circuit/bank.ts";
import { createJoint } from "../../src/circuit/joint.ts";
import { standBank } from "../../src/circuit/standing-bank.ts";
import type { CircuitAct } from "../../src/domain/circuit.ts";
import type { CircuitEvidence } from "../../src/domain/joint-likelihood.ts";
import { circuitNamed, read, smallBank, told } from "../helpers/circuits.ts";

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
    // Few machines chatter, rest so high and fall so low: it takes many.
    const many = (hypothesis: string) => {
      const block = simulateBlock(openSimulator(circuit), {
        ...{ hypothesis, celsius: 20, kelvinAround: 4, seed: 1, machines: 2000 },
      });
      return createJoint([{ bank: standBank(circuit, [block]), weight: 1 }]);
    };
    const clamp = many("minus-clamp-corroded");
    const now = (one: typeof clamp) => one.logLikelihood([...found, ...after])[0] ?? 0;
    const asFound = (one: typeof clamp) => one.logLikelihood(found)[0] ?? 0;
    const strap = many("earth-strap-corroded");
    expect(now(clamp) - asFound(clamp)).toBeGreaterThan(now(strap) - asFound(strap) + Math.log(2));
    const low = readAfter("battery-start-volts", 9.2, "clean");
    const rested = (volts: number) => [
      told("on-start", "fast-clicks"),
      read("battery-rest-volts", volts),
    ];
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
