import { assemble } from "../../src/circuit/assembly.ts";
import { openSimulator, simulateBlock } from "../../src/circuit/bank.ts";
import { bankHypotheses, blockRequest } from "../../src/circuit/bank-build.ts";
import { middleMachine } from "../../src/circuit/machine.ts";
import { createSimulator, type LoadedMachine, loadMachine } from "../../src/circuit/moment.ts";
import { STATES } from "../../src/circuit/observe.ts";
import { type StandingBank, standBank } from "../../src/circuit/standing-bank.ts";
import type { CircuitAct, CircuitNetwork } from "../../src/domain/circuit.ts";
import type { CircuitEvidence, JointLikelihood } from "../../src/domain/joint-likelihood.ts";
import { loadShippedCircuits } from "./shipped.ts";

const all = await loadShippedCircuits();

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

/** A small bank of a circuit at about 20 °C, the same at every call. */
export function smallBank(circuit: CircuitNetwork, machines = 200): StandingBank {
  const request = { band: "mild", seed: 1, machines, pairs: [] } as const;
  const simulator = openSimulator(circuit);
  const blocks = bankHypotheses(circuit, request).map((hypothesis) =>
    simulateBlock(simulator, blockRequest(hypothesis, request)),
  );
  return standBank(circuit, blocks);
}

/** A report that leaves little doubt: `clear` on one state, the rest spread over the others. */
export function told(observation: string, state: string, clear = 0.9, after?: CircuitAct) {
  const states = STATES[observation] ?? [];
  const rest = (1 - clear) / (states.length - 1);
  const weights = Object.fromEntries(states.map((one) => [one, one === state ? clear : rest]));
  return { kind: "state", observation, weights, ...(after ? { after } : {}) } as const;
}

/** A reading with its last digit and a good meter's error. */
export function read(observation: string, value: number, half = 0.05) {
  const meterError = half < 1 ? 0.03 + 0.01 * value : 3;
  const [low, high] = [value - half, value + half];
  return { kind: "reading", observation, low, high, meterError } as const;
}

/** Probabilities of the hypotheses given evidence, under shares of calls by id. */
export function posterior(
  joint: JointLikelihood,
  evidence: readonly CircuitEvidence[],
  shares: Readonly<Record<string, number>>,
): ReadonlyMap<string, number> {
  const logs = joint.logLikelihood(evidence);
  const most = Math.max(...logs);
  const masses = joint.hypotheses.map(
    (name, h) => (shares[name] ?? 0) * Math.exp((logs[h] ?? 0) - most),
  );
  const whole = masses.reduce((sum, mass) => sum + mass, 0);
  return new Map(joint.hypotheses.map((name, h) => [name, (masses[h] ?? 0) / whole]));
}
