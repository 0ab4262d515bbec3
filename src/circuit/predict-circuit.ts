import { type CircuitNetwork, CRANK_SYMPTOMS, type CrankSymptom } from "../domain/circuit.ts";
import type { ReadingRange } from "../domain/joint-likelihood.ts";
import { openSimulator, simulateBlock } from "./bank.ts";
import type { Block } from "./block.ts";
import { expectedRange } from "./joint-readings.ts";
import { standBank, startWeights, weighedBlock } from "./standing-bank.ts";

/** What the model says of a machine with a fault, before anything is known of it. */
export interface CircuitPrediction {
  readonly hypothesis: string;
  readonly celsius: number;
  /** Shares of what an attempt looks like; they sum to 1. */
  readonly complaints: Readonly<Record<CrankSymptom, number>>;
  readonly readings: Readonly<Record<string, ReadingRange>>;
}

const MACHINES = 600;

/**
 * Simulates machines with a fault, or a pair `a+b`, at one temperature.
 * @param asked `celsius` −40 to 50; equal arguments give equal predictions
 */
export function predictCircuit(
  network: CircuitNetwork,
  asked: { readonly hypothesis: string; readonly celsius: number; readonly seed: number },
): CircuitPrediction {
  const { hypothesis, celsius, seed } = asked;
  const block = simulateBlock(openSimulator(network), {
    ...{ hypothesis, celsius, seed, machines: MACHINES },
    kelvinAround: 0,
    companions: 0,
  });
  return { hypothesis, celsius, complaints: complaintShares(block), readings: ranges() };

  function ranges(): Record<string, ReadingRange> {
    const bank = standBank(network, [block]);
    const weights = startWeights(block).fill(1);
    const blocks = [weighedBlock(block, weights, weights.length)];
    const parts = [{ bank, blocks, scale: 1 }];
    return Object.fromEntries(network.testPoints.map(({ id }) => [id, expectedRange(parts, id)]));
  }
}

/** How often each symptom came out in a block. */
export function complaintShares(block: Block): Record<CrankSymptom, number> {
  const counts = new Float64Array(CRANK_SYMPTOMS.length);
  for (const code of block.codes["symptom"] ?? []) counts[code >> 1] = (counts[code >> 1] ?? 0) + 1;
  const share = (symptom: CrankSymptom) =>
    (counts[CRANK_SYMPTOMS.indexOf(symptom)] ?? 0) / block.machines;
  return {
    dead: share("dead"),
    silent: share("silent"),
    "faint-click": share("faint-click"),
    "loud-click": share("loud-click"),
    chatter: share("chatter"),
    "part-turn": share("part-turn"),
    slow: share("slow"),
    normal: share("normal"),
    "spins-free": share("spins-free"),
    grinds: share("grinds"),
  };
}
