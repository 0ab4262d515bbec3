import { type BankRequest, bankHypotheses } from "../circuit/bank-build.ts";
import { createJoint } from "../circuit/joint.ts";
import { standBank } from "../circuit/standing-bank.ts";
import { type StudyResult, studyJoint } from "../circuit/study.ts";
import { DISTRACTED, distort, OTHER_MACHINES } from "../circuit/study-world.ts";
import type { CircuitNetwork } from "../domain/circuit.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import type { BankBuilder } from "../knowledge/bank-builder.ts";
import { benchCircuitSpeed, type CircuitSpeed } from "./bench-circuit-speed.ts";

/** Circuits of the study: one with a contactor, one with relay and shift solenoid. */
const STUDIED = ["garden-tractor", "compact-tractor"] as const;
const SEED = 21;
/** What people say first; the other answers follow in random order. */
const OPENING = ["on-start", "lights-on", "lights-at-start", "battery-rest-volts"];
const LOOKS = [4, 8, 14];

export interface CircuitBench {
  readonly circuit: string;
  readonly machinesPerFault: number;
  readonly buildSeconds: number;
  readonly speed: CircuitSpeed;
  /** Machines of another maker, a distracted observer, a second fault in four of ten. */
  readonly heldOut: StudyResult;
}

export interface CircuitBenchOptions {
  readonly circuits: ReadonlyMap<string, CircuitNetwork>;
  readonly knowledge: Knowledge;
  readonly build: BankBuilder;
  readonly machines: number;
  readonly heldOutPerFault: number;
}

/** Faults that one circuit cannot tell apart count as one: the knowledge declares what is the same. */
function lookAlikes(hypotheses: readonly string[]): string[][] {
  const setting: Record<string, string> = {
    "pto-switch-failed": "pto-left-engaged",
    "seat-switch-failed": "seat-empty",
    "neutral-switch-failed": "gear-left-engaged",
    "battery-flat": "parasitic-draw",
    "engine-seized": "starter-jammed",
  };
  return Object.entries(setting).filter((pair) => pair.every((id) => hypotheses.includes(id)));
}

/** Speed of the simulated circuits, and how much weighing whole machines is worth. */
export async function benchCircuit(options: CircuitBenchOptions): Promise<CircuitBench[]> {
  const results: CircuitBench[] = [];
  for (const id of STUDIED) {
    const circuit = options.circuits.get(id);
    if (circuit === undefined) continue;
    const request: BankRequest = {
      band: "mild",
      seed: SEED,
      machines: options.machines,
      pairs: [],
    };
    const started = performance.now();
    const blocks = await options.build(circuit, request);
    const buildSeconds = (performance.now() - started) / 1000;
    const joint = createJoint([{ bank: standBank(circuit, blocks), weight: 1 }]);
    const hypotheses = bankHypotheses(circuit, request);
    const prior = Object.fromEntries(
      hypotheses.map((fault) => [fault, options.knowledge.faults.get(fault)?.share ?? 0]),
    );
    const heldOut = studyJoint(joint, {
      ...{ world: distort(circuit, OTHER_MACHINES), companions: 0.4, observer: DISTRACTED },
      ...{ seed: SEED, machinesPerFault: options.heldOutPerFault, prior, looks: LOOKS },
      ...{ opening: OPENING, alike: lookAlikes(hypotheses) },
    });
    results.push({
      circuit: id,
      machinesPerFault: options.machines,
      buildSeconds,
      speed: benchCircuitSpeed(joint, blocks, { knowledge: options.knowledge, kind: id }),
      heldOut,
    });
  }
  return results;
}
