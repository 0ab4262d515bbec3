import { describe, expect, it } from "vitest";
import { createJoint } from "../../src/circuit/joint.ts";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { expectedReading } from "../../src/diagnosis/expected-readings.ts";
import type { Report } from "../../src/domain/evidence.ts";
import { circuitNamed, smallBank } from "../helpers/circuits.ts";
import { workshop } from "../helpers/dialog.ts";

const joint = createJoint([{ bank: smallBank(circuitNamed("garden-tractor"), 150), weight: 1 }]);
const machine = { kind: "garden-tractor", fuel: "petrol", volts: 12 } as const;
const model = compileModel(workshop.knowledge, machine, { joint: [joint] });
const slow: Report = {
  observation: "on-start",
  epoch: 0,
  reporter: "operator",
  said: { kind: "states", weights: { slow: 1 } },
  hedge: 0,
};
const ask = (observation: string, causes: string[]) =>
  expectedReading(model, joint, {
    evidence: { reports: [slow], acts: [] },
    query: { observation, causes },
  });

describe("the reading to expect at a test point", () => {
  it("shows hardly any drop in a healthy earth and a large one behind a corroded strap", () => {
    const found = ask("ground-drop-volts", ["earth-strap-corroded"]);
    // US military manual TM 10-3930-671-24: earth side at most some tenths of a volt while cranking.
    expect(found?.healthy.median).toBeLessThan(0.5);
    expect(found?.causes[0]?.range.median).toBeGreaterThan(1);
  });

  it("is ordered: low, median, high", () => {
    for (const { range } of ask("battery-start-volts", ["battery-flat", "plus-clamp-corroded"])
      ?.causes ?? []) {
      expect(range.low).toBeLessThanOrEqual(range.median);
      expect(range.median).toBeLessThanOrEqual(range.high);
    }
  });

  it("is unknown where the circuit has no such point, and leaves out what it does not simulate", () => {
    expect(ask("fuel-level", ["battery-flat"])).toBeNull();
    expect(ask("ground-drop-volts", ["tank-empty"])?.causes).toEqual([]);
  });
});
