import { describe, expect, it } from "vitest";
import { createJoint } from "../../src/circuit/joint.ts";
import { arrange } from "../../src/diagnosis/arrange.ts";
import { updateBelief } from "../../src/diagnosis/belief.ts";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { passagesOf } from "../../src/diagnosis/passages.ts";
import type { ActDone, Evidence } from "../../src/domain/evidence.ts";
import { circuitNamed, smallBank } from "../helpers/circuits.ts";
import { workshop } from "../helpers/dialog.ts";
import { told } from "../helpers/told.ts";

/** Covers an act that changes the circuit for the moment only, on the shipped knowledge. */
const joint = createJoint([{ bank: smallBank(circuitNamed("garden-tractor"), 200), weight: 1 }]);
const machine = { kind: "garden-tractor", fuel: "petrol", volts: 12 } as const;
const model = compileModel(workshop.knowledge, machine, { joint: [joint] });
const EARTH = ["earth-strap-corroded", "earth-strap-broken", "minus-clamp-corroded"];

const act = (id: string, epoch: number, outcome: ActDone["outcome"]): ActDone => {
  return { act: id, epoch, by: "technician", outcome };
};
const chatter = told("on-start", "fast-clicks", { reporter: "technician" });
function earthOf(evidence: Evidence): number {
  const { probability } = updateBelief(model, evidence);
  const { faults, first, second } = model.hypotheses;
  return [...probability.subarray(0, -1).entries()]
    .filter(([h]) => [first[h], second[h]].some((f) => EARTH.includes(faults[f ?? -1] ?? "")))
    .reduce((sum, [, p]) => sum + p, 0);
}

describe("an extra earth lead", () => {
  const before = earthOf({ reports: [chatter], acts: [] });

  it("that makes the engine crank speaks for the earth side", () => {
    const cranks = told("on-start", "starts", { reporter: "technician", epoch: 1 });
    const helped = { reports: [chatter, cranks], acts: [act("extra-earth-lead", 1, "cured")] };
    expect(before).toBeLessThan(0.5);
    expect(earthOf(helped)).toBeGreaterThan(0.8);
  });

  it("that changes nothing speaks against it", () => {
    const same = { reports: [chatter], acts: [act("extra-earth-lead", 1, "no-change")] };
    expect(earthOf(same)).toBeLessThan(0.4 * before);
  });

  it("comes off again: what is cleaned afterwards is followed through the circuit as well", () => {
    const acts = [
      act("extra-earth-lead", 1, "no-change"),
      act("clean-and-tighten-clamps", 2, "no-change"),
    ];
    const arranged = arrange(model, { reports: [chatter], acts }, 12);
    expect(passagesOf(model, arranged).map(({ epoch }) => epoch)).toEqual([1, 2]);
  });
});
