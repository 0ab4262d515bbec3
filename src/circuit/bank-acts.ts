import type {
  CircuitAct,
  CircuitChange,
  CircuitNetwork,
  CrankSymptom,
  TestPoint,
} from "../domain/circuit.ts";
import { keyStart, keyStill, startSymptom } from "./attempt.ts";
import { afterKey, type Block, SIMULATED_ACTS, SYMPTOM } from "./block.ts";
import { changeMachine, type MachineFigures } from "./machine.ts";
import { type LoadedMachine, loadMachine, type Simulator } from "./moment.ts";
import { type Gauge, jumpOutcome, lightsAtStart, readGauge, symptomCode } from "./observe.ts";
import type { Random } from "./random.ts";

/** After these nobody measures: bridging is only ever told of. */
const UNMEASURED: readonly CircuitAct[] = ["bridge"];
/** What can be told without a meter of an attempt after an act, besides its symptom. */
const LIGHTS = "lights-at-start";

/**
 * Whether a reading is taken after an act: those with the key on START are, and after a charge also
 * those with the key off. Other acts leave a resting machine as it was.
 */
export function measuredAfter(
  act: CircuitAct,
  point: Pick<TestPoint, "key" | "quantity">,
): boolean {
  if (UNMEASURED.includes(act) || point.quantity === "charging") return false;
  return point.key === "start" || (point.key === "off" && act === "charge");
}

/** Whether an observation without a meter is kept after an act, besides what the symptom tells. */
export function litAfter(act: CircuitAct, observation: string): boolean {
  return observation === LIGHTS && !UNMEASURED.includes(act);
}

/** The readings taken after an act, each at its own place only. */
function gaugesAfter(act: CircuitAct, gauges: readonly Gauge[]): readonly Gauge[] {
  return gauges.filter(
    ({ key, when, quantity }) => !key.includes("@") && measuredAfter(act, { key: when, quantity }),
  );
}

/** The acts that a circuit file describes. */
function actsOf(network: CircuitNetwork): readonly CircuitAct[] {
  return SIMULATED_ACTS.filter((act) => network.acts[act] !== undefined);
}

/** Names of everything a block holds of the machines after each act. */
export function keysAfterActs(network: CircuitNetwork, gauges: readonly Gauge[]) {
  const acts = actsOf(network);
  const measured = acts.filter((act) => !UNMEASURED.includes(act));
  return {
    codes: [
      ...acts.map((act) => afterKey(SYMPTOM, act)),
      ...measured.map((act) => afterKey(LIGHTS, act)),
    ],
    readings: acts.flatMap((act) => gaugesAfter(act, gauges).map(({ key }) => afterKey(key, act))),
  };
}

/** An act with the lists of a block that its outcomes go into. */
export interface ActRecord {
  readonly act: CircuitAct;
  readonly changes: readonly CircuitChange[];
  readonly symptoms: Uint8Array;
  /** Absent after acts that nobody measures after. */
  readonly lights: Uint8Array | undefined;
  readonly moving: readonly Recorded[];
  readonly resting: readonly Recorded[];
}

interface Recorded {
  readonly gauge: Gauge;
  readonly list: Int16Array;
}

/** Finds, once for all machines of a block, where each act's outcomes go. */
export function actRecords(
  network: CircuitNetwork,
  block: Block,
  gauges: readonly Gauge[],
): readonly ActRecord[] {
  return actsOf(network).map((act) => {
    const recorded = gaugesAfter(act, gauges).flatMap((gauge): Recorded[] => {
      const list = block.readings[afterKey(gauge.key, act)];
      return list === undefined ? [] : [{ gauge, list }];
    });
    return {
      act,
      changes: network.acts[act] ?? [],
      symptoms: block.codes[afterKey(SYMPTOM, act)] ?? new Uint8Array(block.machines),
      lights: block.codes[afterKey(LIGHTS, act)],
      moving: recorded.filter(({ gauge }) => gauge.when === "start"),
      resting: recorded.filter(({ gauge }) => gauge.when === "off"),
    };
  });
}

export interface Found {
  readonly faulty: MachineFigures;
  readonly celsius: number;
  readonly random: Random;
  /** As found, before any act. */
  readonly symptom: CrankSymptom;
  /** Whether a faint click is heard by whoever stands there. */
  readonly heard: boolean;
}

/** Does each act to the machine as found, one at a time, and records what it then does. */
export function recordActs(
  simulator: Simulator,
  records: readonly ActRecord[],
  of: { readonly block: Block; readonly at: number; readonly found: Found },
): void {
  const { assembly } = simulator;
  const { block, at, found } = of;
  const { faulty, celsius, random } = found;
  for (const record of records) {
    const changed = changeMachine(assembly, faulty, record.changes, random);
    const symptom = measureAfter(loadMachine(simulator, changed, celsius), record, at);
    record.symptoms[at] = symptomCode(symptom, found.heard);
    const jumped = block.codes["jump-start"];
    if (record.act === "jump" && jumped !== undefined) {
      const charging = (faulty[assembly.slot("running", "charging")] ?? 0) / assembly.network.volts;
      jumped[at] = jumpOutcome(found.symptom, symptom, charging, random.next());
    }
  }
}

function measureAfter(machine: LoadedMachine, record: ActRecord, at: number): CrankSymptom {
  if (record.lights === undefined) return startSymptom(machine);
  const start = keyStart(machine);
  record.lights[at] = lightsAtStart(machine, start);
  for (const { gauge, list } of record.moving) list[at] = readGauge(machine, start, gauge);
  if (record.resting.length > 0) {
    const off = keyStill(machine, "off");
    for (const { gauge, list } of record.resting) list[at] = readGauge(machine, off, gauge);
  }
  return start.symptom;
}
