import type { CircuitAct } from "./circuit.ts";
import type {
  CauseGroup,
  Drawing,
  Fuel,
  MachineKindId,
  Performer,
  ProcedureStep,
  Reporter,
  Stage,
} from "./vocabulary.ts";

/**
 * The checked model of `flows/`: what the loader returns and every pure part reads. Everything is
 * read-only and every id it mentions exists. Words are English; other languages are found in
 * `locales/` under the key `<kind>-<id>[-<part>]` (see `wordKey`).
 */
export interface Knowledge {
  /** Changes whenever any fact changes; pinned in each case. */
  readonly version: string;
  readonly faults: ReadonlyMap<string, Fault>;
  readonly observations: ReadonlyMap<string, Observation>;
  readonly checks: ReadonlyMap<string, Check>;
  readonly acts: ReadonlyMap<string, Act>;
  readonly remedies: ReadonlyMap<string, Remedy>;
  readonly parts: ReadonlyMap<string, Part>;
  readonly tools: ReadonlyMap<string, Titled>;
  readonly hazards: ReadonlyMap<string, Hazard>;
  readonly redFlags: ReadonlyMap<string, RedFlag>;
  readonly accessGroups: ReadonlyMap<string, AccessGroup>;
  readonly latentGroups: ReadonlyMap<string, LatentGroup>;
  readonly systems: ReadonlyMap<string, Titled>;
  readonly features: ReadonlyMap<string, Titled>;
  /** What one photo can show, and the groups of causes that can be seen on it. Absent: nothing. */
  readonly photos?: ReadonlyMap<string, readonly CauseGroup[]>;
  /** The rules of urgency; their title is the reason that is shown. Absent: there are none. */
  readonly urgencyRules?: ReadonlyMap<string, Titled>;
  /** What drawings of starting circuits call their parts. Absent: nothing is drawn. */
  readonly circuitLabels?: ReadonlyMap<string, Titled>;
  readonly machines: ReadonlyMap<MachineKindId, MachineKind>;
  readonly rates: Rates;
}

export interface Titled {
  readonly id: string;
  readonly title: string;
}

/** Probabilities over the states of an observation, in the observation's own order; sums to 1. */
export type Row = readonly number[];

/** A condition on what is known of the machine; every stated key must hold. */
export interface MachineCondition {
  readonly kinds?: readonly MachineKindId[];
  readonly fuels?: readonly Fuel[];
  /** Features the machine must have, for example `pto`, `seat-switch`, `glow-plugs`. */
  readonly features?: readonly string[];
  readonly volts?: readonly number[];
  /** Inclusive age in years. */
  readonly ageFrom?: number;
  readonly ageTo?: number;
}

/** Multiplies the prior odds of a fault where its condition holds; > 0. */
export interface PriorFactor {
  readonly when: MachineCondition;
  readonly times: number;
  readonly because: string;
}

export interface Fault extends Titled {
  readonly system: string;
  readonly group: CauseGroup;
  /** Relative share of no-start calls over all machines; > 0, normalised after the factors. */
  readonly share: number;
  readonly source: string;
  readonly blocks: Stage;
  readonly needs: MachineCondition;
  readonly factors: readonly PriorFactor[];
  /** P(cranking state | fault), in the order of `crankingStates`; sums to 1. */
  readonly cranking: Row;
  /** P(firing state | fault, engine turns), in the order of `firingStates`; sums to 1. */
  readonly firing: Row;
  /**
   * P(state | fault) for every observation the fault touches, `on-start` excepted; a context
   * observation (age of fuel, storage, weather) already carries its factors here.
   */
  readonly rows: ReadonlyMap<string, Row>;
  /** Faults it commonly brings along: P(consequence | this fault present), in (0, 1). */
  readonly brings: ReadonlyMap<string, number>;
  readonly remedies: readonly string[];
  /** Plain sentence: what is wrong and why it stops the machine. */
  readonly explain: string;
  /** Parts people buy in vain for this complaint: do not buy before the named check. */
  readonly notYet: readonly { readonly part: string; readonly before: string }[];
  /** True where a circuit model also simulates the fault; rows are then the fallback. */
  readonly circuit: boolean;
}

export type ObservationKind = "states" | "number" | "list" | "text";

export interface ObservationState {
  readonly id: string;
  /** Short words: a button, or a line in a list. */
  readonly title: string;
  /** A number's band: from (inclusive) to (exclusive), in the unit, at 12 V; open at the ends. */
  readonly from?: number;
  readonly to?: number;
}

export interface Observation extends Titled {
  readonly kind: ObservationKind;
  /** A list's members are each present or absent; the other kinds hold one state. */
  readonly states: readonly ObservationState[];
  readonly unit?: "V" | "A" | "°C" | "h" | "bar" | "SG" | "Ω" | "rpm";
  /** Bands are multiplied by system volts / 12. */
  readonly scalesWithVolts: boolean;
  /** Smallest and largest reading that can be meant, at 12 V. */
  readonly plausible?: readonly [number, number];
  /** Standard deviation of a reading: absolute part in the unit, and relative part. */
  readonly meterError?: { readonly absolute: number; readonly relative: number };
  /** P(state) when no fault touches it (for lists: P(member present)). */
  readonly usual: Row;
  /** True for circumstances that exist before the fault (storage, weather, recent work). */
  readonly context: boolean;
  /** True where people only tell it unasked; how they name it already allows for that. */
  readonly toldOnly?: boolean;
  /**
   * confusion[reporter][true state][reported state]; rows sum to 1. A list has two rows for all its
   * members: present and absent, each [P(named), P(not named)].
   */
  readonly confusion: Readonly<Record<Reporter, readonly Row[]>>;
  readonly combine: "precedence" | "noisy-or" | "noisy-max";
  /** For noisy-or and noisy-max: P(state) with no cause present. */
  readonly leak?: Row;
  /** Only meaningful in these states of other observations, for example when the engine turns. */
  readonly onlyIf: readonly StateCondition[];
  readonly needs: MachineCondition;
  /** What a state tells of the machine itself: state → feature → there or not. */
  readonly tellsFeatures?: Readonly<Record<string, Readonly<Record<string, boolean>>>>;
  /** The latent group whose state explains its correlation with its siblings. */
  readonly latent?: string;
  /**
   * Set where this is another view of something that is itself observed: rows[parent state] =
   * P(state | true state of the parent). The rows of the faults are then these, averaged over what
   * the fault does to the parent, so heard alone they are right; heard together with the parent
   * the two must be weighed as one.
   */
  readonly follows?: { readonly observation: string; readonly rows: readonly Row[] };
  readonly source: string;
}

export interface StateCondition {
  readonly observation: string;
  readonly anyOf: readonly string[];
}

/**
 * Observations that say the same thing in several ways. Given the latent state they are
 * independent; P(latent | fault) and P(observation state | latent) replace the fault's own rows.
 */
export interface LatentGroup extends Titled {
  readonly states: readonly string[];
  readonly usual: Row;
  readonly members: readonly string[];
  /** byFault[fault] = P(latent state | fault). Faults not named follow `usual`. */
  readonly byFault: ReadonlyMap<string, Row>;
  /** emission[observation][latent state][observation state]; rows sum to 1. */
  readonly emission: ReadonlyMap<string, readonly Row[]>;
}

export interface Check extends Titled {
  readonly yields: string;
  readonly step: ProcedureStep;
  readonly performers: readonly Performer[];
  /** The question in the chat, and one line on how to see it. */
  readonly ask: string;
  readonly how?: string;
  /** Technician minutes on the machine. */
  readonly minutes: number;
  /** What it costs an operator, in technician-minutes of goodwill; > 0. */
  readonly burden: number;
  readonly tools: readonly string[];
  readonly access?: string;
  readonly hazards: readonly string[];
  readonly needs: MachineCondition;
  readonly onlyIf: readonly StateCondition[];
  /** Must be answered before this one may be asked. */
  readonly after: readonly string[];
  /** True where the person must stand at the machine. */
  readonly atMachine: boolean;
  /** What an operator must have: a meter, a charger or leads, a second person. */
  readonly operatorHas: readonly string[];
  readonly verdicts: readonly Verdict[];
  /** Asked of every machine that surely or probably has the thing, worth its burden or not. */
  readonly alwaysAsked?: boolean;
  /** Headings under which many answers are offered in two steps; empty: one step. */
  readonly menu: readonly AnswerMenu[];
  readonly photo: boolean;
  /** The drawing behind "Show me". */
  readonly drawing?: Drawing;
  readonly source: string;
}

/** A first step towards an answer: a heading and the states that stand under it. */
export interface AnswerMenu {
  readonly id: string;
  readonly title: string;
  readonly states: readonly string[];
}

/** What a state or band of a reading means, shown with the result. */
export interface Verdict {
  readonly id: string;
  readonly states: readonly string[];
  /** It holds only where these were told: how fast it turned, how cold it is. Empty: always. */
  readonly onlyIf: readonly StateCondition[];
  readonly text: string;
}

/** Where an act is left to the shop although it would help, and the sentence that says why. */
export interface Refusal {
  readonly id: string;
  /** On machines that surely or probably are so. */
  readonly when?: MachineCondition;
  /** Where this was told; all of it. */
  readonly told: readonly StateCondition[];
  readonly because: string;
}

/**
 * Something done to the machine: it opens a new epoch. `outcomes` are the states of the
 * observation `yields` (for instance `jump-start`); P(outcome | fault) stands in the fault's rows.
 */
export interface Act extends Titled {
  readonly performers: readonly Performer[];
  readonly ask: string;
  readonly how?: string;
  /** Fluent plain words said before the person does it, besides the hazards' own. */
  readonly minutes: number;
  readonly burden: number;
  readonly hazards: readonly string[];
  readonly needs: MachineCondition;
  readonly onlyIf: readonly StateCondition[];
  /** Where an operator must not do it. */
  readonly refusals?: readonly Refusal[];
  readonly operatorHas: readonly string[];
  readonly tools: readonly string[];
  /** The observation that reports what came of it, where the trade has one (`jump-start`). */
  readonly yields?: string;
  /** The state of that observation which means that the complaint is gone. */
  readonly curedState?: string;
  /** P(the act cures | fault), in [0, 1]; faults not named: 0. */
  readonly cures: ReadonlyMap<string, number>;
  /** P(the act hides the trouble for now | fault), in [0, 1]; faults not named: 0. */
  readonly masks: ReadonlyMap<string, number>;
  /** Observations that must be asked again afterwards. */
  readonly makesStale: readonly string[];
  /** What it changes in the starting circuit, where that is simulated. */
  readonly inCircuit?: CircuitAct;
  readonly source: string;
}

export interface Remedy extends Titled {
  readonly performers: readonly Performer[];
  readonly minutes: number;
  readonly parts: readonly string[];
  readonly tools: readonly string[];
  readonly access?: string;
  readonly hazards: readonly string[];
  /** P(the remedy cures | fault it is listed under), in (0, 1]. */
  readonly cures: number;
  readonly text: string;
  /** What it changes in the starting circuit, where that is simulated. */
  readonly inCircuit?: CircuitAct;
  readonly source: string;
}

export interface Part extends Titled {
  readonly alternates: readonly string[];
  /** Carried on every van: one line in the kit. */
  readonly universal: boolean;
  /** Machines that can have one at all; empty: any. */
  readonly needs: MachineCondition;
  /** What must be known to buy the right one: volts, CCA, size … */
  readonly fit: readonly string[];
  /** Price band in the shop's currency units, low and high. */
  readonly price: readonly [number, number];
  /** Technician-minutes for loading, carrying and bringing back. */
  readonly carryMinutes: number;
  readonly source: string;
}

export interface Hazard extends Titled {
  readonly caution: string;
  readonly safeState: readonly string[];
  readonly source: string;
}

/** Stops the interview wherever it stands. */
export interface RedFlag extends Titled {
  readonly say: string;
  /** Someone is hurt or something burns: the emergency number and nothing else. */
  readonly emergency: boolean;
  /** Words under which it is offered on the safety screen. */
  readonly offer: boolean;
  /** Answers that tell of it: any of these states of any of these observations. */
  readonly seenAs: readonly StateCondition[];
  readonly source: string;
}

/** Something that must be opened once for several checks or remedies. */
export interface AccessGroup extends Titled {
  readonly minutes: number;
}

export interface MachineKind extends Titled {
  readonly id: MachineKindId;
  readonly synonyms: readonly string[];
  /** Share of each fuel among machines of this kind; sums to 1. */
  readonly fuels: Readonly<Partial<Record<Fuel, number>>>;
  readonly volts: readonly { readonly volts: number; readonly share: number }[];
  readonly systems: readonly string[];
  /** Features every one has, and features some have with their share (0, 1). */
  readonly features: ReadonlyMap<string, number>;
  readonly circuits: Readonly<Partial<Record<Fuel, string>>>;
  /** Position in the list offered to operators; 0 = not on the first screen. */
  readonly offer: number;
  /** Second-level menu it is offered under. */
  readonly family: string;
  readonly source: string;
}

/** All in technician-minutes. */
export interface Rates {
  readonly travelMinutes: number;
  readonly secondTripMinutes: number;
  readonly collectMinutes: number;
  /** What a part on the van that is not needed costs, per carry minute. */
  readonly operatorMinute: number;
  readonly standstillPerHour: Readonly<Record<"low" | "normal" | "high", number>>;
  readonly callForHelpMinutes: number;
  /** Share of call that stays undiagnosed: prior of "something else". */
  readonly somethingElse: number;
  /** Share of calls where nothing is wrong any more. */
  readonly nothingWrong: number;
  /** How often the same thing happens again at the next try, nothing having been done. */
  readonly repeatsItself: number;
  /**
   * P(a fault is gone after work that is no cure for it): something was moved, cleaned or refitted
   * in passing, or what cured it was told wrongly.
   */
  readonly curedByTheWay: number;
  /** Independent pairs of faults are kept down to this prior. */
  readonly pairCutOff: number;
  /** Strength, in closed cases, with which a shipped share is believed. */
  readonly shareStrength: number;
  /**
   * How many times likelier somebody mentions a thing unasked when it comes from the trouble than
   * when it is just so; 1 where the reporter is not named.
   */
  readonly unasked: Readonly<Partial<Record<Reporter, number>>>;
}

export type WordKind =
  | "fault"
  | "observation"
  | "state"
  | "check"
  | "verdict"
  | "menu"
  | "act"
  | "remedy"
  | "part"
  | "tool"
  | "hazard"
  | "flag"
  | "access"
  | "system"
  | "machine"
  | "feature"
  | "latent"
  | "rule"
  | "circuit";

/** The Fluent key of a piece of knowledge: `fault-battery-flat`, `check-look-posts-how`. */
export function wordKey(kind: WordKind, id: string, part = ""): string {
  const stem = `${kind}-${id}`.replaceAll(".", "-");
  return part === "" ? stem : `${stem}-${part}`;
}
