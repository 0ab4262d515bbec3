import type { CrankSymptom, KeyPosition } from "../domain/circuit.ts";
import {
  allVolts,
  batteryAmps,
  type Load,
  partContacts,
  solveState,
  stateVolts,
  voltsAt,
} from "./electrics.ts";
import { feedOf, type LoadedMachine, type Moment, momentOf } from "./moment.ts";
import { isStillParted, partedBits, touchAgain } from "./parting.ts";
import { crank } from "./rotor.ts";
import { isMainShut, type Settled, settle } from "./settle.ts";

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
  /** Bad contacts that are open, by bit. */
  readonly parted: number;
}

/** Below this share of nominal volts a lamp is out. */
export const LAMP_OUT = 0.4;
/** From this share on nobody calls a lamp dim. */
export const LAMP_BRIGHT = 0.84;

/** Key off or on, nothing moving; what an attempt before has parted for good stays open. */
export function keyStill(machine: LoadedMachine, key: Exclude<KeyPosition, "start">): Outcome {
  const { electrics } = machine.simulator;
  touchAgain(electrics.partings);
  const moment = momentOf(machine, key, 0);
  const isParted = partContacts(electrics, moment, 1);
  return restOutcome(machine, isParted ? momentOf(machine, key, 0) : moment, "silent");
}

/** Key held on START until nothing changes any more; volts and all. */
export function keyStart(machine: LoadedMachine): Outcome {
  const end = settle(machine);
  if (end.before !== undefined) return chatter(machine, end.before, end.now);
  if (isMainShut(machine, end.now)) return crankFrom(machine, end.now);
  const rest = restOutcome(machine, end.now, "silent");
  return { ...rest, symptom: restSymptom(machine, end) };
}

/** What an attempt looks like, without the volts: all that matters after an act. */
export function startSymptom(machine: LoadedMachine): CrankSymptom {
  const end = settle(machine);
  if (end.before !== undefined) return "chatter";
  if (!isMainShut(machine, end.now)) return restSymptom(machine, end);
  const { how } = crank(machine.rotor, feedOf(machine, end.now.heavy));
  return how === "held" ? "loud-click" : how;
}

function restSymptom(machine: LoadedMachine, { now, heard }: Settled): CrankSymptom {
  if (isMainShut(machine, { closed: heard })) return "loud-click";
  if (heard !== 0 || now.reach >= figure(machine, "person", "twitch")) return "faint-click";
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

/** The rotor's answer to the state solved last, which is the one that has settled. */
function crankFrom(machine: LoadedMachine, { heavy, closed }: Moment): Outcome {
  const { electrics } = machine.simulator;
  const { how, amps, speed } = crank(machine.rotor, feedOf(machine, heavy));
  const load = { motorAmps: amps, heavy };
  const symptom = how === "held" ? "loud-click" : how;
  const volts = allVolts(electrics, load);
  const battery = batteryAmps(electrics, load);
  const parted = partedBits(electrics.partings);
  return { symptom, volts, batteryAmps: battery, motorAmps: amps, heavy, speed, closed, parted };
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
  const parted = partedBits(electrics.partings);
  return { symptom, volts, batteryAmps: battery, motorAmps, heavy, speed: 0, closed, parted };
}

/** Whether an attempt has parted a contact that stays open until somebody moves it. */
export function staysParted({ simulator }: LoadedMachine): boolean {
  return isStillParted(simulator.electrics.partings);
}

function figure(machine: LoadedMachine, part: string, name: string): number {
  return machine.figures[machine.simulator.assembly.slot(part, name)] ?? 0;
}
