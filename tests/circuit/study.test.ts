import { describe, expect, it } from "vitest";
import { createJoint } from "../../src/circuit/joint.ts";
import { heldOutCases, type StudyRequest, studyJoint } from "../../src/circuit/study.ts";
import { CAREFUL, DISTRACTED, distort, OTHER_MACHINES } from "../../src/circuit/study-world.ts";
import { circuitShares } from "../helpers/circuit-priors.ts";
import { circuitNamed, smallBank } from "../helpers/circuits.ts";

/** Covers the study and its distorted world; the bench runs it at full size. */
const circuit = circuitNamed("garden-tractor");
const joint = createJoint([{ bank: smallBank(circuit, 150), weight: 1 }]);
const request: StudyRequest = {
  ...{ world: distort(circuit, OTHER_MACHINES), companions: 0.4, observer: DISTRACTED },
  ...{ seed: 21, machinesPerFault: 3, prior: circuitShares, looks: [4, 14] },
  opening: ["on-start", "lights-on", "lights-at-start", "battery-rest-volts"],
  alike: [
    ["engine-seized", "starter-jammed"],
    ["battery-flat", "charging-failed", "parasitic-draw"],
    ["pto-switch-failed", "pto-left-engaged"],
    ["seat-switch-failed", "seat-empty"],
    ["neutral-switch-failed", "gear-left-engaged"],
  ],
};

describe("held-out machines", () => {
  it("are recognised better, and less over-confidently, by weighing them whole", () => {
    const { joint: whole, naive, cases } = studyJoint(joint, request);
    expect(cases).toBeGreaterThan(100);
    expect(whole.map(({ answers }) => answers)).toEqual([4, 14]);
    expect(whole[1]?.top1).toBeGreaterThan(whole[0]?.top1 ?? 1);
    expect(whole[1]?.logLoss).toBeLessThan(naive[1]?.logLoss ?? 0);
    expect(whole[1]?.overConfidence).toBeLessThan(naive[1]?.overConfidence ?? 0);
  }, 30_000);

  it("are the same for the same seed and others for another", () => {
    const small = { ...request, machinesPerFault: 1, prior: { "battery-flat": 1, hydrolock: 1 } };
    expect(heldOutCases(small)).toEqual(heldOutCases(small));
    expect(heldOutCases({ ...small, seed: 22 })).not.toEqual(heldOutCases(small));
    const careful = heldOutCases({ ...small, observer: CAREFUL });
    expect(careful[0]?.evidence).toHaveLength(14);
  });

  it("come from another maker: weaker battery, longer cables", () => {
    const figures = (id: string) =>
      distort(circuit, OTHER_MACHINES).parts.find((part) => part.id === id)?.figures;
    expect(figures("battery")?.["cca"]).toEqual({ kind: "even", low: 153, high: 272 });
    expect(figures("plus-cable")?.["length"]).toEqual({ kind: "exact", value: 0.8 * 1.3 });
    expect(figures("jump-battery")).toEqual(
      circuit.parts.find(({ id }) => id === "jump-battery")?.figures,
    );
  });
});
