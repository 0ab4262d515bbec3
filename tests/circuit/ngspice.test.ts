import { Simulation } from "eecircuit-engine";
import { beforeAll, describe, expect, it } from "vitest";
import { assemble } from "../../src/circuit/assembly.ts";
import { keyStart, keyStill } from "../../src/circuit/attempt.ts";
import { allVolts, solveState, stateVolts } from "../../src/circuit/electrics.ts";
import { changeMachine, middleMachine } from "../../src/circuit/machine.ts";
import { createSimulator, loadMachine } from "../../src/circuit/moment.ts";
import { runningPoint } from "../../src/circuit/motor.ts";
import { createRandom } from "../../src/circuit/random.ts";
import { loadCircuits } from "../../src/knowledge/circuit-files.ts";
import { netlistOf, type OperatingPoint } from "../helpers/circuit-netlist.ts";

/**
 * ngspice (University of California, Berkeley, and its maintainers), compiled to WebAssembly, solves
 * the same circuits from netlists, the motor's torque balance included.
 */
const { circuits } = loadCircuits(process.cwd());

type State = "off" | "on" | "open" | "relay" | "held" | "cranking" | "peak" | "found";

const points: readonly [string, number, string, State][] = [
  ["garden-tractor", 20, "", "off"],
  ["garden-tractor", 20, "", "on"],
  ["garden-tractor", 20, "", "open"],
  ["garden-tractor", 32, "", "held"],
  ["garden-tractor", 20, "", "cranking"],
  ["garden-tractor", -15, "", "peak"],
  ["garden-tractor", 20, "earth-strap-corroded", "held"],
  ["garden-tractor", 20, "battery-dead", "found"],
  ["compact-tractor", 20, "", "on"],
  ["compact-tractor", 20, "", "relay"],
  ["compact-tractor", 0, "battery-flat", "held"],
  ["compact-tractor", 20, "", "cranking"],
  ["compact-tractor", -15, "", "cranking"],
  ["compact-tractor", 20, "fuse-blown", "found"],
  ["compact-tractor", 20, "solenoid-contacts-burnt", "found"],
  ["old-tractor-12v", 20, "", "open"],
  ["old-tractor-12v", 32, "", "cranking"],
  ["old-tractor-12v", 20, "plus-clamp-corroded", "held"],
  ["old-tractor-6v", 20, "", "on"],
  ["old-tractor-6v", 20, "", "cranking"],
  ["old-tractor-6v", -15, "minus-clamp-corroded", "held"],
  ["row-crop-tractor", 20, "", "cranking"],
  ["row-crop-tractor", 0, "battery-link-bad", "held"],
  ["combine-24v", 20, "", "relay"],
  ["combine-24v", 20, "", "peak"],
  ["combine-24v", -15, "", "held"],
  ["combine-24v", 20, "isolator-left-off", "found"],
];

const simulation = new Simulation();
beforeAll(() => simulation.start(), 60_000);

describe("ngspice agrees", () => {
  it.each(points)("on %s at %i °C %s, %s", async (id, celsius, fault, state) => {
    const { machine, point, volts, amps } = solveHere(id, celsius, fault, state);
    simulation.setNetList(netlistOf(machine, point));
    const found = await simulation.runSim();
    expect(found.dataType).toBe("real");
    const values = new Map(found.data.map(({ name, values: [value] }) => [name, Number(value)]));
    let compared = 0;
    volts.forEach((own, p) => {
      const other = values.get(`v(n${p})`) ?? Number.NaN;
      if (Math.abs(other) < 0.1 && Math.abs(own) < 0.1) return;
      compared += 1;
      expect(Math.abs(own / other - 1), `point ${p}: ${own} and ${other}`).toBeLessThan(1e-6);
    });
    expect(compared).toBeGreaterThan(2);
    expect(Math.abs(amps - (values.get("i(vs)") ?? Number.NaN))).toBeLessThan(1e-4);
  });
});

/** The same operating point by the model. */
function solveHere(id: string, celsius: number, fault: string, state: State) {
  const network = circuits.get(id);
  if (network === undefined) throw new Error(`no circuit ${id}`);
  const assembly = assemble(network);
  const simulator = createSimulator(assembly);
  const changes = network.faults.find((one) => one.id === fault)?.changes ?? [];
  expect(changes.length > 0).toBe(fault !== "");
  const figures = changeMachine(assembly, middleMachine(assembly), changes, createRandom(4, fault));
  const machine = loadMachine(simulator, figures, celsius);
  const { electrics } = simulator;
  if (state === "off" || state === "on") {
    const { volts, motorAmps, heavy } = keyStill(machine, state);
    return { machine, volts, amps: motorAmps, point: { key: state, closed: 0, heavy } };
  }
  const key = "start";
  const all = 2 ** assembly.actuators.length - 1;
  if (state === "found") {
    const outcome = keyStart(machine);
    // Only states with the rotor at rest: a turning rotor is a mean over a turn, chatter of two.
    expect(outcome.speed).toBe(0);
    expect(outcome.symptom).not.toBe("chatter");
    const { volts, motorAmps, closed, heavy } = outcome;
    return { machine, volts, amps: motorAmps, point: { key, closed, heavy } as const };
  }
  const closed = state === "open" ? 0 : state === "relay" ? 1 : all;
  const heavy = state !== "open";
  solveState(electrics, key, closed);
  const idle = { motorAmps: 0, heavy };
  const { from, to } = assembly.motor;
  const feed = {
    volts: stateVolts(electrics, from, idle) - stateVolts(electrics, to, idle),
    ohms: (electrics.room.second[to] ?? 0) - (electrics.room.second[from] ?? 0),
  };
  const load = state === "cranking" ? machine.rotor.easy : machine.rotor.hard;
  const turning = state === "cranking" || state === "peak";
  const { motor } = machine.rotor;
  const running = runningPoint(motor, feed, turning ? load : { fixedNm: 1e9, perRadianNm: 0 });
  expect(running.speed > 0).toBe(turning);
  const point: OperatingPoint = { key, closed, heavy, ...(turning ? { load } : {}) };
  const volts = allVolts(electrics, { motorAmps: running.amps, heavy });
  return { machine, volts, amps: running.amps, point };
}
