import type { Fuel, MachineKindId, Performer, Reporter } from "./vocabulary.ts";

/** What is known of the machine before anything is asked; unknown things are absent. */
export interface MachineFacts {
  readonly kind: MachineKindId;
  readonly fuel?: Fuel;
  readonly volts?: number;
  readonly positiveEarth?: boolean;
  readonly cylinders?: number;
  readonly hours?: number;
  readonly ageYears?: number;
  /** Features that are known to be there or not, by feature id. */
  readonly features?: Readonly<Record<string, boolean>>;
  /** As the owner calls it. */
  readonly words?: string;
  /** From its plate. */
  readonly serial?: string;
}

/** What a report says. */
export type Said =
  /** Weights over states; 1 on one state when it is plain. They sum to 1. */
  | { readonly kind: "states"; readonly weights: Readonly<Record<string, number>> }
  /** A reading, in the observation's unit, as measured (not scaled to 12 V). */
  | { readonly kind: "value"; readonly value: number }
  /** For list observations: members that were named, and members that were denied. */
  | {
      readonly kind: "members";
      readonly present: readonly string[];
      readonly absent: readonly string[];
    }
  | { readonly kind: "unknown" };

/** One report of one observation. A later report of the same observation, reporter class and epoch replaces an earlier one. */
export interface Report {
  readonly observation: string;
  readonly epoch: number;
  readonly reporter: Reporter;
  readonly said: Said;
  /** 0 = plainly stated, 1 = worth nothing ("should be", "I think"). */
  readonly hedge: number;
  /** True where nobody asked: what has nothing to do with the trouble is seldom mentioned. */
  readonly unasked?: boolean;
  /** Probe place for voltages, where it was told. */
  readonly probes?: "post" | "clamp" | "unknown";
}

/** Something that was done to the machine. It opens the epoch it names. */
export interface ActDone {
  readonly act: string;
  /** The epoch that begins with it; the first epoch is 0. */
  readonly epoch: number;
  readonly by: Performer;
  /** `cured`: the complaint is gone; `no-change`; `changed`: asked anew in the new epoch. */
  readonly outcome: "cured" | "no-change" | "changed" | "unknown";
}

export interface Evidence {
  readonly reports: readonly Report[];
  readonly acts: readonly ActDone[];
}

/** Who could do what now: decides which checks may be chosen. */
export interface Situation {
  readonly performer: Performer;
  readonly place: "at-machine" | "can-go" | "not-there" | "for-someone-else" | "unknown";
  /** Things the operator has: `meter`, `charger`, `leads`, `second-person`. */
  readonly has: readonly string[];
  /** Checks and acts already asked in the present epoch, answered or not. */
  readonly asked: readonly string[];
  /** Checks that could not be done or were declined for good. */
  readonly refused: readonly string[];
  readonly urgency: "low" | "normal" | "high";
  /** Parts and tools at hand; for an operator none. Absent: the kit is still open. */
  readonly carried?: readonly string[];
  /** Minutes from the shop to the machine, one way; absent: the shop's typical. */
  readonly travelMinutes?: number;
}
