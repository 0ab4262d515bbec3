import { describe, expect, it } from "vitest";
import { expectedReadings } from "../../src/circuit/expected-readings.ts";
import { createJoint } from "../../src/circuit/joint.ts";
import { circuitNamed, read, smallBank, told } from "../helpers/circuits.ts";

const circuit = circuitNamed("garden-tractor");
const joint = createJoint([{ bank: smallBank(circuit, 150), weight: 1 }]);
const causes = ["minus-clamp-corroded", "battery-flat"];

describe("expected readings", () => {
  const evidence = [told("on-start", "fast-clicks"), read("battery-rest-volts", 12.6)];
  const all = expectedReadings(joint, circuit.testPoints, evidence, causes);
  const at = (point: string) => all.find(({ testPoint }) => testPoint === point);

  it("stand for every test point, healthy and for each cause in the order asked", () => {
    expect(all).toHaveLength(circuit.testPoints.length);
    for (const { healthy, causes: ranges } of all) {
      expect(healthy.low).toBeLessThanOrEqual(healthy.median);
      expect(healthy.median).toBeLessThanOrEqual(healthy.high);
      expect(ranges.map(({ hypothesis }) => hypothesis)).toEqual(causes);
    }
  });

  it("show where the causes part: the block is off by volts with a bad minus clamp only", () => {
    const ground = at("ground-drop-volts");
    expect(ground?.healthy.high).toBeLessThan(0.7);
    expect(ground?.causes[0]?.range.median).toBeGreaterThan(1);
    expect(ground?.causes[1]?.range.high).toBeLessThan(1);
  });

  it("follow what is known: chatter leaves the healthy range of the motor terminal behind", () => {
    const motor = at("starter-start-volts");
    expect(motor?.causes[0]?.range.median).toBeLessThan(motor?.healthy.low ?? 0);
  });

  it("refuse a cause that is not there", () => {
    expect(() => expectedReadings(joint, circuit.testPoints, [], ["gremlins"])).toThrow(RangeError);
  });
});
