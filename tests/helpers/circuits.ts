import { assemble } from "../../src/circuit/assembly.ts";
import { createSimulator, type LoadedMachine, loadMachine } from "../../src/circuit/attempt.ts";
import { middleMachine } from "../../src/circuit/machine.ts";
import type { CircuitNetwork } from "../../src/domain/circuit.ts";
import { loadCircuits } from "../../src/knowledge/circuit-files.ts";

const { circuits: all } = loadCircuits(process.cwd());

/** Every circuit that ships. */
export const shippedCircuits: ReadonlyMap<string, CircuitNetwork> = all;

export function circuitNamed(id: string): CircuitNetwork {
  const circuit = all.get(id);
  if (circuit === undefined) throw new Error(`there is no circuit ${id}`);
  return circuit;
}

/** The ordinary machine of a circuit with some figures set, loaded at a temperature. */
export function machineWith(
  circuit: CircuitNetwork,
  figures: Readonly<Record<string, number>>,
  celsius = 20,
): LoadedMachine {
  const assembly = assemble(circuit);
  const machine = middleMachine(assembly);
  for (const [name, value] of Object.entries(figures)) {
    const [part = "", figure = ""] = name.split(".");
    const slot = assembly.slot(part, figure);
    if (slot < 0) throw new Error(`${circuit.id} has no figure ${name}`);
    machine[slot] = value;
  }
  return loadMachine(createSimulator(assembly), machine, celsius);
}

/** Volts of a named point, against the black probe. */
export function voltsOf(machine: LoadedMachine, volts: Float64Array, point: string): number {
  const number = machine.simulator.assembly.point(point);
  return number < 0 ? 0 : (volts[number] ?? 0);
}
