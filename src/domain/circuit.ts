/**
 * A starting circuit as data (what a circuit file says once it is read and checked) and what the
 * simulated machines say about the evidence of a case.
 *
 * Units: volts, amps, ohms, newton metres, radians per second, degrees Celsius.
 */

/** Where the key is held while something is observed. */
export type KeyPosition = "off" | "on" | "start";

/**
 * How a figure is spread over the machines of one class.
 * `about` is log-normal: `median` times or divided by `factor` covers two machines in three.
 */
export type Spread =
  | { readonly kind: "exact"; readonly value: number }
  | { readonly kind: "even"; readonly low: number; readonly high: number }
  | {
      readonly kind: "normal" | "about";
      /** Mean of a normal spread, median of a log-normal one. */
      readonly middle: number;
      /** Standard deviation (normal) or factor above 1 (about). */
      readonly spread: number;
      readonly low?: number;
      readonly high?: number;
    }
  | { readonly kind: "choice"; readonly choices: readonly WeightedSpread[] };

export interface WeightedSpread {
  readonly weight: number;
  readonly spread: Spread;
}

/** What a part of the network is; the sort decides which figures it needs. */
export type PartSort =
  | "battery"
  | "cable"
  | "joint"
  | "fuse"
  | "isolator"
  | "interlock"
  | "contact"
  | "coil"
  | "motor"
  | "lamp"
  | "resistor";

/** A two-terminal part between two named points. */
export interface CircuitPart {
  readonly id: string;
  readonly sort: PartSort;
  readonly from: string;
  readonly to: string;
  /** Named figures, e.g. `ohms`, `squareMm`, `metres`, `cca`, `charge`. */
  readonly figures: Readonly<Record<string, Spread>>;
  /** Key positions in which a contact is closed; absent for a contact moved by an actuator. */
  readonly closed?: readonly KeyPosition[];
  /** What the part is called on a drawing. */
  readonly label: string;
  /** Left out of the drawing: a helper that is not part of the machine. */
  readonly hidden: boolean;
}

/** A relay, contactor or shift solenoid: coils that pull a contact shut. */
export interface Actuator {
  readonly id: string;
  readonly coils: readonly string[];
  /** The coil that alone must keep it in. */
  readonly hold: string;
  readonly contact: string;
  /** `pullVolts`, `dropVolts` on healthy coils at 20 °C; `stick` multiplies the pull needed. */
  readonly figures: Readonly<Record<string, Spread>>;
  readonly sound: "faint" | "loud";
  readonly label: string;
}

/** One way in which a fault or an act changes the circuit; one of several is drawn by weight. */
export interface CircuitChange {
  readonly weight: number;
  readonly settings: readonly FigureChange[];
}

/** `part` also names the actuators, `drive`, `engine`, `person` and `running`. */
export interface FigureChange {
  readonly part: string;
  readonly figure: string;
  readonly how: "becomes" | "plus" | "times";
  readonly value: Spread;
}

export interface CircuitFault {
  readonly id: string;
  readonly changes: readonly CircuitChange[];
  /** A mild form of it, that a machine may have beside its real fault. */
  readonly mild: readonly CircuitChange[];
}

/** A place where a meter or an ear is put; its id is the observation it answers. */
export interface TestPoint {
  readonly id: string;
  readonly label: string;
  readonly key: KeyPosition;
  /** `drop`: a small voltage along one path, exact near zero; `volts`: may show ghosts there. */
  readonly quantity: "volts" | "drop" | "amps" | "charging";
  /** Red probe; for amps the part whose current is taken; for charging the reference. */
  readonly at: string;
  /** Black probe: a named point, by default the battery's earthed post. */
  readonly against: string;
  /** Another point people mean by the same words, e.g. the clamp instead of the post. */
  readonly otherPlaces: Readonly<Record<string, string>>;
}

/** What people do to a machine that changes its circuit. */
export type CircuitAct = "jump" | "charge" | "clean" | "earth-lead" | "bridge";

/** Dynamic viscosity of an oil at two temperatures: [°C, mPa·s] each. */
export interface Oil {
  readonly id: string;
  readonly cold: readonly [number, number];
  readonly warm: readonly [number, number];
}

/** Which machines a circuit stands for. */
export interface CircuitUse {
  readonly kind: string;
  /** Empty: any fuel. */
  readonly fuels: readonly string[];
}

export interface CircuitNetwork {
  readonly id: string;
  readonly title: string;
  readonly uses: readonly CircuitUse[];
  /** Weighed beside the 12 V circuit where nobody stated the volts. */
  readonly weighedUnstated: boolean;
  /** Nominal volts: 6, 12 or 24. */
  readonly volts: number;
  readonly earth: "negative" | "positive";
  /** The battery's earthed post, where the black probe rests. */
  readonly reference: string;
  readonly parts: readonly CircuitPart[];
  readonly actuators: readonly Actuator[];
  readonly drive: Readonly<Record<string, Spread>>;
  readonly engine: Readonly<Record<string, Spread>>;
  readonly person: Readonly<Record<string, Spread>>;
  readonly running: Readonly<Record<string, Spread>>;
  /** The figures that grow or shrink together with the machine's size, and how. */
  readonly size: Spread;
  readonly oils: readonly Oil[];
  readonly faults: readonly CircuitFault[];
  readonly acts: Readonly<Partial<Record<CircuitAct, readonly CircuitChange[]>>>;
  readonly testPoints: readonly TestPoint[];
}

/** What a simulated attempt to start looks like to whoever stands beside it. */
export const CRANK_SYMPTOMS = [
  "dead",
  "silent",
  "faint-click",
  "loud-click",
  "chatter",
  "part-turn",
  "slow",
  "normal",
  "spins-free",
  "grinds",
] as const;
export type CrankSymptom = (typeof CRANK_SYMPTOMS)[number];

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
  /** Other places people mean by a test point's words; empty where there is only one. */
  placesOf(testPoint: string): readonly string[];
  /** Effective number of machines left in each hypothesis after the evidence. */
  effectiveMachines(evidence: readonly CircuitEvidence[]): Float64Array;
  /** Share of machines with the fault whose owner would notice: how a prior moves with frost. */
  readonly noticed: Float64Array;
}

export interface Question {
  readonly observation: string;
  readonly after?: CircuitAct;
  /** Inner edges of the verdict bands, ascending, for a reading. */
  readonly edges?: readonly number[];
}
