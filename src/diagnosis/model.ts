import type { CircuitAct } from "../domain/circuit.ts";
import type { MachineFacts, Report } from "../domain/evidence.ts";
import type { JointLikelihood } from "../domain/joint-likelihood.ts";
import type { Knowledge, Observation } from "../domain/knowledge.ts";
import type { FaultRepair } from "./fault-repair.ts";

/**
 * What may be wrong, as parallel arrays. Entry 0 is "nothing wrong now", then each fault alone,
 * then pairs, and last "something else". All but the last are called the known hypotheses.
 */
export interface Hypotheses {
  /** Faults that this machine can have; `first` and `second` point into it. */
  readonly faults: readonly string[];
  readonly count: number;
  /** Index of the fault, or -1 for "nothing wrong" and "something else". */
  readonly first: Int32Array;
  /** Index of the second fault of a pair, or -1. */
  readonly second: Int32Array;
  /** 1 for a cause (`first`) with the consequence it brought along (`second`). */
  readonly declared: Uint8Array;
  /** P(hypothesis | machine); sums to 1. */
  readonly prior: Float64Array;
}

/** Rows that several hypotheses share: the row of h begins at `rowOf[h] * width`. */
export interface SharedRows {
  readonly width: number;
  /** One entry a known hypothesis. */
  readonly rowOf: Int32Array;
  readonly rows: Float64Array;
}

/** P(reports | known hypothesis) = `like[rowOf[h]]`. */
export interface SharedLikelihood {
  readonly rowOf: Int32Array;
  readonly like: Float64Array;
  /** How much likelier "something else" makes it than known faults do on average; absent: as likely. */
  readonly elseLift?: number;
}

/**
 * What was reported of some observations: P(reports | true state) for each state. A list has two
 * entries a member: absent, present.
 */
export type Seen = ReadonlyMap<string, Float64Array>;

/** One reading as it was told. */
export interface Measured {
  /** In the observation's unit; absent where only a band is certain. */
  readonly value?: number;
  /** Where the probes were, where that was told. */
  readonly probes?: NonNullable<Report["probes"]>;
  /** Chance that this reporter measures something else altogether, in [0, 1]. */
  readonly doubt: number;
}

/** The readings of a stretch of time, by observation; each has at least one. */
export type Measurements = ReadonlyMap<string, readonly Measured[]>;

/** One act that changes a simulated circuit, with what was seen of its group before and after. */
export interface Passage {
  readonly act: CircuitAct;
  /** How often the act is done well enough to change what it should; else nothing changes. */
  readonly doneWell: number;
  readonly before: Seen;
  readonly measured: Measurements;
  readonly after: Seen;
  readonly measuredAfter: Measurements;
}

/** What a passage says of each known hypothesis. */
export interface Passed {
  /** 1 where the circuit simulates a fault of the hypothesis. */
  readonly known: Uint8Array;
  /** P(engine does not crank properly after the act, what was seen then | hypothesis, before). */
  readonly kept: Float64Array;
  /** P(engine cranks properly after the act, what was seen then | hypothesis, before). */
  readonly gone: Float64Array;
  /** Whether the first, and the second, fault is one that the circuit simulates, as bits 1 and 2. */
  readonly inside: Uint8Array;
}

/** Observations that are weighed together; given the hypothesis, groups are independent. */
export interface EvidenceGroup {
  readonly id: string;
  readonly observations: readonly string[];
  /** P(reports | hypothesis), jointly over the group; rows make nothing of numbers and probes. */
  weigh(seen: Seen, measured?: Measurements): SharedLikelihood;
  /** Reports from both sides of an act, weighed on the same machines; circuits alone can. */
  passThrough?(passage: Passage): Passed;
  /** P(true state of the observation | hypothesis, what was seen of the group); rows sum to 1. */
  predict(seen: Seen, observation: string): SharedRows;
}

export interface CompiledObservation {
  readonly source: Observation;
  readonly isList: boolean;
  readonly stateIndex: ReadonlyMap<string, number>;
  /** Position of its group in `Model.groups`. */
  readonly group: number;
  /** P(true state) over all known hypotheses before any evidence; for a list P(present). */
  readonly predictive: Float64Array;
}

/** The knowledge as the engine uses it: compiled once per version and machine, never changed. */
export interface Model {
  readonly knowledge: Knowledge;
  readonly facts: MachineFacts;
  readonly hypotheses: Hypotheses;
  readonly groups: readonly EvidenceGroup[];
  /** The simulated circuits among the groups. */
  readonly joint: readonly JointLikelihood[];
  readonly observations: ReadonlyMap<string, CompiledObservation>;
  /** How each fault of `hypotheses.faults` is found and mended. */
  readonly repairs: readonly FaultRepair[];
  /** System volts with their chances; one entry when they are known. */
  readonly volts: readonly { readonly volts: number; readonly share: number }[];
}

/** Index of "nothing wrong now". */
export const NOTHING_WRONG = 0;

/** Index of "something else". */
export function somethingElseOf(hypotheses: Hypotheses): number {
  return hypotheses.count - 1;
}

/** No report at all. */
export const NOTHING_SEEN: Seen = new Map();
