import type { KeyPosition } from "../domain/circuit.ts";
import type { Assembly } from "./assembly.ts";
import { POLARISATION_AMPS } from "./battery.ts";
import type { MachineFigures } from "./machine.ts";
import { type Parting, type PartingRule, partingRules, partingsOf } from "./parting.ts";
import {
  type OhmsRule,
  OPEN_OHMS,
  ohmsRule,
  type Source,
  type SourceRule,
  sourceRule,
} from "./resistance.ts";
import { createWorkspace, solveNetwork, type Workspace } from "./star-mesh.ts";

/** The meter that stands between every point and the black probe, in ohms. */
export const METER_OHMS = 10e6;
/** The least a part may have: a perfect joint would be a loop of zero ohms. */
const LEAST_OHMS = 1e-6;

/** The circuit of one machine with its conductances worked out; reused from machine to machine. */
export interface Electrics {
  readonly assembly: Assembly;
  readonly ohms: readonly OhmsRule[];
  readonly supplies: readonly SourceRule[];
  /** Conductance of each branch when closed, in siemens. */
  readonly conductances: Float64Array;
  readonly sources: Source[];
  readonly partingRules: readonly PartingRule[];
  /** The bad contacts of the machine that is loaded. */
  partings: readonly Parting[];
  /** Everything that no switch and no bad contact changes. */
  readonly fixed: Workspace;
  readonly room: Workspace;
}

export function createElectrics(assembly: Assembly): Electrics {
  return {
    assembly,
    ohms: assembly.branches.map((branch) => ohmsRule(assembly, branch)),
    supplies: assembly.batteries.map((battery) => sourceRule(assembly, battery)),
    conductances: new Float64Array(assembly.branches.length),
    sources: assembly.batteries.map(() => ({ emf: 0, polarisation: 0, siemens: 0 })),
    partingRules: partingRules(assembly),
    partings: [],
    fixed: createWorkspace(assembly.plan),
    room: createWorkspace(assembly.plan),
  };
}

/** Takes a machine's figures at a temperature; every solve after refers to it. */
export function loadElectrics(to: Electrics, figures: MachineFigures, celsius: number): void {
  const { branches, batteries, motor } = to.assembly;
  const { fixed } = to;
  fixed.link.fill(0);
  fixed.ground.fill(1 / METER_OHMS);
  for (const side of [fixed.first, fixed.second, fixed.third]) side.fill(0);
  to.partings = partingsOf(to.partingRules, figures);
  for (let i = 0; i < branches.length; i++) {
    const branch = branches[i];
    const rule = to.ohms[i];
    if (branch === undefined || rule === undefined) continue;
    const siemens = 1 / Math.max(LEAST_OHMS, rule(figures, celsius));
    to.conductances[i] = siemens;
    if (branch.part.sort === "contact" || to.partings.some(({ number }) => number === i)) continue;
    addConductance(fixed, branch.place, siemens);
  }
  batteries.forEach((battery, i) => {
    const source = to.supplies[i]?.(figures, celsius);
    if (source === undefined) return;
    to.sources[i] = source;
    addConductance(fixed, battery.place, source.siemens);
    inject(fixed.first, battery, source.emf * source.siemens);
    inject(fixed.third, battery, -source.polarisation * source.siemens);
  });
  inject(fixed.second, motor, 1);
}

/**
 * Solves one switch state. `room.first` then holds the volts with no motor current and the
 * batteries at rest voltage, `room.second` the change for each amp through the motor, `room.third`
 * the change once the batteries deliver more than their activation loss needs.
 * @param closed bit i set: actuator i holds its contact shut
 */
export function solveState(of: Electrics, key: KeyPosition, closed: number): void {
  const { room, fixed } = of;
  const { plan, switched } = of.assembly;
  room.link.set(fixed.link);
  room.ground.set(fixed.ground);
  room.first.set(fixed.first);
  room.second.set(fixed.second);
  room.third.set(fixed.third);
  for (const { number, place, actuator, keys } of switched) {
    const shut = actuator >= 0 ? ((closed >> actuator) & 1) === 1 : keys.includes(key);
    addConductance(room, place, shut ? (of.conductances[number] ?? 0) : 1 / OPEN_OHMS);
  }
  for (const { number, branch, isParted } of of.partings) {
    addConductance(room, branch.place, isParted ? 1 / OPEN_OHMS : (of.conductances[number] ?? 0));
  }
  solveNetwork(plan, room);
}

/** What the motor draws, and whether the batteries' activation loss is there. */
export interface Load {
  readonly motorAmps: number;
  readonly heavy: boolean;
}

/** Volts of a point in the state solved last. */
export function stateVolts(of: Electrics, point: number, { motorAmps, heavy }: Load): number {
  if (point < 0) return 0;
  const { first, second, third } = of.room;
  const volts = (first[point] ?? 0) + motorAmps * (second[point] ?? 0);
  return heavy ? volts + (third[point] ?? 0) : volts;
}

/**
 * Opens the bad contacts that the state solved last is too much for.
 * @param factor how many times its volts a contact stands
 * @returns whether any opened: the state must then be solved again
 */
export function partContacts(of: Electrics, load: Load, factor: number): boolean {
  let hasParted = false;
  for (const parting of of.partings) {
    const { from, to } = parting.branch;
    const across = Math.abs(stateVolts(of, from, load) - stateVolts(of, to, load));
    if (parting.isParted || across <= factor * parting.volts) continue;
    parting.isParted = true;
    hasParted = true;
  }
  return hasParted;
}

/** Volts of every point in the state solved last. */
export function allVolts(of: Electrics, load: Load): Float64Array {
  const volts = new Float64Array(of.room.first.length);
  for (let i = 0; i < volts.length; i++) volts[i] = stateVolts(of, i, load);
  return volts;
}

/** Current of the battery that delivers most, in amps, in the state solved last. */
export function batteryAmps(of: Electrics, load: Load): number {
  const { batteries } = of.assembly;
  let amps = 0;
  for (let i = 0; i < batteries.length; i++) {
    const battery = batteries[i];
    const source = of.sources[i];
    if (battery === undefined || source === undefined || battery.part.hidden) continue;
    const emf = source.emf - (load.heavy ? source.polarisation : 0);
    const across = stateVolts(of, battery.to, load) - stateVolts(of, battery.from, load);
    amps = Math.max(amps, (emf - across) * source.siemens);
  }
  return amps;
}

/** Volts of a point against the reference; the reference itself is −1. */
export function voltsAt(volts: Float64Array, point: number): number {
  return point < 0 ? 0 : (volts[point] ?? 0);
}

/** Whether the batteries' activation loss counts at this current. */
export function isHeavy(amps: number): boolean {
  return amps > POLARISATION_AMPS;
}

function addConductance(room: Workspace, place: number, siemens: number): void {
  if (place >= 0) room.link[place] = (room.link[place] ?? 0) + siemens;
  else room.ground[-1 - place] = (room.ground[-1 - place] ?? 0) + siemens;
}

/** Drives a current through a source: taken at `from`, delivered at `to`. */
function inject(sides: Float64Array, ends: { from: number; to: number }, amps: number): void {
  if (ends.from >= 0) sides[ends.from] = (sides[ends.from] ?? 0) - amps;
  if (ends.to >= 0) sides[ends.to] = (sides[ends.to] ?? 0) + amps;
}
