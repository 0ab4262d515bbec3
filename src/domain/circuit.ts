/**
 * A starting circuit as data: what a circuit file says once it is read and checked.
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
