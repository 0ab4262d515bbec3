import type { CircuitAct } from "./circuit.ts";

/** What a person told or measured, about the machine as found or after an act. */
export type CircuitEvidence = StateEvidence | ReadingEvidence;

export interface StateEvidence {
  readonly kind: "state";
  readonly observation: string;
  /** P(this report | true state), each in [0, 1]; a state not named counts 0. */
  readonly weights: Readonly<Record<string, number>>;
  /** The act it was observed after; absent = as found. */
  readonly after?: CircuitAct;
}

export interface ReadingEvidence {
  readonly kind: "reading";
  readonly observation: string;
  /** The band the true value is said to lie in, in the test point's unit; low ≤ high. */
  readonly low: number;
  readonly high: number;
  /** Standard deviation of the meter and of how the band was read, in the same unit. */
  readonly meterError: number;
  /** Chance of each place the probes may have been ("post", "clamp"); absent = the test point. */
  readonly places?: Readonly<Record<string, number>>;
  /** The act it was taken after; absent = as found. */
  readonly after?: CircuitAct;
  /** Chance that it was taken elsewhere or read wrongly altogether; absent: one in thirty. */
  readonly doubt?: number;
}

/** A range of readings: median and 5–95 %. */
export interface ReadingRange {
  readonly low: number;
  readonly median: number;
  readonly high: number;
}

/** The joint likelihood of one group of observations over simulated machines. */
export interface JointLikelihood {
  /** Every observation it speaks for; rows must not be multiplied in for these. */
  readonly observations: ReadonlySet<string>;
  /** Fault ids, `nothing-wrong`, and pairs `a+b` with a before b in the fault list. */
  readonly hypotheses: readonly string[];
  /** Whether it can weigh this item: it knows some observations only as found, not after acts. */
  weighs(evidence: CircuitEvidence): boolean;
  /** The states of an observation; empty for readings. */
  statesOf(observation: string): readonly string[];
  /**
   * Natural logarithm of P(evidence | hypothesis), one entry a hypothesis, always finite.
   * Evidence that it does not weigh is refused with a RangeError.
   */
  logLikelihood(evidence: readonly CircuitEvidence[]): Float64Array;
  /**
   * P(state | hypothesis, evidence), hypothesis-major (hypotheses × states); each row sums to 1
   * within 1e-9. For a reading pass the inner edges of its bands: k edges make k + 1 states.
   */
  predictive(evidence: readonly CircuitEvidence[], question: Question): Float64Array;
  /**
   * What the machines of each hypothesis that fit the evidence would read.
   * @param hypotheses those wanted, in this order; absent: all
   */
  expected(
    evidence: readonly CircuitEvidence[],
    testPoint: string,
    hypotheses?: readonly string[],
  ): readonly ReadingRange[];
  /**
   * The readings among the evidence that no machine which fits the rest could show, whatever its
   * fault: 48 V on a 12 V machine, 13 V at the starter with 6 V at the battery.
   */
  unexplained(evidence: readonly CircuitEvidence[]): readonly ReadingEvidence[];
  /**
   * Share of what people see and hear on a real machine that the simulation does not foresee, in
   * [0, 1): then any state is as likely as another.
   */
  readonly unforeseen: number;
  /** Other places people mean by a test point's words; empty where there is only one. */
  placesOf(testPoint: string): readonly string[];
  /** Share of machines with the fault whose owner would notice: how a prior moves with frost. */
  readonly noticed: Float64Array;
}

export interface Question {
  readonly observation: string;
  readonly after?: CircuitAct;
  /** Inner edges of the verdict bands, ascending, for a reading. */
  readonly edges?: readonly number[];
}
