import type { CircuitNetwork, KeyPosition } from "../domain/circuit.ts";
import { assemble } from "./assembly.ts";
import { keyStart, keyStill, type Outcome, startSymptom, staysParted } from "./attempt.ts";
import { type ActRecord, actRecords, keysAfterActs, recordActs } from "./bank-acts.ts";
import { type Block, SYMPTOM } from "./block.ts";
import { changeMachine, drawMachine, type MachineFigures } from "./machine.ts";
import { createSimulator, type LoadedMachine, loadMachine, type Simulator } from "./moment.ts";
import {
  findGauges,
  type Gauge,
  lightsAtStart,
  lightsOn,
  readGauge,
  STATES,
  symptomCode,
} from "./observe.ts";
import { createRandom, type Random } from "./random.ts";
import { choose } from "./spread.ts";

/** Raised whenever equal circuits and seeds would no longer give equal machines. */
export const BANK_VERSION = 3;

/** The hypothesis that nothing is wrong with the machine. */
export const NOTHING_WRONG = "nothing-wrong";

/** Joins the two faults of a pair. */
export const PAIR_MARK = "+";

/** Weather classes that a bank is built for: their middles in °C. */
export const TEMPERATURE_BANDS = { hot: 32, mild: 20, frost: 0, "hard-frost": -15 } as const;
export type TemperatureBand = keyof typeof TEMPERATURE_BANDS;
/** Each machine stands at a temperature drawn within this of its band's middle, in kelvin. */
export const BAND_HALF_WIDTH = 4;

/** Share of machines that have a mild second fault beside the real one. */
export const COMPANION_SHARE = 0.25;
/** Share of machines whose fault makes no difference that are called in all the same. */
export const UNNOTICED_SHARE = 0.1;

/**
 * Where the first try leaves a contact open for good: share of people who tell what they find after
 * it, "nothing, the lamps are dead", rather than what the first try was like. Estimate.
 */
export const TOLD_AFTERWARDS = 0.5;

export interface BlockRequest {
  readonly hypothesis: string;
  /** Middle of the machines' temperatures, and how far they lie from it at most. */
  readonly celsius: number;
  readonly kelvinAround: number;
  readonly seed: number;
  readonly machines: number;
  /** Share of machines with a mild second fault; absent: `COMPANION_SHARE`. */
  readonly companions?: number;
}

/** The hypotheses of a circuit: nothing wrong, then every fault in the order of the file. */
export function hypothesesOf(network: CircuitNetwork): readonly string[] {
  return [NOTHING_WRONG, ...network.faults.map(({ id }) => id)];
}

/** Makes the simulator that `simulateBlock` needs. */
export function openSimulator(network: CircuitNetwork): Simulator {
  return createSimulator(assemble(network));
}

/**
 * Simulates the machines of one hypothesis.
 * @param request `machines` > 0; equal circuits and requests give equal blocks whatever ran before
 * @returns the block
 */
export function simulateBlock(simulator: Simulator, request: BlockRequest): Block {
  const { hypothesis, machines, celsius: middle, kelvinAround, seed } = request;
  const random = createRandom(seed, `${hypothesis}/${middle}/0`);
  const gauges = findGauges(simulator.assembly);
  const block = emptyBlock(simulator, gauges, request);
  const acts = actRecords(simulator.assembly.network, block, gauges);
  for (let i = 0; i < machines; i++) {
    const celsius = middle + kelvinAround * (2 * random.next() - 1);
    const pair = drawPair(simulator, request, random);
    recordMachine(simulator, block, i, { ...pair, gauges, acts, celsius, random });
  }
  return block;
}

/** A machine with the fault, and its twin that differs in nothing but the fault. */
export interface Twins {
  readonly twin: MachineFigures;
  readonly faulty: MachineFigures;
}

/** Draws a machine and its twin: both carry the companion, where there is one. */
export function drawPair(
  simulator: Simulator,
  request: Pick<BlockRequest, "hypothesis" | "companions">,
  random: Random,
): Twins {
  const { assembly } = simulator;
  const { faults } = assembly.network;
  const named = request.hypothesis === NOTHING_WRONG ? [] : request.hypothesis.split(PAIR_MARK);
  const mild = faults.filter(({ id, mild: changes }) => changes.length > 0 && !named.includes(id));
  let twin = drawMachine(assembly, random);
  if (mild.length > 0 && random.next() < (request.companions ?? COMPANION_SHARE)) {
    const companion = choose(
      mild.map((fault) => ({ weight: 1, fault })),
      random,
    ).fault;
    twin = changeMachine(assembly, twin, companion.mild, random);
  }
  let faulty = twin;
  for (const id of named) {
    const fault = faults.find((one) => one.id === id);
    if (fault === undefined) throw new RangeError(`${assembly.network.id} has no fault "${id}"`);
    faulty = changeMachine(assembly, faulty, fault.changes, random);
  }
  return { twin, faulty };
}

function emptyBlock(
  { assembly }: Simulator,
  gauges: readonly Gauge[],
  { hypothesis, machines }: BlockRequest,
): Block {
  const named = [SYMPTOM, "lights-on", "lights-at-start", "turns-by-hand", "jump-start"];
  const after = keysAfterActs(assembly.network, gauges);
  const keys = [...gauges.map(({ key }) => key), ...after.readings];
  return {
    hypothesis,
    machines,
    noticed: new Uint8Array(machines),
    codes: Object.fromEntries(
      [...named, ...after.codes].map((key) => [key, new Uint8Array(machines)]),
    ),
    readings: Object.fromEntries(keys.map((key) => [key, new Int16Array(machines)])),
  };
}

interface Drawn extends Twins {
  readonly gauges: readonly Gauge[];
  readonly acts: readonly ActRecord[];
  readonly celsius: number;
  readonly random: Random;
}

/**
 * What is seen and measured in each key position. A contact that the first try leaves open stays so
 * for whoever looks afterwards; what the try itself was like, and how the machine was before it,
 * are two things that people tell, each by itself.
 */
function outcomesOf(
  machine: LoadedMachine,
  random: Random,
): Readonly<Record<KeyPosition, Outcome>> {
  const still = () => ({ off: keyStill(machine, "off"), on: keyStill(machine, "on") });
  const before = still();
  const start = keyStart(machine);
  if (!staysParted(machine)) return { ...before, start };
  const [isStillAfter, isStartAfter] = [random.next(), random.next()].map(
    (chance) => chance < TOLD_AFTERWARDS,
  );
  const after = isStillAfter === true ? still() : before;
  return { ...after, start: isStartAfter === true ? keyStart(machine) : start };
}

function recordMachine(simulator: Simulator, block: Block, at: number, drawn: Drawn): void {
  const { twin, faulty, gauges, celsius, random } = drawn;
  const usual = startSymptom(loadMachine(simulator, twin, celsius));
  const machine = loadMachine(simulator, faulty, celsius);
  const heard = random.next() < (faulty[simulator.assembly.slot("person", "hears-faint")] ?? 1);
  const outcomes = outcomesOf(machine, random);
  const { symptom } = outcomes.start;
  const set = (key: string, code: number) => {
    const codes = block.codes[key];
    if (codes !== undefined) codes[at] = code;
  };
  const lights = lightsOn(machine, outcomes.on);
  set(SYMPTOM, symptomCode(symptom, heard));
  set("lights-on", lights);
  set("lights-at-start", lightsAtStart(machine, outcomes.start));
  set("turns-by-hand", STATES["turns-by-hand"]?.indexOf(machine.rotor.byHand) ?? 0);
  for (const gauge of gauges) {
    const readings = block.readings[gauge.key];
    if (readings !== undefined) readings[at] = readGauge(machine, outcomes[gauge.when], gauge);
  }
  const changed = symptom !== usual || (block.hypothesis !== NOTHING_WRONG && lights < 2);
  block.noticed[at] = changed || block.hypothesis === NOTHING_WRONG ? 1 : 0;
  recordActs(simulator, drawn.acts, { block, at, found: { ...drawn, symptom, heard } });
}
