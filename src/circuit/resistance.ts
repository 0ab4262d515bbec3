import type { Assembly, Branch } from "./assembly.ts";
import { batteryOhms, restVolts } from "./battery.ts";
import { cableOhms, copperFactor } from "./copper.ts";
import type { MachineFigures } from "./machine.ts";

/** An open contact, in ohms: far above the meter, or dead wires would show ghost volts. */
export const OPEN_OHMS = 1e9;

export type OhmsRule = (figures: MachineFigures, celsius: number) => number;

/** How a part's resistance in ohms follows from its figures and its temperature. */
export function ohmsRule(assembly: Assembly, { part }: Branch): OhmsRule {
  const at = (figure: string) => assembly.slot(part.id, figure);
  const own = at("resistance");
  if (part.sort === "cable") {
    const [size, length] = [at("size"), at("length")];
    return (f, celsius) =>
      cableOhms(f[size] ?? 1, f[length] ?? 0) * copperFactor(celsius) + (f[own] ?? 0);
  }
  if (part.sort === "coil") return (f, celsius) => (f[own] ?? OPEN_OHMS) * copperFactor(celsius);
  if (part.sort === "lamp") {
    const [power, volts] = [at("power"), assembly.network.volts];
    return (f) => (volts * volts) / (f[power] ?? 1);
  }
  return (f) => f[own] ?? OPEN_OHMS;
}

/** A battery as the network sees it. */
export interface Source {
  /** Volts at rest. */
  readonly emf: number;
  /** Volts lost as soon as it delivers real current. */
  readonly polarisation: number;
  readonly siemens: number;
}

export type SourceRule = (figures: MachineFigures, celsius: number) => Source;

/** How a battery's source follows from its figures and temperature; a dead one has a fixed rest. */
export function sourceRule(assembly: Assembly, { part }: Branch): SourceRule {
  const at = (figure: string) => assembly.slot(part.id, figure);
  const [nominal, cca, charge, age] = [at("nominal"), at("cca"), at("charge"), at("age")];
  const [offset, added, dead] = [at("offset"), at("added-resistance"), at("dead")];
  const polarisation = at("polarisation");
  return (f, celsius) => {
    const battery = {
      nominalVolts: f[nominal] ?? 12,
      cca: f[cca] ?? 1,
      charge: Math.min(1, Math.max(0, f[charge] ?? 1)),
      age: f[age] ?? 1,
      celsius,
    };
    const deadVolts = (f[dead] ?? 0) * battery.nominalVolts;
    const emf = deadVolts > 0 ? deadVolts : restVolts(battery) + (f[offset] ?? 0);
    const siemens = 1 / (batteryOhms(battery) + (f[added] ?? 0));
    return { emf, polarisation: deadVolts > 0 ? 0 : (f[polarisation] ?? 0), siemens };
  };
}
