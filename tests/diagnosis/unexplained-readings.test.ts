import { describe, expect, it } from "vitest";
import { createJoint } from "../../src/circuit/joint.ts";
import { updateBelief } from "../../src/diagnosis/belief.ts";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { unexplainedReadings } from "../../src/diagnosis/unexplained-readings.ts";
import type { Report } from "../../src/domain/evidence.ts";
import { circuitNamed, smallBank } from "../helpers/circuits.ts";
import { workshop } from "../helpers/dialog.ts";

const joint = createJoint([{ bank: smallBank(circuitNamed("garden-tractor"), 150), weight: 1 }]);
const machine = { kind: "garden-tractor", fuel: "petrol", volts: 12 } as const;
const model = compileModel(workshop.knowledge, machine, { joint: [joint] });
/** Enough simulated machines that some lose nearly any voltage at a clamp. */
const manyJoint = createJoint([
  { bank: smallBank(circuitNamed("garden-tractor"), 1000), weight: 1 },
]);
const many = compileModel(workshop.knowledge, machine, { joint: [manyJoint] });
const byRows = compileModel(workshop.knowledge, machine);

function measured(observation: string, value: number, probes?: Report["probes"]): Report {
  const said = { kind: "value", value } as const;
  const report: Report = { observation, epoch: 0, reporter: "technician", said, hedge: 0 };
  return probes === undefined ? report : { ...report, probes };
}

const odd = (...reports: Report[]) =>
  unexplainedReadings(model, { reports, acts: [] }).map(({ observation }) => observation);

function somethingElse(...reports: Report[]): number {
  return updateBelief(model, { reports, acts: [] }).probability.at(-1) ?? Number.NaN;
}

describe("readings that go with no machine", () => {
  it("are named where they cannot be: 48 V on a 12 V machine", () => {
    expect(odd(measured("battery-rest-volts", 48))).toEqual(["battery-rest-volts"]);
  });

  it("are named where they contradict each other: 13 V at the starter, 6 V at the post", () => {
    const post = measured("battery-start-volts", 6, "post");
    expect(odd(post, measured("starter-start-volts", 13))).toContain("starter-start-volts");
  });

  it("are not what a fault of any kind explains", () => {
    expect(
      odd(measured("battery-rest-volts", 12.6), measured("battery-start-volts", 11.4)),
    ).toEqual([]);
    expect(odd(measured("battery-start-volts", 12.1), measured("stud-start-volts", 6.2))).toEqual(
      [],
    );
  });

  it("name the other place that people mean, where there is one", () => {
    const wild = { reports: [measured("battery-rest-volts", 48)], acts: [] };
    expect(unexplainedReadings(model, wild)[0]?.places).toEqual(["clamp"]);
  });

  it("are not looked for without a simulated circuit", () => {
    const wild = { reports: [measured("battery-rest-volts", 48)], acts: [] };
    expect(unexplainedReadings(byRows, wild)).toEqual([]);
  });

  it("never leave belief without a number", () => {
    const reports = [
      measured("battery-rest-volts", 48),
      measured("battery-start-volts", 6),
      measured("starter-start-volts", 13),
    ];
    const { probability } = updateBelief(model, { reports, acts: [] });
    expect(probability.every((chance) => chance >= 0 && chance <= 1)).toBe(true);
    expect(probability.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 9);
  });

  it("lift something else: what is simulated here is not that machine", () => {
    const before = somethingElse(measured("battery-rest-volts", 12.6));
    expect(somethingElse(measured("battery-rest-volts", 48))).toBeGreaterThan(3 * before);
    const post = measured("battery-start-volts", 6, "post");
    const fitting = somethingElse(post, measured("starter-start-volts", 5.5));
    const against = somethingElse(post, measured("starter-start-volts", 13));
    expect(against).toBeGreaterThan(3 * fitting);
  });

  it("lift something else less where the one who measured errs more often", () => {
    const wild = measured("battery-rest-volts", 48);
    const said = somethingElse({ ...wild, reporter: "operator" });
    expect(said).toBeLessThan(somethingElse(wild));
    expect(said).toBeGreaterThan(somethingElse(measured("battery-rest-volts", 12.6)));
  });
});

describe("where the probes were", () => {
  it("decides whether 12 V while starting clears the plus clamp", () => {
    // Behind a bad clamp the post stays high and the clamp falls: 12 V at the clamp itself clears
    // the joint between them, 12 V at the post does not (ohm's law).
    const chanceOf = (probes: Report["probes"]) => {
      const start: Report = {
        ...{ observation: "on-start", epoch: 0, reporter: "technician", hedge: 0 },
        said: { kind: "states", weights: { "fast-clicks": 1 } },
      };
      const reports = [start, measured("battery-start-volts", 12.1, probes)];
      const { probability } = updateBelief(model, { reports, acts: [] });
      return probability[1 + model.hypotheses.faults.indexOf("plus-clamp-corroded")] ?? 0;
    };
    expect(chanceOf("clamp")).toBeLessThan(0.6 * chanceOf("post"));
    expect(chanceOf("unknown")).toBeGreaterThan(chanceOf("clamp"));
    expect(chanceOf("unknown")).toBeLessThan(chanceOf("post"));
  });
});

describe("a reading as a number", () => {
  const chanceOf = (fault: string, reports: readonly Report[]) =>
    updateBelief(model, { reports, acts: [] }).probability[
      1 + model.hypotheses.faults.indexOf(fault)
    ] ?? Number.NaN;
  const drop = measured("plus-clamp-drop-volts", 5.8);
  const start = measured("battery-start-volts", 12);

  it("finds the one simulated fault that shows it, also before faults that are not simulated", () => {
    // Ohm's law: only a joint that passes current loses 5.8 V.
    expect(joint.hypotheses).not.toContain("interlock-wire-off");
    const { faults } = many.hypotheses;
    const reports = { reports: [start, drop], acts: [] };
    const known = updateBelief(many, reports).probability.slice(1, 1 + faults.length);
    const clamp = known[faults.indexOf("plus-clamp-corroded")] ?? 0;
    const others = known.filter((_, f) => faults[f] !== "plus-clamp-corroded");
    expect(clamp).toBeGreaterThan(5 * Math.max(...others));
    expect(chanceOf("interlock-wire-off", [start, drop])).toBeLessThan(0.05);
  });

  it("is to faults that are not simulated what its band is, however finely it is read", () => {
    const known = model.observations.get("battery-rest-volts")?.source.states ?? [];
    const band = known.find(({ from = -1e9, to = 1e9 }) => from <= 12.6 && 12.6 < to);
    const report = measured("battery-rest-volts", 12.6);
    const byBand: Report = {
      ...report,
      said: { kind: "states", weights: { [band?.id ?? ""]: 1 } },
    };
    const fault = "interlock-wire-off";
    const ratio = chanceOf(fault, [report]) / chanceOf(fault, [byBand]);
    expect(ratio).toBeGreaterThan(0.8);
    expect(ratio).toBeLessThan(1.25);
  });
});
