import type { KeyPosition } from "../domain/circuit.ts";
import type { Assembly } from "./assembly.ts";
import { ampereTurns, findPuller, type Puller } from "./coils.ts";
import {
  batteryAmps,
  createElectrics,
  type Electrics,
  isHeavy,
  type Load,
  loadElectrics,
  solveState,
  stateVolts,
  voltsAt,
} from "./electrics.ts";
import type { MachineFigures } from "./machine.ts";
import { type Feed, stalledAmps } from "./motor.ts";
import { createRotor, type Rotor } from "./rotor.ts";
import { type RotorSlots, rotorSlots } from "./rotor-slots.ts";

/** Room for simulating machines of one circuit, one after another; each worker needs its own. */
export interface Simulator {
  readonly assembly: Assembly;
  readonly electrics: Electrics;
  readonly pullers: readonly Puller[];
  readonly rotorSlots: RotorSlots;
  readonly mainActuator: number;
}

/** A machine at a temperature, loaded into the simulator it came from. */
export interface LoadedMachine {
  readonly simulator: Simulator;
  readonly figures: MachineFigures;
  readonly rotor: Rotor;
}

export function createSimulator(assembly: Assembly): Simulator {
  return {
    assembly,
    electrics: createElectrics(assembly),
    pullers: assembly.actuators.map((actuator) => findPuller(assembly, actuator)),
    rotorSlots: rotorSlots(assembly),
    mainActuator: assembly.actuators.findIndex(({ sound }) => sound === "loud"),
  };
}

/** Takes a machine; only the machine loaded last may be asked anything. */
export function loadMachine(
  simulator: Simulator,
  figures: MachineFigures,
  celsius: number,
): LoadedMachine {
  loadElectrics(simulator.electrics, figures, celsius);
  return { simulator, figures, rotor: createRotor(simulator.rotorSlots, figures, celsius) };
}

/** One switch state with the rotor at rest, and what the coils make of it. */
export interface Moment extends Load {
  readonly closed: number;
  /** Greatest pull of an actuator still open, against what it needs. */
  readonly reach: number;
  /** The actuators that will hold next, by bit. */
  readonly next: number;
}

/** Solves one switch state and asks the coils. */
export function momentOf(machine: LoadedMachine, key: KeyPosition, closed: number): Moment {
  const { electrics, pullers } = machine.simulator;
  const { figures, rotor } = machine;
  solveState(electrics, key, closed);
  const light = { motorAmps: stalledAmps(rotor.motor, feedOf(machine, false)), heavy: false };
  const heavy = isHeavy(batteryAmps(electrics, light));
  const motorAmps = heavy ? stalledAmps(rotor.motor, feedOf(machine, true)) : light.motorAmps;
  const load = { motorAmps, heavy };
  let next = 0;
  let reach = 0;
  for (let i = 0; i < pullers.length; i++) {
    const puller = pullers[i];
    if (puller === undefined) continue;
    const made = ampereTurns(puller, figures, electrics, load);
    const needed = (figures[puller.needed] ?? 0) * (figures[puller.stick] ?? 1);
    const held = ((closed >> i) & 1) === 1;
    if (made >= (held ? (figures[puller.kept] ?? 0) : needed)) next |= 1 << i;
    else if (!held) reach = Math.max(reach, made / needed);
  }
  return { closed, motorAmps, heavy, reach, next };
}

/** The supply as the motor sees it in the state solved last: volts behind ohms (Thévenin). */
export function feedOf({ simulator }: LoadedMachine, heavy: boolean): Feed {
  const { assembly, electrics } = simulator;
  const { from, to } = assembly.motor;
  const idle = { motorAmps: 0, heavy };
  return {
    volts: stateVolts(electrics, from, idle) - stateVolts(electrics, to, idle),
    ohms: voltsAt(electrics.room.second, to) - voltsAt(electrics.room.second, from),
  };
}
