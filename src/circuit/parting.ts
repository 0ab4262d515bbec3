import type { Assembly, Branch } from "./assembly.ts";
import type { MachineFigures } from "./machine.ts";

/** Sorts of parts that can hold a bad contact. */
const SORTS: readonly string[] = ["cable", "joint", "fuse", "isolator"];

/**
 * A bad contact parts at once from this many times its volts on, before a solenoid has moved:
 * the heat grows with their square, so that it comes nine times as fast. Estimate.
 */
export const AT_ONCE = 3;

/** A branch that may open under load, and where its figures stand. */
export interface PartingRule {
  readonly branch: Branch;
  /** Its number among the branches. */
  readonly number: number;
  readonly partsAt: number;
  readonly staysParted: number;
}

/** A bad contact of one machine. */
export interface Parting {
  readonly branch: Branch;
  readonly number: number;
  /** Volts across it at which the few spots that touch melt and let go, > 0. */
  readonly volts: number;
  /** Whether it stays open until somebody moves it; else it touches again with the load gone. */
  readonly stays: boolean;
  isParted: boolean;
}

/** Finds, once for all machines, what may part. */
export function partingRules(assembly: Assembly): readonly PartingRule[] {
  return assembly.branches.flatMap((branch, number) => {
    const { id, sort } = branch.part;
    if (!SORTS.includes(sort)) return [];
    const [partsAt, staysParted] = ["parts-at", "stays-parted"].map((f) => assembly.slot(id, f));
    if (partsAt === undefined || staysParted === undefined) return [];
    return [{ branch, number, partsAt, staysParted }];
  });
}

/** The bad contacts of a machine, all touching. */
export function partingsOf(rules: readonly PartingRule[], figures: MachineFigures): Parting[] {
  const found: Parting[] = [];
  for (const { branch, number, partsAt, staysParted } of rules) {
    const volts = figures[partsAt] ?? 0;
    if (volts <= 0) continue;
    found.push({ branch, number, volts, stays: figures[staysParted] === 1, isParted: false });
  }
  return found;
}

/** The load is gone: what does not stay open touches again. */
export function touchAgain(partings: readonly Parting[]): void {
  for (const parting of partings) if (!parting.stays) parting.isParted = false;
}

/** The contacts that are open, by bit. */
export function partedBits(partings: readonly Parting[]): number {
  return partings.reduce((bits, { isParted }, i) => (isParted ? bits | (1 << i) : bits), 0);
}

/** Whether something stays open until somebody moves it. */
export function isStillParted(partings: readonly Parting[]): boolean {
  return partings.some(({ isParted, stays }) => isParted && stays);
}
