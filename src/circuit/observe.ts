import {
  CRANK_SYMPTOMS,
  type CrankSymptom,
  type KeyPosition,
  type TestPoint,
} from "../domain/circuit.ts";
import type { Assembly } from "./assembly.ts";
import { LAMP_BRIGHT, LAMP_OUT, lampShare, type Outcome } from "./attempt.ts";
import { voltsAt } from "./electrics.ts";
import type { LoadedMachine } from "./moment.ts";

/** What can be told about a simulated machine without a meter: observation → its states. */
export const STATES: Readonly<Record<string, readonly string[]>> = {
  "on-start": [
    "nothing",
    "one-click",
    "fast-clicks",
    "slow",
    "turns-then-stops",
    "spins-alone",
    "grinds",
    "turns",
  ],
  "engine-turns": ["normal", "slow", "part-turn", "no"],
  "click-sound": ["none", "faint", "loud", "repeated"],
  "lights-on": ["dead", "dim", "normal"],
  "lights-at-start": ["stay-bright", "dim", "go-out"],
  "turns-by-hand": ["free", "stiff", "stuck"],
  "jump-start": ["cured", "helped-but-slow", "ran-then-died", "no-change"],
};

/** Observations whose state follows from the symptom of an attempt alone. */
export const SYMPTOM_OBSERVATIONS = ["on-start", "engine-turns", "click-sound"] as const;
export type SymptomObservation = (typeof SYMPTOM_OBSERVATIONS)[number];

export function isSymptomObservation(name: string): name is SymptomObservation {
  return SYMPTOM_OBSERVATIONS.some((one) => one === name);
}

/** The symptoms' states; a faint click is heard by some and missed by others. */
const SYMPTOM_STATES: Readonly<Record<CrankSymptom, Readonly<Record<SymptomObservation, string>>>> =
  {
    dead: { "on-start": "nothing", "engine-turns": "no", "click-sound": "none" },
    silent: { "on-start": "nothing", "engine-turns": "no", "click-sound": "none" },
    "faint-click": { "on-start": "one-click", "engine-turns": "no", "click-sound": "faint" },
    "loud-click": { "on-start": "one-click", "engine-turns": "no", "click-sound": "loud" },
    chatter: { "on-start": "fast-clicks", "engine-turns": "no", "click-sound": "repeated" },
    "part-turn": {
      "on-start": "turns-then-stops",
      "engine-turns": "part-turn",
      "click-sound": "loud",
    },
    slow: { "on-start": "slow", "engine-turns": "slow", "click-sound": "none" },
    normal: { "on-start": "turns", "engine-turns": "normal", "click-sound": "none" },
    "spins-free": { "on-start": "spins-alone", "engine-turns": "no", "click-sound": "none" },
    grinds: { "on-start": "grinds", "engine-turns": "no", "click-sound": "none" },
  };

const UNHEARD: Readonly<Record<SymptomObservation, string>> = SYMPTOM_STATES.silent;

/** One number for a symptom and whether a faint click was heard: 0 to 2 × symptoms − 1. */
export function symptomCode(symptom: CrankSymptom, heard: boolean): number {
  return CRANK_SYMPTOMS.indexOf(symptom) * 2 + (heard ? 1 : 0);
}

export const SYMPTOM_CODES = CRANK_SYMPTOMS.length * 2;
/** Codes of chatter, during which a meter shows little that can be trusted. */
export const CHATTER_CODE = symptomCode("chatter", false);

/** State number of an observation for every symptom code. */
export function symptomStates(observation: SymptomObservation): readonly number[] {
  return STATE_OF_CODE[observation];
}

function statesByCode(observation: SymptomObservation): readonly number[] {
  return Array.from({ length: SYMPTOM_CODES }, (_, code) => {
    const symptom = CRANK_SYMPTOMS[code >> 1] ?? "silent";
    const missed = symptom === "faint-click" && (code & 1) === 0;
    const state = (missed ? UNHEARD : SYMPTOM_STATES[symptom])[observation];
    return STATES[observation]?.indexOf(state) ?? 0;
  });
}

const STATE_OF_CODE: Readonly<Record<SymptomObservation, readonly number[]>> = {
  "on-start": statesByCode("on-start"),
  "engine-turns": statesByCode("engine-turns"),
  "click-sound": statesByCode("click-sound"),
};

/** State number of `lights-on`, dead to normal: where dim begins differs from person to person. */
export function lightsOn(machine: LoadedMachine, outcome: Outcome): number {
  const slot = machine.simulator.assembly.slot("person", "bright-from");
  return lampState(machine, outcome, machine.figures[slot] ?? LAMP_BRIGHT);
}

/** State number of `lights-at-start`, stay-bright to go-out: everybody sees a lamp fall so far. */
export function lightsAtStart(machine: LoadedMachine, outcome: Outcome): number {
  return 2 - lampState(machine, outcome, LAMP_BRIGHT);
}

function lampState(machine: LoadedMachine, outcome: Outcome, brightFrom: number): number {
  const share = lampShare(machine, outcome);
  return share < LAMP_OUT ? 0 : share < brightFrom ? 1 : 2;
}

/** How well an attempt went: the more, the nearer to normal. */
function progress(symptom: CrankSymptom): number {
  if (symptom === "normal") return 3;
  if (symptom === "slow") return 2;
  return symptom === "part-turn" ? 1 : 0;
}

/** From these running volts, as a share of nominal, on a battery is being charged. */
const CHARGING_SHARE = 1.1;
/** How many engines with no charge run on a jump pack's first minutes and then die. */
const DIES_SHARE = 0.5;

/**
 * State number of `jump-start`.
 * @param before symptom as found · @param after with the jump pack on
 * @param charging running volts as a share of nominal
 * @param chance in [0, 1): whether an engine that is not charged dies before the pack comes off
 */
export function jumpOutcome(
  before: CrankSymptom,
  after: CrankSymptom,
  charging: number,
  chance: number,
): number {
  const states = STATES["jump-start"] ?? [];
  const better = progress(after) > progress(before);
  if (!better) return states.indexOf("no-change");
  if (after !== "normal") {
    return states.indexOf(after === "slow" ? "helped-but-slow" : "no-change");
  }
  const dies = charging < CHARGING_SHARE && chance < DIES_SHARE;
  return states.indexOf(dies ? "ran-then-died" : "cured");
}

/** Readings are kept as 16-bit steps: a millivolt, or a tenth of an amp. */
export const VOLT_STEP = 0.001;
export const AMP_STEP = 0.1;
const MOST_STEPS = 32767;

export function stepOf(point: Pick<TestPoint, "quantity">): number {
  return point.quantity === "amps" ? AMP_STEP : VOLT_STEP;
}

/** Name of a reading taken at another place than its test point. */
export function placeKey(point: string, place: string): string {
  return `${point}@${place}`;
}

/** One reading of a circuit, found in its network once for all machines. */
export interface Gauge {
  readonly key: string;
  readonly when: KeyPosition;
  readonly quantity: TestPoint["quantity"];
  readonly red: number;
  readonly black: number;
  /** Branch whose current is taken, or slot of the charging volts; else −1. */
  readonly number: number;
}

/** All readings of a circuit, each test point at each place people mean by it. */
export function findGauges(assembly: Assembly): readonly Gauge[] {
  return assembly.network.testPoints.flatMap((point): Gauge[] => {
    const { id, key: when, quantity, at, against, otherPlaces } = point;
    if (quantity === "amps") {
      const number = assembly.branches.findIndex(({ part }) => part.id === at);
      const branch = assembly.branches[number];
      if (branch === undefined) throw new RangeError(`there is no part "${at}"`);
      return [{ key: id, when, quantity, red: branch.from, black: branch.to, number }];
    }
    const number = quantity === "charging" ? assembly.slot("running", "charging") : -1;
    const black = assembly.point(against);
    const gauge = (key: string, red: string): Gauge => {
      return { key, when, quantity, red: assembly.point(red), black, number };
    };
    const others = Object.entries(otherPlaces);
    return [gauge(id, at), ...others.map(([place, red]) => gauge(placeKey(id, place), red))];
  });
}

/** What a meter without error shows, in steps: absolute volts or amps. */
export function readGauge(machine: LoadedMachine, outcome: Outcome, gauge: Gauge): number {
  const { volts, parted } = outcome;
  const { electrics } = machine.simulator;
  const { quantity, red, black, number } = gauge;
  let value = Math.abs(voltsAt(volts, red) - voltsAt(volts, black)) / VOLT_STEP;
  if (quantity === "charging") value = (machine.figures[number] ?? 0) / VOLT_STEP;
  if (quantity === "amps") {
    const contact = electrics.partings.findIndex((parting) => parting.number === number);
    if (contact >= 0 && ((parted >> contact) & 1) === 1) return 0;
    value = (value * VOLT_STEP * (electrics.conductances[number] ?? 0)) / AMP_STEP;
  }
  return Math.min(MOST_STEPS, Math.round(value));
}
