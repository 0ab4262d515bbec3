import { describe, expect, it } from "vitest";
import { createJoint } from "../../src/circuit/joint.ts";
import type { StudyRequest } from "../../src/circuit/study.ts";
import { informationOf, studyOrder } from "../../src/circuit/study-order.ts";
import { CAREFUL } from "../../src/circuit/study-world.ts";
import { circuitShares } from "../helpers/circuit-priors.ts";
import { circuitNamed, smallBank } from "../helpers/circuits.ts";

describe("the order of tests", () => {
  it("measures what an answer tells: one bit for a fair yes or no, nothing for a foregone one", () => {
    const belief = Float64Array.of(0.5, 0.5);
    expect(informationOf(belief, Float64Array.of(1, 0, 0, 1))).toBeCloseTo(Math.LN2, 12);
    expect(informationOf(belief, Float64Array.of(0.3, 0.7, 0.3, 0.7))).toBeCloseTo(0, 12);
  });

  it("finds the cause in fewer tests when the most telling comes first", () => {
    const circuit = circuitNamed("walk-behind");
    const joint = createJoint([{ bank: smallBank(circuit, 60), weight: 1 }]);
    const request: StudyRequest = {
      ...{ world: circuit, companions: 0.25, observer: CAREFUL, seed: 4, machinesPerFault: 1 },
      ...{ prior: circuitShares, alike: [], looks: [3] },
      opening: ["on-start", "lights-on", "lights-at-start", "battery-rest-volts"],
    };
    const { chosen, random } = studyOrder(joint, request);
    expect(chosen[0]?.logLoss).toBeLessThan(random[0]?.logLoss ?? 0);
    expect(chosen[0]?.top1).toBeGreaterThan(random[0]?.top1 ?? 1);
  }, 30_000);
});
