import type { CrankSymptom, KeyPosition } from "../domain/circuit.ts";
import type { Assembly } from "./assembly.ts";
import { ampereTurns, findPuller, type Puller } from "./coils.ts";
import {
  allVolts,
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
import { crank, createRotor, type Rotor } from "./rotor.ts";
import { type RotorSlots, rotorSlots } from "./rotor-slots.ts";

/** What one key position does to one machine. */
export interface Outcome extends Load {
  readonly symptom: CrankSymptom;
  /** Volts of every point against the earthed post. */
  readonly volts: Float64Array;
  readonly batteryAmps: number;
  /** Crankshaft speed in rad/s. */
  readonly speed: number;
  /** Actuators that hold, by bit. */
  readonly closed: number;
}

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

/** More switch changes than a chain of two actuators can make without repeating itself. */
const MOST_CHANGES = 12;
/** Below this share of nominal volts a lamp is out. */
export const LAMP_OUT = 0.4;
/** From this share on nobody calls a lamp dim. */
export const LAMP_BRIGHT = 0.84;

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

/** Key off or on, nothing moving. */
export function keyStill(machine: LoadedMachine, key: Exclude<KeyPosition, "start">): Outcome {
  return restOutcome(machine, momentOf(machine, key, 0), "silent");
}

/** Key held on START until nothing changes any more; volts and all. */
export function keyStart(machine: LoadedMachine): Outcome {
  const end = settle(machine);
  if (end.before !== undefined) return chatter(machine, end.before, end.now);
  if (isMainShut(machine, end.now)) return crankFrom(machine, end.now);
  const rest = restOutcome(machine, end.now, "silent");
  return { ...rest, symptom: restSymptom(machine, end.now) };
}

/** What an attempt looks like, without the volts: all that matters after an act. */
export function startSymptom(machine: LoadedMachine): CrankSymptom {
  const end = settle(machine);
  if (end.before !== undefined) return "chatter";
  if (!isMainShut(machine, end.now)) return restSymptom(machine, end.now);
  const { how } = crank(machine.rotor, feedOf(machine, end.now.heavy));
  return how === "held" ? "loud-click" : how;
}

/**
 * Lets the switches act until they rest, or until a state comes back: then the actuator chatters
 * between the two last states and a meter shows their mean by the time spent in each.
 */
function settle(machine: LoadedMachine): { readonly now: Moment; readonly before?: Moment } {
  const seen: number[] = [];
  let now = momentOf(machine, "start", 0);
  for (let i = 0; i < MOST_CHANGES && now.next !== now.closed; i++) {
    seen.push(now.closed);
    const then = momentOf(machine, "start", now.next);
    if (seen.includes(then.closed)) return { now: then, before: now };
    now = then;
  }
  return { now };
}

function isMainShut({ simulator }: LoadedMachine, { closed }: Moment): boolean {
  return ((closed >> simulator.mainActuator) & 1) === 1;
}

function restSymptom(machine: LoadedMachine, now: Moment): CrankSymptom {
  if (now.closed !== 0 || now.reach >= figure(machine, "person", "twitch")) return "faint-click";
  const lit = momentOf(machine, "on", 0);
  const { lamp, network } = machine.simulator.assembly;
  const { electrics } = machine.simulator;
  const across = stateVolts(electrics, lamp.from, lit) - stateVolts(electrics, lamp.to, lit);
  return Math.abs(across) / network.volts < LAMP_OUT ? "dead" : "silent";
}

/** Lamp volts as a share of nominal. */
export function lampShare(machine: LoadedMachine, { volts }: Pick<Outcome, "volts">): number {
  const { lamp, network } = machine.simulator.assembly;
  return Math.abs(voltsAt(volts, lamp.from) - voltsAt(volts, lamp.to)) / network.volts;
}

/** One switch state with the rotor at rest, and what the coils make of it. */
interface Moment extends Load {
  readonly closed: number;
  /** Greatest pull of an actuator still open, against what it needs. */
  readonly reach: number;
  /** The actuators that will hold next, by bit. */
  readonly next: number;
}

function momentOf(machine: LoadedMachine, key: KeyPosition, closed: number): Moment {
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

/** The rotor's answer to the state solved last, which is the one that has settled. */
function crankFrom(machine: LoadedMachine, { heavy, closed }: Moment): Outcome {
  const { electrics } = machine.simulator;
  const { how, amps, speed } = crank(machine.rotor, feedOf(machine, heavy));
  const load = { motorAmps: amps, heavy };
  const symptom = how === "held" ? "loud-click" : how;
  const volts = allVolts(electrics, load);
  const battery = batteryAmps(electrics, load);
  return { symptom, volts, batteryAmps: battery, motorAmps: amps, heavy, speed, closed };
}

function chatter(machine: LoadedMachine, before: Moment, after: Moment): Outcome {
  const share = figure(machine, "person", "meter-duty");
  const mean = (a: number, b: number) => share * a + (1 - share) * b;
  const second = restOutcome(machine, after, "chatter");
  solveState(machine.simulator.electrics, "start", before.closed);
  const first = restOutcome(machine, before, "chatter");
  const volts = first.volts;
  for (let i = 0; i < volts.length; i++) volts[i] = mean(volts[i] ?? 0, second.volts[i] ?? 0);
  return {
    ...first,
    batteryAmps: mean(first.batteryAmps, second.batteryAmps),
    motorAmps: mean(first.motorAmps, second.motorAmps),
  };
}

/** The outcome of the state solved last, with the rotor at rest. */
function restOutcome(machine: LoadedMachine, moment: Moment, symptom: CrankSymptom): Outcome {
  const { electrics } = machine.simulator;
  const { motorAmps, heavy, closed } = moment;
  const volts = allVolts(electrics, moment);
  const battery = batteryAmps(electrics, moment);
  return { symptom, volts, batteryAmps: battery, motorAmps, heavy, speed: 0, closed };
}

function figure(machine: LoadedMachine, part: string, name: string): number {
  return machine.figures[machine.simulator.assembly.slot(part, name)] ?? 0;
}

/** The supply as the motor sees it in the state solved last: volts behind ohms (Thévenin). */
function feedOf({ simulator }: LoadedMachine, heavy: boolean): Feed {
  const { assembly, electrics } = simulator;
  const { from, to } = assembly.motor;
  const idle = { motorAmps: 0, heavy };
  return {
    volts: stateVolts(electrics, from, idle) - stateVolts(electrics, to, idle),
    ohms: voltsAt(electrics.room.second, to) - voltsAt(electrics.room.second, from),
  };
}
