import type { Report, Situation } from "../../src/domain/evidence.ts";
import type { Reporter } from "../../src/domain/vocabulary.ts";

export interface Telling {
  readonly epoch?: number;
  readonly reporter?: Reporter;
  readonly hedge?: number;
}

/** A plain report of a state. */
export function told(observation: string, state: string, given: Telling = {}): Report {
  return {
    observation,
    epoch: given.epoch ?? 0,
    reporter: given.reporter ?? "operator",
    said: { kind: "states", weights: { [state]: 1 } },
    hedge: given.hedge ?? 0,
  };
}

/** A reading, in the observation's unit. */
export function read(observation: string, value: number, given: Telling = {}): Report {
  return { ...told(observation, "", given), said: { kind: "value", value } };
}

/** Members of a list that were named, and some that were denied. */
export function named(
  observation: string,
  present: readonly string[],
  absent: readonly string[] = [],
): Report {
  return { ...told(observation, ""), said: { kind: "members", present, absent } };
}

/** An operator standing at the machine with nothing in hand. */
export const operatorThere: Situation = {
  performer: "operator",
  place: "at-machine",
  has: [],
  asked: [],
  refused: [],
  urgency: "normal",
};

export const technicianThere: Situation = {
  ...operatorThere,
  performer: "technician",
  has: ["meter", "charger", "leads", "second-person"],
};
