import { describe, expect, it } from "vitest";
import { openSimulator } from "../../src/circuit/bank.ts";
import { checkCircuit, HEALTHY_SHARE, healthyShare } from "../../src/circuit/check-circuit.ts";
import { chooseCircuits } from "../../src/circuit/choose-circuit.ts";
import { scaleSpread } from "../../src/circuit/study-world.ts";
import { machineKinds } from "../../src/domain/vocabulary.ts";
import { circuitNamed, shippedCircuits } from "../helpers/circuits.ts";

describe("the circuit checker", () => {
  it("finds that every shipped machine cranks when healthy, warm and mostly in frost", () => {
    for (const circuit of shippedCircuits.values()) {
      const simulator = openSimulator(circuit);
      expect(healthyShare(simulator, 20, 3).normal, circuit.id).toBeGreaterThan(HEALTHY_SHARE);
      expect(healthyShare(simulator, 0, 3).turns, circuit.id).toBeGreaterThan(0.9);
      expect(healthyShare(simulator, -15, 3).turns, circuit.id).toBeGreaterThan(0.7);
    }
  }, 30_000);

  it("refuses a 12 V machine that was merely called 6 V", () => {
    const garden = circuitNamed("garden-tractor");
    const halved = {
      ...garden,
      volts: 6,
      parts: garden.parts.map((part) => {
        const nominal = part.figures["nominal"];
        if (nominal === undefined) return part;
        return { ...part, figures: { ...part.figures, nominal: scaleSpread(nominal, 0.5) } };
      }),
    };
    const share = checkCircuit(halved, 1).healthy.find(({ celsius }) => celsius === 20);
    expect(share?.normal).toBeLessThan(0.5);
  });

  it("names faults that nobody would notice and pairs that nothing tells apart", () => {
    const circuit = circuitNamed("telehandler");
    const faults = circuit.faults.flatMap((fault) =>
      fault.id === "isolator-left-off" ? [fault, { ...fault, id: "isolator-forgotten" }] : [fault],
    );
    const { unnoticed, alike } = checkCircuit({ ...circuit, faults }, 1);
    expect(unnoticed.map(({ fault }) => fault)).toContain("thick-oil");
    const pairs = alike.map((pair) => pair.faults);
    expect(pairs).toContainEqual(["isolator-left-off", "isolator-forgotten"]);
    // A strap broken behind the frame's own earth leaves the lamps on; an isolator does not.
    expect(pairs).not.toContainEqual(["earth-strap-broken", "isolator-left-off"]);
  });

  it("says the same twice", () => {
    const circuit = circuitNamed("walk-behind");
    expect(checkCircuit(circuit, 5)).toEqual(checkCircuit(circuit, 5));
  });
});

describe("the choice of a circuit", () => {
  const choose = (kind: string, fuel?: string, volts?: number) =>
    chooseCircuits(shippedCircuits.values(), {
      kind,
      ...(fuel === undefined ? {} : { fuel }),
      ...(volts === undefined ? {} : { volts }),
    }).map(({ circuit, weight }) => [circuit.id, weight]);

  it("has one for every machine kind", () => {
    for (const kind of machineKinds) expect(choose(kind).length, kind).toBeGreaterThan(0);
  });

  it("weighs 6 and 12 V for an old tractor, and takes 12 for any other", () => {
    expect(choose("old-tractor").map(([id]) => id)).toEqual(["old-tractor-12v", "old-tractor-6v"]);
    expect(choose("old-tractor", "petrol", 6)).toEqual([["old-tractor-6v", 1]]);
    expect(choose("combine")).toEqual([["combine", 1]]);
    expect(choose("combine", "diesel", 24)).toEqual([["combine-24v", 1]]);
  });

  it("follows the fuel where it tells circuits apart", () => {
    expect(choose("garden-tractor", "diesel")).toEqual([["compact-tractor", 1]]);
    expect(choose("pump-or-generator").map(([, weight]) => weight)).toEqual([0.5, 0.5]);
  });

  it("has none for volts that no such machine has", () => {
    expect(choose("ride-on-mower", "petrol", 24)).toEqual([]);
  });
});
