import { describe, expect, it } from "vitest";
import { keyStart, keyStill, lampShare, startSymptom } from "../../src/circuit/attempt.ts";
import { openSimulator, simulateBlock } from "../../src/circuit/bank.ts";
import { createJoint } from "../../src/circuit/joint.ts";
import {
  findGauges,
  lightsAtStart,
  lightsOn,
  readGauge,
  STATES,
} from "../../src/circuit/observe.ts";
import { standBank } from "../../src/circuit/standing-bank.ts";
import { circuitNamed, machineWith, shippedCircuits, told, voltsOf } from "../helpers/circuits.ts";

/** A contact that carries the lamps and opens under the starter's load. Covers the switches' settling. */
const garden = circuitNamed("garden-tractor");
const compact = circuitNamed("compact-tractor");

/** Loose: a tenth of the whole cranking circuit's resistance, lead spots that melt at 0.19 V. */
const looseClamp = (ohms: number, stays: number) => ({
  "plus-clamp.resistance": ohms,
  "plus-clamp.parts-at": 0.19,
  "plus-clamp.stays-parted": stays,
});

const ON_START = "on-start";
const lamps = (states: string, code: number) => STATES[states]?.[code];

describe("a loose contact", () => {
  it("carries the lamps, clicks once and then everything is dead until it is moved", () => {
    // Common practice: one click, then dead; wiggling the clamp brings the lamps back.
    for (const [circuit, ohms] of [
      [garden, 0.02],
      [compact, 0.006],
    ] as const) {
      const machine = machineWith(circuit, looseClamp(ohms, 1));
      expect(lamps("lights-on", lightsOn(machine, keyStill(machine, "on")))).toBe("normal");
      const first = keyStart(machine);
      expect(first.symptom, circuit.id).toBe("loud-click");
      expect(lamps("lights-at-start", lightsAtStart(machine, first))).toBe("go-out");
      expect(voltsOf(machine, first.volts, "live-post")).toBeGreaterThan(12);
      expect(voltsOf(machine, first.volts, "stud")).toBeLessThan(0.1);
      expect(lamps("lights-on", lightsOn(machine, keyStill(machine, "on")))).toBe("dead");
      expect(keyStart(machine).symptom).toBe("dead");
    }
  });

  it("touches again with the load gone, where it does not stay open", () => {
    const machine = machineWith(garden, looseClamp(0.02, 0));
    expect(keyStart(machine).symptom).toBe("loud-click");
    expect(lampShare(machine, keyStill(machine, "on"))).toBeGreaterThan(0.9);
    expect(keyStart(machine).symptom).toBe("loud-click");
  });

  it("lets go before anything clicks where the coil alone is far too much for it", () => {
    const machine = machineWith(garden, looseClamp(0.2, 1));
    expect(keyStart(machine).symptom).toBe("dead");
    expect(startSymptom(machineWith(garden, looseClamp(0.2, 1)))).toBe("dead");
  });

  it("never parts under a pressure that holds it, however bad it is", () => {
    const machine = machineWith(garden, { "plus-clamp.resistance": 0.2 });
    expect(keyStart(machine).parted).toBe(0);
    expect(keyStart(machine).symptom).not.toBe("loud-click");
  });

  it("lets no current through its cable once it is open", () => {
    const machine = machineWith(garden, {
      "plus-cable.resistance": 0.02,
      "plus-cable.parts-at": 0.19,
      "plus-cable.stays-parted": 1,
    });
    const amps = findGauges(machine.simulator.assembly).find(({ key }) => key === "starter-amps");
    if (amps === undefined) throw new Error("the circuit has no ammeter");
    expect(readGauge(machine, keyStart(machine), amps)).toBe(0);
  });

  it("does not change what a sound machine does", () => {
    for (const circuit of [garden, compact]) {
      expect(keyStart(machineWith(circuit, {})).symptom).toBe("normal");
      expect(keyStart(machineWith(circuit, {})).parted).toBe(0);
    }
  });
});

describe("a bank of machines with bad clamps, earth or isolator", () => {
  const share = (id: string, fault: string, said: readonly (readonly [string, string])[]) => {
    const circuit = circuitNamed(id);
    const request = { celsius: 20, kelvinAround: 4, seed: 5, machines: 300 };
    const simulator = openSimulator(circuit);
    const block = simulateBlock(simulator, { ...request, hypothesis: fault });
    const joint = createJoint([{ bank: standBank(circuit, [block]), weight: 1 }]);
    const all = said.map(([observation, state]) => told(observation, state, 1));
    return Math.exp(joint.logLikelihood(all)[0] ?? -Infinity);
  };
  const goOut = ["lights-at-start", "go-out"] as const;

  it.each([
    ["garden-tractor", "plus-clamp-corroded"],
    ["garden-tractor", "minus-clamp-corroded"],
    ["compact-tractor", "plus-clamp-corroded"],
    ["compact-tractor", "earth-strap-corroded"],
    ["telehandler", "isolator-failed"],
    ["old-tractor-6v", "minus-clamp-corroded"],
  ])(
    "%s, %s: one click and the lamps out, or nothing and the lamps out, are both told",
    (id, fault) => {
      expect(share(id, fault, [[ON_START, "one-click"], goOut])).toBeGreaterThan(0.08);
      expect(share(id, fault, [[ON_START, "nothing"], goOut])).toBeGreaterThan(0.05);
      const dead = ["lights-on", "dead"] as const;
      expect(share(id, fault, [[ON_START, "one-click"], goOut, dead])).toBeGreaterThan(0.01);
      expect(
        share(id, fault, [[ON_START, "one-click"], goOut, ["lights-on", "normal"]]),
      ).toBeGreaterThan(0.05);
    },
  );

  it("cleaning a clamp holds it too", () => {
    for (const circuit of shippedCircuits.values()) {
      const changed = circuit.acts.clean?.flatMap(({ settings }) => settings) ?? [];
      const clamps = changed
        .filter(({ figure }) => figure === "resistance")
        .map(({ part }) => part);
      const held = changed.filter(({ figure }) => figure === "parts-at").map(({ part }) => part);
      expect(held, circuit.id).toEqual(clamps);
    }
  });
});
