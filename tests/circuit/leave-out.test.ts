import { describe, expect, it } from "vitest";
import { createJoint } from "../../src/circuit/joint.ts";
import { bestFits } from "../../src/circuit/leave-out.ts";
import { startWeighing } from "../../src/circuit/weighing.ts";
import type { CircuitEvidence } from "../../src/domain/joint-likelihood.ts";
import { circuitNamed, read, smallBank, told } from "../helpers/circuits.ts";

const bank = smallBank(circuitNamed("garden-tractor"), 80);
const joint = createJoint([{ bank, weight: 1 }]);
const { weighed: start } = startWeighing([{ bank, weight: 1 }], [...bank.blocks.keys()]);
const best = (items: readonly CircuitEvidence[]) => Math.max(...joint.logLikelihood(items));

describe("evidence without one of its items", () => {
  it("fits as well as if that item had never been told", () => {
    const evidence = [
      told("on-start", "fast-clicks"),
      read("battery-start-volts", 12.1),
      read("stud-start-volts", 6.2),
    ];
    const { all, without } = bestFits(start, evidence);
    expect(all).toBeCloseTo(best(evidence), 9);
    expect(without).toHaveLength(evidence.length);
    for (const [i, log] of without.entries()) {
      expect(log).toBeCloseTo(best(evidence.toSpliced(i, 1)), 9);
    }
  });

  it("is weighed as it should where an item rules machines out altogether", () => {
    const evidence = [told("on-start", "turns", 1), told("lights-on", "dead", 1)];
    const { all, without } = bestFits(start, evidence);
    expect(Number.isFinite(all)).toBe(true);
    expect(without[0]).toBeCloseTo(best(evidence.slice(1)), 9);
    expect(without[1]).toBeCloseTo(best(evidence.slice(0, 1)), 9);
  });
});
