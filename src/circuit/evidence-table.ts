import type { CircuitNetwork, TestPoint } from "../domain/circuit.ts";
import type {
  CircuitEvidence,
  ReadingEvidence,
  StateEvidence,
} from "../domain/joint-likelihood.ts";
import { litAfter, measuredAfter } from "./bank-acts.ts";
import { afterKey, SYMPTOM } from "./block.ts";
import { isSymptomObservation, placeKey, STATES, stepOf, symptomStates } from "./observe.ts";

/** A reading's 16-bit steps are looked up in bins of 2 to this power. */
export const BIN_SHIFT = 3;
export const BINS = 32768 >> BIN_SHIFT;

/** The least weight of a state: nothing that people say is impossible. */
const LEAST_WEIGHT = 1e-6;
/** Chance that a reading was taken at the wrong place or read wrongly altogether. */
const BLUNDER = 0.03;
/** Beyond this many standard deviations a normal distribution is nought. */
const FAR = 7;
/** Widest readings that can be meant: volts as a share of nominal, and amps. */
const MOST_NOMINAL = 1.3;
const MOST_AMPS = 1500;
/** No reading is told more finely than this share of the range. */
const LEAST_WINDOW = 0.005;

/**
 * What the model's own roughness adds to a meter's error: volts are for a 12 V machine. Without it
 * a few machines that happen to agree to the millivolt would carry all the weight.
 */
const ROUGHNESS = {
  /** At rest, nothing moves and the state of charge is the only doubt. */
  rest: { fixed: 0.08, share: 0 },
  /** While starting the volts move and meters average differently. */
  volts: { fixed: 0.2, share: 0.03 },
  drop: { fixed: 0.06, share: 0.06 },
  amps: { fixed: 3, share: 0.12 },
  charging: { fixed: 0.12, share: 0 },
  /** A wire that should be dead may show ghosts through damp plugs. */
  ghost: { below: 0.5, fixed: 0.6 },
  /** A meter cannot follow a chattering solenoid. */
  chatter: 1.5,
} as const;

/** P(item | machine) as tables over what a block holds of a machine. */
export type EvidenceTable =
  | { readonly kind: "codes"; readonly key: string; readonly table: Float64Array }
  | {
      readonly kind: "reading";
      /** Where the probes may have been, with its chance. */
      readonly keys: readonly { readonly key: string; readonly chance: number }[];
      /** The machines' symptom at the attempt that was measured. */
      readonly symptom: string;
      /** P(reading | true value) by bin: with everything at rest, and during chatter. */
      readonly steady: Float64Array;
      readonly chatter: Float64Array;
    };

/** Whether the simulated machines can say anything about it. */
export function canWeigh(network: CircuitNetwork, evidence: CircuitEvidence): boolean {
  const { observation } = evidence;
  const { after } = evidence;
  if (after !== undefined && network.acts[after] === undefined) return false;
  if (evidence.kind === "reading") {
    const point = network.testPoints.find(({ id }) => id === observation);
    return point !== undefined && (after === undefined || measuredAfter(after, point));
  }
  if (STATES[observation] === undefined) return false;
  return after === undefined || isSymptomObservation(observation) || litAfter(after, observation);
}

/** Turns one item of evidence into tables for a circuit's machines. */
export function tabulate(network: CircuitNetwork, evidence: CircuitEvidence): EvidenceTable {
  if (!canWeigh(network, evidence)) {
    throw new RangeError(`${network.id} does not simulate "${evidence.observation}"`);
  }
  return evidence.kind === "reading" ? tabulateReading(network, evidence) : tabulateState(evidence);
}

function tabulateState({ observation, weights, after }: StateEvidence): EvidenceTable {
  const states = STATES[observation] ?? [];
  const byState = states.map((state) => Math.max(LEAST_WEIGHT, weights[state] ?? 0));
  if (!isSymptomObservation(observation)) {
    return { kind: "codes", key: afterKey(observation, after), table: Float64Array.from(byState) };
  }
  const table = Float64Array.from(symptomStates(observation), (state) => byState[state] ?? 0);
  return { kind: "codes", key: afterKey(SYMPTOM, after), table };
}

function tabulateReading(network: CircuitNetwork, evidence: ReadingEvidence): EvidenceTable {
  const point = testPointOf(network, evidence.observation);
  const { low, high, meterError, after } = evidence;
  const floor = blunderFloor(network, evidence);
  const table = (chattering: boolean) => {
    const shares = new Float64Array(BINS).fill(floor);
    for (let bin = 0; bin < BINS; bin++) {
      const value = binMiddle(bin) * stepOf(point);
      const rough = roughness(network, point, value, chattering);
      const sigma = Math.sqrt(meterError * meterError + rough * rough);
      if (value > high + FAR * sigma || value < low - FAR * sigma) continue;
      const inside = normalShare((high - value) / sigma) - normalShare((low - value) / sigma);
      shares[bin] = (1 - doubtOf(evidence)) * inside + floor;
    }
    return shares;
  };
  // After an act only the test point's own place is simulated.
  const told = after === undefined ? (evidence.places ?? {}) : {};
  const places = Object.entries(told).filter(([, chance]) => chance > 0);
  const whole = places.reduce((sum, [, chance]) => sum + chance, 0);
  const keys = places.map(([place, chance]) => ({
    key: point.otherPlaces[place] === undefined ? point.id : placeKey(point.id, place),
    chance: chance / whole,
  }));
  const alone = [{ key: afterKey(point.id, after), chance: 1 }];
  return {
    kind: "reading",
    keys: keys.every(({ key }) => key === point.id) ? alone : keys,
    symptom: afterKey(SYMPTOM, after),
    steady: table(false),
    chatter: table(true),
  };
}

/** What a reading keeps even with a machine that cannot show it: it may be a blunder. */
export function blunderFloor(network: CircuitNetwork, evidence: ReadingEvidence): number {
  return doubtOf(evidence) * evenChance(network, evidence);
}

/** P(the reading, were every value that a meter can show as likely). */
export function evenChance(network: CircuitNetwork, { observation, low, high }: ReadingEvidence) {
  const { quantity } = testPointOf(network, observation);
  const most = quantity === "amps" ? MOST_AMPS : MOST_NOMINAL * network.volts;
  return Math.min(1, Math.max(LEAST_WINDOW, (high - low) / most));
}

const doubtOf = ({ doubt }: ReadingEvidence): number => doubt ?? BLUNDER;

export function testPointOf(network: CircuitNetwork, id: string): TestPoint {
  const point = network.testPoints.find((one) => one.id === id);
  if (point === undefined) throw new RangeError(`${network.id} has no test point "${id}"`);
  return point;
}

/** Middle of a bin, in steps. */
export function binMiddle(bin: number): number {
  return (bin << BIN_SHIFT) + (1 << BIN_SHIFT) / 2;
}

/** Standard deviation of the model at a value, in the point's unit. */
export function roughness(
  network: CircuitNetwork,
  point: TestPoint,
  value: number,
  chattering: boolean,
): number {
  const scale = point.quantity === "amps" ? 1 : network.volts / 12;
  const moving = point.key === "start";
  const own =
    point.quantity !== "volts"
      ? ROUGHNESS[point.quantity]
      : moving
        ? ROUGHNESS.volts
        : ROUGHNESS.rest;
  let sigma = own.fixed * scale + own.share * value;
  const { ghost } = ROUGHNESS;
  if (point.quantity === "volts" && value < ghost.below * scale) sigma = ghost.fixed * scale;
  if (!chattering || !moving || point.quantity === "charging") return sigma;
  return point.quantity === "amps" ? sigma + value / 2 : sigma + ROUGHNESS.chatter * scale;
}

/**
 * Share of a normal distribution below z.
 * @source Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.17; error < 7.5e-8
 */
export function normalShare(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  const tail =
    density *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z >= 0 ? 1 - tail : tail;
}
