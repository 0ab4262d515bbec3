import type { MachineKindId } from "./vocabulary.ts";

/** A line of the shop's own part file: what it keeps of a generic part, under its own number. */
export interface StockedPart {
  /** The generic part's id. */
  readonly part: string;
  readonly number: string;
  /** Pieces on the shelf, 0 or more. */
  readonly stock: number;
  readonly shelf?: string;
  /** Machines it fits; empty: any. */
  readonly kinds: readonly MachineKindId[];
  /** System voltage it is for; absent: any. */
  readonly volts?: number;
}
