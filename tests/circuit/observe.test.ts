import { describe, expect, it } from "vitest";
import { keyStart } from "../../src/circuit/attempt.ts";
import {
  findGauges,
  jumpOutcome,
  lightsAtStart,
  lightsOn,
  readGauge,
  STATES,
  SYMPTOM_OBSERVATIONS,
  symptomCode,
  symptomStates,
} from "../../src/circuit/observe.ts";
import { CRANK_SYMPTOMS } from "../../src/domain/circuit.ts";
import { crankingStates } from "../../src/domain/vocabulary.ts";
import { circuitNamed, machineWith } from "../helpers/circuits.ts";

const state = (observation: "on-start" | "engine-turns", code: number) =>
  STATES[observation]?.[symptomStates(observation)[code] ?? -1];

describe("what people notice", () => {
  it("tells every symptom in the trade's states", () => {
    for (const observation of SYMPTOM_OBSERVATIONS) {
      const states = STATES[observation] ?? [];
      for (const s of symptomStates(observation)) expect(states[s]).toBeDefined();
    }
    for (const known of STATES["on-start"] ?? []) expect(crankingStates).toContain(known);
    expect(state("on-start", symptomCode("chatter", true))).toBe("fast-clicks");
    expect(state("engine-turns", symptomCode("part-turn", true))).toBe("part-turn");
    expect(new Set(CRANK_SYMPTOMS).size).toBe(10);
  });

  it("hears a faint click or nothing, but always a loud one", () => {
    expect(state("on-start", symptomCode("faint-click", true))).toBe("one-click");
    expect(state("on-start", symptomCode("faint-click", false))).toBe("nothing");
    expect(state("on-start", symptomCode("loud-click", false))).toBe("one-click");
  });

  it("judges a jump by what changed", () => {
    const outcome = (...args: Parameters<typeof jumpOutcome>) =>
      STATES["jump-start"]?.[jumpOutcome(...args)];
    expect(outcome("chatter", "normal", 1.17, 0.1)).toBe("cured");
    expect(outcome("chatter", "slow", 1.17, 0.1)).toBe("helped-but-slow");
    expect(outcome("chatter", "chatter", 1.17, 0.1)).toBe("no-change");
    expect(outcome("slow", "normal", 1, 0.1)).toBe("ran-then-died");
    expect(outcome("slow", "normal", 1, 0.9)).toBe("cured");
    expect(outcome("normal", "normal", 1.17, 0.1)).toBe("no-change");
  });

  it("sees lamps dim by their volts", () => {
    const machine = machineWith(circuitNamed("garden-tractor"), {});
    const lamps = (share: number) => {
      const { lamp, network, plan } = machine.simulator.assembly;
      const volts = new Float64Array(plan.points);
      volts[lamp.from] = share * network.volts;
      return { ...keyStart(machine), volts };
    };
    expect(STATES["lights-on"]?.[lightsOn(machine, lamps(1))]).toBe("normal");
    expect(STATES["lights-on"]?.[lightsOn(machine, lamps(0.6))]).toBe("dim");
    expect(STATES["lights-on"]?.[lightsOn(machine, lamps(0.1))]).toBe("dead");
    expect(STATES["lights-at-start"]?.[lightsAtStart(machine, lamps(1))]).toBe("stay-bright");
    expect(STATES["lights-at-start"]?.[lightsAtStart(machine, lamps(0.1))]).toBe("go-out");
  });

  it("reads the same current from the cable as flows into the motor", () => {
    const machine = machineWith(circuitNamed("compact-tractor"), {});
    const outcome = keyStart(machine);
    const gauge = findGauges(machine.simulator.assembly).find(({ key }) => key === "starter-amps");
    if (gauge === undefined) throw new Error("no gauge");
    expect(readGauge(machine, outcome, gauge) / 10).toBeCloseTo(outcome.motorAmps, 0);
  });
});
