import type { Actuator } from "../domain/circuit.ts";
import type { Assembly } from "./assembly.ts";
import { type Electrics, type Load, stateVolts } from "./electrics.ts";
import type { MachineFigures } from "./machine.ts";

/** An actuator with its coils found in the network. */
export interface Puller {
  readonly windings: readonly Winding[];
  /** Slots of what closes it, keeps it and hinders it. */
  readonly needed: number;
  readonly kept: number;
  readonly stick: number;
}

interface Winding {
  readonly number: number;
  readonly from: number;
  readonly to: number;
  readonly turns: number;
}

export function findPuller(assembly: Assembly, actuator: Actuator): Puller {
  const windings = actuator.coils.map((coil): Winding => {
    const number = assembly.branches.findIndex(({ part }) => part.id === coil);
    const branch = assembly.branches[number];
    if (branch === undefined) throw new RangeError(`${actuator.id} has no coil "${coil}"`);
    return { number, from: branch.from, to: branch.to, turns: assembly.slot(coil, "turns") };
  });
  const at = (figure: string) => assembly.slot(actuator.id, figure);
  return { windings, needed: at("needed"), kept: at("kept"), stick: at("stick") };
}

/**
 * Ampere turns of an actuator in the state solved last; windings that work against each other
 * cancel. A pull-in winding that returns through the motor loses its current once the main contact
 * is shut, or never has it when the brushes do not touch: that comes out of the network, no rule
 * says so.
 */
export function ampereTurns(
  puller: Puller,
  figures: MachineFigures,
  of: Electrics,
  load: Load,
): number {
  let made = 0;
  for (const { number, from, to, turns } of puller.windings) {
    const across = stateVolts(of, from, load) - stateVolts(of, to, load);
    made += (figures[turns] ?? 1) * across * (of.conductances[number] ?? 0);
  }
  return Math.abs(made);
}
