import type { CircuitNetwork, Spread, TestPoint } from "../domain/circuit.ts";
import type { CircuitEvidence } from "../domain/joint-likelihood.ts";
import type { Block } from "./block.ts";
import { CHATTER_CODE, isSymptomObservation, STATES, stepOf, symptomStates } from "./observe.ts";
import type { Random } from "./random.ts";

/** How the machines of a study differ from those that the bank was drawn from. */
export interface Distortion {
  /** Factors on figures, as `part.figure` or `sort.figure`; figures not named stay. */
  readonly factors: Readonly<Record<string, number>>;
}

/** Another maker's machines: weaker battery, longer cables, stiffer engine, lazier coils. */
export const OTHER_MACHINES: Distortion = {
  factors: {
    "motor.resistance": 1.25,
    "motor.flux": 0.93,
    "battery.cca": 0.85,
    "engine.drag": 1.2,
    "cable.resistance": 1.6,
    "cable.length": 1.3,
    "joint.resistance": 1.6,
    "actuator.pull-in": 1.08,
    "actuator.drop-out": 1.25,
  },
};

/** The same circuit with figures scaled; faults and acts stay as they are. */
export function distort(network: CircuitNetwork, { factors }: Distortion): CircuitNetwork {
  const scaled = (sort: string, figures: Readonly<Record<string, Spread>>) =>
    Object.fromEntries(
      Object.entries(figures).map(([figure, spread]) => {
        return [figure, scaleSpread(spread, factors[`${sort}.${figure}`] ?? 1)];
      }),
    );
  return {
    ...network,
    parts: network.parts.map((part) =>
      part.hidden ? part : { ...part, figures: scaled(part.sort, part.figures) },
    ),
    actuators: network.actuators.map((one) => {
      return { ...one, figures: scaled("actuator", one.figures) };
    }),
    engine: scaled("engine", network.engine),
  };
}

/** A spread with every value times a factor. */
export function scaleSpread(spread: Spread, factor: number): Spread {
  switch (spread.kind) {
    case "exact":
      return { kind: "exact", value: spread.value * factor };
    case "even":
      return { kind: "even", low: spread.low * factor, high: spread.high * factor };
    case "choice":
      return {
        kind: "choice",
        choices: spread.choices.map(({ weight, spread: one }) => {
          return { weight, spread: scaleSpread(one, factor) };
        }),
      };
    default:
      return {
        ...spread,
        middle: spread.middle * factor,
        spread: spread.kind === "normal" ? spread.spread * factor : spread.spread,
        ...(spread.low === undefined ? {} : { low: spread.low * factor }),
        ...(spread.high === undefined ? {} : { high: spread.high * factor }),
      };
  }
}

/** Who reports, and how well. */
export interface Observer {
  /** Chance that a state is told as it is; the rest is spread over the others. */
  readonly clear: number;
  /** What the likelihood takes that chance to be. */
  readonly thought: number;
  /** Standard deviation of a meter: fixed volts (of 12) and a share of the reading. */
  readonly meterFixed: number;
  readonly meterShare: number;
  /** Chance of a reading that has nothing to do with the machine. */
  readonly rubbish: number;
}

export const CAREFUL: Observer = {
  ...{ clear: 0.9, thought: 0.88, meterFixed: 0.03, meterShare: 0.01, rubbish: 0 },
};
export const DISTRACTED: Observer = {
  ...{ clear: 0.82, thought: 0.88, meterFixed: 0.06, meterShare: 0.015, rubbish: 0.05 },
};

/** What an observer reports of one simulated machine; undefined where nobody would ask it. */
export function report(
  network: CircuitNetwork,
  seen: { readonly block: Block; readonly machine: number; readonly observation: string },
  observer: Observer,
  random: Random,
): CircuitEvidence {
  const point = network.testPoints.find(({ id }) => id === seen.observation);
  if (point !== undefined) return readMeter(network, point, seen, { observer, random });
  const { block, machine, observation } = seen;
  const states = STATES[observation] ?? [];
  const key = isSymptomObservation(observation) ? "symptom" : observation;
  const code = block.codes[key]?.[machine] ?? 0;
  const truth = isSymptomObservation(observation) ? (symptomStates(observation)[code] ?? 0) : code;
  const others = states.filter((_, s) => s !== truth);
  const told =
    random.next() < observer.clear || others.length === 0
      ? states[truth]
      : others[Math.floor(random.next() * others.length)];
  const rest = (1 - observer.thought) / Math.max(1, states.length - 1);
  const weights = Object.fromEntries(
    states.map((state) => [state, state === told ? observer.thought : rest]),
  );
  return { kind: "state", observation, weights };
}

/** Half of the last digit that people read off, in volts of 12 and in amps. */
const HALF_DIGIT = { volts: 0.05, amps: 5 } as const;

function readMeter(
  network: CircuitNetwork,
  point: TestPoint,
  { block, machine }: { readonly block: Block; readonly machine: number },
  { observer, random }: { readonly observer: Observer; readonly random: Random },
): CircuitEvidence {
  const amps = point.quantity === "amps";
  const scale = amps ? 1 : network.volts / 12;
  const truth = (block.readings[point.id]?.[machine] ?? 0) * stepOf(point);
  const chatters = (block.codes["symptom"]?.[machine] ?? 0) >> 1 === CHATTER_CODE >> 1;
  const jitter = chatters && point.key === "start" ? scale : 0;
  const fixed = amps ? 3 : observer.meterFixed * scale;
  const sigma = Math.hypot(fixed + observer.meterShare * truth, jitter);
  const most = amps ? 400 : network.volts * 1.05;
  const shown =
    random.next() < observer.rubbish
      ? random.next() * most
      : Math.max(0, truth + sigma * random.normal());
  const half = amps ? HALF_DIGIT.amps : HALF_DIGIT.volts * scale;
  const meterError = amps ? 4 : 0.04 * scale + 0.01 * shown;
  const observation = point.id;
  return { kind: "reading", observation, low: shown - half, high: shown + half, meterError };
}
