import type { CircuitNetwork } from "../domain/circuit.ts";
import type { CircuitEvidence, JointLikelihood } from "../domain/joint-likelihood.ts";
import { hypothesesOf, openSimulator, simulateBlock, UNNOTICED_SHARE } from "./bank.ts";
import type { Block } from "./block.ts";
import { STATES } from "./observe.ts";
import { createRandom, type Random } from "./random.ts";
import { type Observer, report } from "./study-world.ts";

/** Machines that the bank never saw, and how they are asked about. */
export interface StudyRequest {
  /** The circuit the held-out machines are drawn from. */
  readonly world: CircuitNetwork;
  /** Share of them with a mild second fault. */
  readonly companions: number;
  readonly observer: Observer;
  readonly seed: number;
  readonly machinesPerFault: number;
  /** Prior of each hypothesis; those not named are left out of the study. */
  readonly prior: Readonly<Record<string, number>>;
  /** Hypotheses that count as one, because nothing on the circuit tells them apart. */
  readonly alike: readonly (readonly string[])[];
  /** After how many answers to look; ascending. */
  readonly looks: readonly number[];
  /** The answers that come first in every case. */
  readonly opening: readonly string[];
}

/** How well one method did after a number of answers; cases weighted by the prior. */
export interface StudyScore {
  readonly answers: number;
  /** Share of cases whose true cause (or a look-alike) leads. */
  readonly top1: number;
  /** Mean −log P(true cause), in nats. */
  readonly logLoss: number;
  /** Mean confidence in the leader less the share that is right. */
  readonly overConfidence: number;
}

export interface StudyResult {
  readonly joint: readonly StudyScore[];
  readonly naive: readonly StudyScore[];
  readonly cases: number;
}

/** Probabilities below this are all "it said impossible". */
const LEAST_PROBABILITY = 1e-4;

export interface StudyCase {
  readonly fault: string;
  readonly weight: number;
  readonly evidence: readonly CircuitEvidence[];
}

/**
 * Compares weighing whole machines by all the answers with multiplying each answer's own
 * likelihood, both from the same bank, on machines that are not in it.
 * @param joint likelihood from the bank
 * @returns scores at each look; equal arguments give equal scores
 */
export function studyJoint(joint: JointLikelihood, request: StudyRequest): StudyResult {
  const cases = heldOutCases(request);
  const joined = request.looks.map((): Scored[] => []);
  const multiplied = request.looks.map((): Scored[] => []);
  for (const one of cases) {
    const single = one.evidence.map((item) => joint.logLikelihood([item]));
    request.looks.forEach((answers, look) => {
      const evidence = one.evidence.slice(0, answers);
      const product = new Float64Array(joint.hypotheses.length);
      for (const logs of single.slice(0, answers)) {
        for (let h = 0; h < product.length; h++) product[h] = (product[h] ?? 0) + (logs[h] ?? 0);
      }
      joined[look]?.push(scoreCase(joint, request, one, joint.logLikelihood(evidence)));
      multiplied[look]?.push(scoreCase(joint, request, one, product));
    });
  }
  const summed = (lists: readonly Scored[][]) =>
    request.looks.map((answers, look) => summarise(answers, lists[look] ?? []));
  return { joint: summed(joined), naive: summed(multiplied), cases: cases.length };
}

/** Cases from machines that are not in the bank: the opening answers, then the rest by chance. */
export function heldOutCases(request: StudyRequest): readonly StudyCase[] {
  const { world, prior, seed, machinesPerFault, companions, observer } = request;
  const simulator = openSimulator(world);
  const most = Math.max(...request.looks);
  return hypothesesOf(world).flatMap((fault): StudyCase[] => {
    const share = prior[fault] ?? 0;
    if (share <= 0) return [];
    const block = simulateBlock(simulator, {
      ...{ hypothesis: fault, celsius: 20, kelvinAround: 4, companions },
      ...{ seed, machines: machinesPerFault },
    });
    return Array.from({ length: machinesPerFault }, (_, machine) => {
      const random = createRandom(seed, `case/${fault}/${machine}`);
      const asked = [...request.opening, ...shuffled(laterQuestions(request), random)];
      const evidence = asked.slice(0, most).map((observation) => {
        return report(world, { block, machine, observation }, observer, random);
      });
      return { fault, weight: caseWeight(block, machine, share), evidence };
    });
  });
}

/** A machine whose fault nobody notices is seldom called in. */
function caseWeight(block: Block, machine: number, share: number): number {
  return (share * (block.noticed[machine] === 1 ? 1 : UNNOTICED_SHARE)) / block.machines;
}

/** All that can be asked besides the opening; running volts need a running engine. */
function laterQuestions({ world, opening }: StudyRequest): string[] {
  const points = world.testPoints.filter(({ quantity }) => quantity !== "charging");
  const all = [...Object.keys(STATES), ...points.map(({ id }) => id)];
  return all.filter((id) => !opening.includes(id));
}

function shuffled(list: readonly string[], random: Random): string[] {
  return list
    .map((item) => ({ item, place: random.next() }))
    .sort((a, b) => a.place - b.place)
    .map(({ item }) => item);
}

/** One case as scored at one look. */
export interface Scored {
  readonly weight: number;
  /** Probability of the true cause with its look-alikes, and of the leader with its own. */
  readonly truth: number;
  readonly leader: number;
  readonly right: boolean;
}

/** Scores a case: probabilities summed over look-alikes. */
export function scoreCase(
  joint: JointLikelihood,
  { prior, alike }: StudyRequest,
  { fault, weight }: StudyCase,
  logs: Float64Array,
): Scored {
  const group = (name: string) => alike.find((names) => names.includes(name))?.[0] ?? name;
  const most = Math.max(...logs);
  const sums = new Map<string, number>();
  joint.hypotheses.forEach((name, h) => {
    const mass = (prior[name] ?? 0) * Math.exp((logs[h] ?? 0) - most);
    sums.set(group(name), (sums.get(group(name)) ?? 0) + mass);
  });
  const whole = [...sums.values()].reduce((sum, mass) => sum + mass, 0);
  const [leader, mass] = [...sums].reduce((best, one) => (one[1] > best[1] ? one : best));
  const truth = (sums.get(group(fault)) ?? 0) / whole;
  return { weight, truth, leader: mass / whole, right: leader === group(fault) };
}

/** Means over cases, weighted by how often such a case comes in. */
export function summarise(answers: number, cases: readonly Scored[]): StudyScore {
  const whole = cases.reduce((sum, { weight }) => sum + weight, 0);
  const mean = (of: (one: Scored) => number) =>
    cases.reduce((sum, one) => sum + one.weight * of(one), 0) / whole;
  const top1 = mean(({ right }) => (right ? 1 : 0));
  return {
    answers,
    top1,
    logLoss: mean(({ truth }) => -Math.log(Math.max(LEAST_PROBABILITY, truth))),
    overConfidence: mean(({ leader }) => leader) - top1,
  };
}
