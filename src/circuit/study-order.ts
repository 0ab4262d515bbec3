import type { CircuitNetwork } from "../domain/circuit.ts";
import type { CircuitEvidence, JointLikelihood } from "../domain/joint-likelihood.ts";
import { STATES } from "./observe.ts";
import { heldOutCases, type StudyRequest, type StudyScore, scoreCase, summarise } from "./study.ts";

/** Right answers after so many tests, chosen or by chance. */
export interface OrderResult {
  readonly chosen: readonly StudyScore[];
  readonly random: readonly StudyScore[];
}

/** Bands that a reading is judged in, as shares of the system's nominal volts, and amps. */
const VOLT_EDGES = [0.08, 0.45, 0.72, 0.88, 0.97] as const;
const DROP_EDGES = [0.025, 0.07, 0.2] as const;
const AMP_EDGES = [10, 60, 150, 320, 700] as const;

/**
 * Compares tests in the order of what they are expected to tell with tests in chance order, on the
 * same held-out machines and the same answers.
 * @param request its `looks` are numbers of tests after the opening; every machine is asked all
 */
export function studyOrder(joint: JointLikelihood, request: StudyRequest): OrderResult {
  const opening = request.opening.length;
  const all = opening + request.world.testPoints.length + Object.keys(STATES).length;
  const cases = heldOutCases({ ...request, looks: [all] });
  const chosen = request.looks.map((): ReturnType<typeof scoreCase>[] => []);
  const random = request.looks.map((): ReturnType<typeof scoreCase>[] => []);
  const most = Math.max(...request.looks);
  for (const one of cases) {
    const best = inBestOrder(joint, request, one.evidence, most);
    request.looks.forEach((tests, look) => {
      const logs = (list: readonly CircuitEvidence[]) =>
        joint.logLikelihood(list.slice(0, opening + tests));
      chosen[look]?.push(scoreCase(joint, request, one, logs(best)));
      random[look]?.push(scoreCase(joint, request, one, logs(one.evidence)));
    });
  }
  const scores = (lists: readonly (readonly ReturnType<typeof scoreCase>[])[]) =>
    request.looks.map((tests, look) => summarise(tests, lists[look] ?? []));
  return { chosen: scores(chosen), random: scores(random) };
}

/** The opening answers, then each time the answer whose question promises most. */
function inBestOrder(
  joint: JointLikelihood,
  request: StudyRequest,
  evidence: readonly CircuitEvidence[],
  most: number,
): readonly CircuitEvidence[] {
  const taken = evidence.slice(0, request.opening.length);
  const left = evidence.slice(request.opening.length);
  while (left.length > 0 && taken.length < request.opening.length + most) {
    const belief = beliefOf(joint, request, taken);
    const gains = left.map(({ observation }) => {
      const question = { observation, edges: edgesOf(request.world, observation) };
      return informationOf(belief, joint.predictive(taken, question));
    });
    const [next] = left.splice(gains.indexOf(Math.max(...gains)), 1);
    if (next !== undefined) taken.push(next);
  }
  return taken;
}

function edgesOf(network: CircuitNetwork, observation: string): readonly number[] {
  const point = network.testPoints.find(({ id }) => id === observation);
  if (point === undefined) return [];
  if (point.quantity === "amps") return AMP_EDGES;
  const shares = point.quantity === "drop" ? DROP_EDGES : VOLT_EDGES;
  return shares.map((share) => share * network.volts);
}

function beliefOf(
  joint: JointLikelihood,
  { prior }: StudyRequest,
  evidence: readonly CircuitEvidence[],
): Float64Array {
  const logs = joint.logLikelihood(evidence);
  const most = Math.max(...logs);
  const masses = logs.map((log, h) => {
    return (prior[joint.hypotheses[h] ?? ""] ?? 0) * Math.exp(log - most);
  });
  const whole = masses.reduce((sum, mass) => sum + mass, 0);
  return masses.map((mass) => mass / whole);
}

/**
 * Mutual information of the answer and the cause, in nats.
 * @param belief probability of each hypothesis · @param rows hypotheses × states
 */
export function informationOf(belief: Float64Array, rows: Float64Array): number {
  const width = rows.length / belief.length;
  let gain = 0;
  for (let s = 0; s < width; s++) {
    let chance = 0;
    for (let h = 0; h < belief.length; h++) chance += (belief[h] ?? 0) * (rows[h * width + s] ?? 0);
    if (chance <= 0) continue;
    for (let h = 0; h < belief.length; h++) {
      const row = rows[h * width + s] ?? 0;
      if (row > 0) gain += (belief[h] ?? 0) * row * Math.log(row / chance);
    }
  }
  return gain;
}
