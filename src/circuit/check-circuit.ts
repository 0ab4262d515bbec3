import type { CircuitNetwork, CrankSymptom } from "../domain/circuit.ts";
import { keyStart, keyStill } from "./attempt.ts";
import { hypothesesOf, NOTHING_WRONG, openSimulator } from "./bank.ts";
import { changeMachine, drawMachine } from "./machine.ts";
import { loadMachine, type Simulator } from "./moment.ts";
import { findGauges, type Gauge, readGauge } from "./observe.ts";
import { createRandom } from "./random.ts";

/** What somebody who writes a circuit file should know about it. */
export interface CircuitCheck {
  /** Shares of healthy machines by what they do, at each temperature. */
  readonly healthy: readonly HealthyShare[];
  /** Faults that make a difference in fewer machines than `FEW`. */
  readonly unnoticed: readonly { readonly fault: string; readonly share: number }[];
  /** Pairs of hypotheses with no observation that differs by more than `ALIKE`. */
  readonly alike: readonly {
    readonly faults: readonly [string, string];
    readonly difference: number;
  }[];
}

export interface HealthyShare {
  readonly celsius: number;
  readonly normal: number;
  /** Normal or slow: the engine keeps turning. */
  readonly turns: number;
}

const TEMPERATURES = [20, 0, -15] as const;
const MACHINES = 240;
/** A healthy machine cranks normally at 20 °C in at least this share of draws. */
export const HEALTHY_SHARE = 0.95;
const FEW = 0.1;
const ALIKE = 0.15;

/**
 * Checks a circuit by simulation: the same machines with every fault in turn.
 * @param seed equal seeds give equal reports
 */
export function checkCircuit(network: CircuitNetwork, seed: number): CircuitCheck {
  const simulator = openSimulator(network);
  const sheets = hypothesesOf(network).map((fault) => sheetOf(simulator, fault, seed));
  const [healthy] = sheets;
  const unnoticed = sheets.slice(1).flatMap(({ fault, symptoms }) => {
    const seen = symptoms.filter((symptom, i) => symptom !== healthy?.symptoms[i]).length;
    const share = seen / MACHINES;
    return share < FEW ? [{ fault, share }] : [];
  });
  const alike = sheets.flatMap((one, i) =>
    sheets.slice(i + 1).flatMap((other) => {
      const difference = differenceOf(one, other);
      const faults: [string, string] = [one.fault, other.fault];
      return difference < ALIKE ? [{ faults, difference }] : [];
    }),
  );
  const temperatures = TEMPERATURES.map((celsius) => healthyShare(simulator, celsius, seed));
  return { healthy: temperatures, unnoticed, alike };
}

/** Healthy machines of a circuit at one temperature. */
export function healthyShare(simulator: Simulator, celsius: number, seed: number): HealthyShare {
  let normal = 0;
  let slow = 0;
  for (let i = 0; i < MACHINES; i++) {
    const figures = drawMachine(simulator.assembly, createRandom(seed, `healthy ${i}`));
    const { symptom } = keyStart(loadMachine(simulator, figures, celsius));
    if (symptom === "normal") normal += 1;
    if (symptom === "slow") slow += 1;
  }
  return { celsius, normal: normal / MACHINES, turns: (normal + slow) / MACHINES };
}

/** What one fault looks like over the machines: symptoms, and each gauge's readings sorted. */
interface Sheet {
  readonly fault: string;
  readonly symptoms: readonly CrankSymptom[];
  readonly byHand: readonly string[];
  readonly readings: readonly Float64Array[];
}

function sheetOf(simulator: Simulator, fault: string, seed: number): Sheet {
  const { assembly } = simulator;
  const gauges = findGauges(assembly);
  const changes = assembly.network.faults.find(({ id }) => id === fault)?.changes ?? [];
  const symptoms: CrankSymptom[] = [];
  const byHand: string[] = [];
  const readings = gauges.map(() => new Float64Array(MACHINES));
  for (let i = 0; i < MACHINES; i++) {
    const healthy = drawMachine(assembly, createRandom(seed, `healthy ${i}`));
    const random = createRandom(seed, `fault ${i}`);
    const figures =
      fault === NOTHING_WRONG ? healthy : changeMachine(assembly, healthy, changes, random);
    const machine = loadMachine(simulator, figures, 20);
    const outcomes = {
      off: keyStill(machine, "off"),
      on: keyStill(machine, "on"),
      start: keyStart(machine),
    };
    symptoms.push(outcomes.start.symptom);
    byHand.push(machine.rotor.byHand);
    gauges.forEach((gauge: Gauge, g) => {
      const list = readings[g];
      if (list !== undefined) list[i] = readGauge(machine, outcomes[gauge.when], gauge);
    });
  }
  for (const list of readings) list.sort();
  return { fault, symptoms, byHand, readings };
}

/** The largest difference of two faults in anything that can be seen, in [0, 1]. */
function differenceOf(one: Sheet, other: Sheet): number {
  const gauges = one.readings.map((list, g) => stepDistance(list, other.readings[g] ?? list));
  return Math.max(
    shareDistance(one.symptoms, other.symptoms),
    shareDistance(one.byHand, other.byHand),
    ...gauges,
  );
}

/** Total variation distance of two lists of names. */
function shareDistance(a: readonly string[], b: readonly string[]): number {
  const balance = new Map<string, number>();
  for (const name of a) balance.set(name, (balance.get(name) ?? 0) + 1 / a.length);
  for (const name of b) balance.set(name, (balance.get(name) ?? 0) - 1 / b.length);
  return [...balance.values()].reduce((sum, d) => sum + Math.abs(d), 0) / 2;
}

/** A meter cannot tell readings apart that differ by less than this many steps (50 mV, 5 A). */
const BLUR_STEPS = 50;

/** Largest distance between two sorted lists' cumulative shares, blurred by the meter. */
function stepDistance(a: Float64Array, b: Float64Array): number {
  return Math.max(above(a, b), above(b, a));
}

function above(a: Float64Array, b: Float64Array): number {
  let most = 0;
  let j = 0;
  for (let i = 0; i < a.length; i++) {
    while (j < b.length && (b[j] ?? 0) <= (a[i] ?? 0) + BLUR_STEPS) j += 1;
    most = Math.max(most, (i + 1) / a.length - j / b.length);
  }
  return most;
}
