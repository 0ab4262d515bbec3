import { describe, expect, it } from "vitest";
import { predictCircuit } from "../../src/circuit/predict-circuit.ts";
import { circuitNamed } from "../helpers/circuits.ts";

/** Covers predictions of a circuit, against the limits that manuals print for cranking. */
const predict = (id: string, hypothesis = "nothing-wrong", celsius = 20) =>
  predictCircuit(circuitNamed(id), { hypothesis, celsius, seed: 5 });
const known = new Map<string, ReturnType<typeof predict>>();
const range = (id: string, point: string, fault?: string, celsius?: number) => {
  const key = `${id}/${fault}/${celsius}`;
  const prediction = known.get(key) ?? predict(id, fault, celsius);
  known.set(key, prediction);
  const found = prediction.readings[point];
  if (found === undefined) throw new Error(`no ${point}`);
  return found;
};

describe("healthy machines meet the limits of the manuals, faulty ones break them", () => {
  it("battery above 9.6 V while cranking at 21 to 27 °C (US Army TM 10-3930-671-24)", () => {
    for (const id of ["garden-tractor", "compact-tractor", "row-crop-tractor"]) {
      expect(range(id, "battery-start-volts").low, id).toBeGreaterThan(9.6);
      expect(range(id, "battery-start-volts", "battery-flat").median, id).toBeLessThan(9.6);
    }
  });

  it("24 V starting: at most 300 to 500 A and at least 18 V (military truck manual)", () => {
    const volts = range("combine-24v", "battery-start-volts");
    expect(volts.low).toBeGreaterThan(18);
    // The limits for 6 and 12 V machines must not be reused.
    expect(range("combine-24v", "ground-drop-volts").median).toBeLessThan(1);
  });

  it("plus post to stud at most 0.4 to 0.5 V and earth side at most 0.5 V (army manuals)", () => {
    for (const id of ["garden-tractor", "compact-tractor"]) {
      expect(range(id, "ground-drop-volts").high, id).toBeLessThan(0.5);
      const stud = range(id, "stud-start-volts").median;
      const post = range(id, "battery-start-volts").median;
      expect(post - stud, id).toBeLessThan(0.4);
      expect(range(id, "ground-drop-volts", "earth-strap-corroded").low, id).toBeGreaterThan(0.5);
    }
  });

  it("next to nothing over a clean clamp, volts over a corroded one", () => {
    expect(range("compact-tractor", "plus-clamp-drop-volts").median).toBeLessThan(0.1);
    const bad = range("compact-tractor", "plus-clamp-drop-volts", "plus-clamp-corroded");
    expect(bad.median).toBeGreaterThan(1);
  });

  it("0.2 V per 100 A over the cables of a 12 V light-duty machine (SAE J541, public summary)", () => {
    const amps = range("compact-tractor", "starter-amps").median;
    const post = range("compact-tractor", "battery-start-volts").median;
    const plus = post - range("compact-tractor", "stud-start-volts").median;
    const earth = range("compact-tractor", "ground-drop-volts").median;
    expect((100 * (plus + earth)) / amps).toBeLessThan(0.25);
  });

  it("cranking volts fall with the cold as an army table says: one to two volts in 20 K", () => {
    // 8 to 10 V at 10..27 °C, 7 to 9 at −7..10, 6 to 8 at −23..−7 on bigger engines.
    const at = (celsius: number) =>
      range("compact-tractor", "battery-start-volts", "nothing-wrong", celsius).median;
    expect(at(20) - at(0)).toBeGreaterThan(0.5);
    expect(at(20) - at(0)).toBeLessThan(1.8);
    expect(at(0) - at(-15)).toBeGreaterThan(0.6);
    expect(at(-15)).toBeGreaterThan(6);
    expect(at(-15)).toBeLessThan(10);
  });

  it("small twins draw 50 to 150 A, three-cylinder diesels 100 to 250 A (from memory)", () => {
    const twin = range("garden-tractor", "starter-amps");
    expect(twin.low).toBeGreaterThan(50);
    expect(twin.high).toBeLessThan(150);
    const diesel = range("compact-tractor", "starter-amps").median;
    expect(diesel).toBeGreaterThan(100);
    expect(diesel).toBeLessThan(250);
  });

  it("gives the same prediction twice, and shares that sum to one", () => {
    const one = predict("old-tractor-6v", "battery-flat+minus-clamp-corroded");
    expect(predict("old-tractor-6v", "battery-flat+minus-clamp-corroded")).toEqual(one);
    expect(Object.values(one.complaints).reduce((a, b) => a + b)).toBeCloseTo(1, 12);
  });
});
