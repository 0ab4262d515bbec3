import { describe, expect, it } from "vitest";
import { evenChance } from "../../src/circuit/evidence-table.ts";
import { explainItems } from "../../src/circuit/explain.ts";
import { createJoint } from "../../src/circuit/joint.ts";
import { circuitNamed, read, smallBank, told } from "../helpers/circuits.ts";

const circuit = circuitNamed("garden-tractor");
const joint = createJoint([{ bank: smallBank(circuit, 200), weight: 1 }]);

describe("explanations", () => {
  const evidence = [
    told("on-start", "fast-clicks"),
    read("battery-start-volts", 12.1),
    read("stud-start-volts", 6.2),
    read("plus-clamp-drop-volts", 5.8),
  ];

  it("set what was measured against what machines fitting all else show", () => {
    const reasons = explainItems(joint, evidence, "plus-clamp-corroded");
    const drop = reasons[3];
    expect(drop?.expected?.low).toBeGreaterThan(2.5);
    expect(drop?.expected?.high).toBeLessThan(9);
    const cable = explainItems(joint, evidence, "plus-cable-bad")[3];
    expect(cable?.expected?.high).toBeLessThan(0.6);
    expect((drop?.log ?? 0) - (cable?.log ?? 0)).toBeGreaterThan(2);
  });

  it("count answers that say the same thing once: chatter adds little to 6.2 V at the stud", () => {
    // Alone it speaks for the clamp against a burnt contact; with the volts known it hardly does.
    const against = (items: typeof evidence, fault: string) =>
      (explainItems(joint, items, "plus-clamp-corroded")[0]?.log ?? 0) -
      (explainItems(joint, items, fault)[0]?.log ?? 0);
    const [chatter] = evidence;
    const alone = chatter === undefined ? 0 : against([chatter], "nothing-wrong");
    expect(alone).toBeGreaterThan(1);
    expect(Math.abs(against(evidence, "plus-cable-bad"))).toBeLessThan(1);
  });

  it("name a reading that no machine can show", () => {
    const wild = read("battery-rest-volts", 48);
    expect(joint.unexplained([evidence[0] ?? wild, wild])).toEqual([wild]);
  });

  it("name readings that contradict each other: 13 V at the starter with 6 V at the post", () => {
    const starter = read("starter-start-volts", 13);
    const post = read("battery-start-volts", 6);
    const found = joint.unexplained([post, starter]);
    expect(found).toContain(starter);
    expect(joint.logLikelihood([post, starter]).every(Number.isFinite)).toBe(true);
  });

  it("expect of every reading alike no more than its share of what a meter can show", () => {
    const narrow = { ...read("battery-rest-volts", 12.6), low: 12.55, high: 12.65 };
    const band = { ...read("battery-rest-volts", 12.6), low: 12.4, high: 13.2 };
    expect(evenChance(circuit, narrow)).toBeLessThan(evenChance(circuit, band));
    // Ten readings of a tenth of a volt are as likely as the volt that they make up.
    expect(10 * evenChance(circuit, narrow)).toBeCloseTo(
      evenChance(circuit, { ...band, low: 12, high: 13 }),
      9,
    );
    expect(evenChance(circuit, { ...band, low: -1e4, high: 1e4 })).toBe(1);
  });

  it("name nothing where all is in order", () => {
    expect(joint.unexplained(evidence)).toEqual([]);
  });

  it("refuse a hypothesis that is not there", () => {
    expect(() => explainItems(joint, evidence, "gremlins")).toThrow(RangeError);
  });
});
