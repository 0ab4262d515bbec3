import { describe, expect, it } from "vitest";
import { openSimulator } from "../../src/circuit/bank.ts";
import { createJoint } from "../../src/circuit/joint.ts";
import { ENOUGH_MACHINES, thinLeaders, topUp } from "../../src/circuit/top-up.ts";
import { circuitNamed, read, smallBank, told } from "../helpers/circuits.ts";

const circuit = circuitNamed("garden-tractor");
const bank = smallBank(circuit, 100);
const joint = createJoint([{ bank, weight: 1 }]);
const even = new Float64Array(joint.hypotheses.length);
const evidence = [
  told("on-start", "fast-clicks"),
  read("battery-rest-volts", 12.6),
  read("battery-start-volts", 10.9),
  read("stud-start-volts", 7.2),
];

describe("topping up", () => {
  it("finds close leaders that few machines stand for", () => {
    const thin = thinLeaders(joint, evidence, even);
    expect(thin.length).toBeGreaterThan(0);
    const left = joint.effectiveMachines(evidence);
    for (const name of thin) {
      expect(left[joint.hypotheses.indexOf(name)]).toBeLessThan(ENOUGH_MACHINES);
    }
  });

  it("gives them other machines, the same ones every time", () => {
    const request = { band: "mild", seed: 1, machines: 100, pairs: [] } as const;
    const thin = thinLeaders(joint, evidence, even);
    const [first = ""] = thin;
    const more = topUp(bank, openSimulator(circuit), request, thin);
    expect(more.blocks.get(first)).toHaveLength(2);
    expect(more.blocks.get(first)?.[1]).not.toEqual(bank.blocks.get(first)?.[0]);
    expect(topUp(bank, openSimulator(circuit), request, thin)).toEqual(more);
    const after = createJoint([{ bank: more, weight: 1 }]).effectiveMachines(evidence);
    const h = joint.hypotheses.indexOf(first);
    expect(after[h]).toBeGreaterThan(joint.effectiveMachines(evidence)[h] ?? 0);
  });

  it("leaves a leader alone that nothing comes near", () => {
    const prior = even.slice();
    prior[joint.hypotheses.indexOf("plus-clamp-corroded")] = 50;
    expect(thinLeaders(joint, evidence, prior)).toEqual([]);
  });
});
