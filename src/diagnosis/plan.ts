import type { Evidence, Situation } from "../domain/evidence.ts";
import type { Plan } from "../domain/triage.ts";
import { type Belief, updateBelief } from "./belief.ts";
import { pricesOf, SEE_IT_RUNS_MINUTES } from "./cost-to-go.ts";
import { packKit } from "./kit.ts";
import type { Model } from "./model.ts";
import { simulateMinutes } from "./plan-minutes.ts";
import { planSteps } from "./plan-steps.ts";
import { massOf } from "./repair-problem.ts";
import { solveRepair } from "./repair-search.ts";
import { shortlist } from "./shortlist.ts";
import { visitProblem } from "./visit-problem.ts";

export interface PlanOptions {
  /** Seeds the simulation of minutes; the same seed gives the same plan. */
  readonly seed: number;
  /** Most states the search may look at. */
  readonly nodes: number;
  /** Simulated visits for the median and the 90 % minutes. */
  readonly samples: number;
  readonly belief?: Belief;
}

export const DEFAULT_PLAN_OPTIONS: PlanOptions = { seed: 1, nodes: 3000, samples: 400 };

/**
 * The visit with the least expected cost: which checks and remedies in which order, and what after
 * each result. `minutes` are minutes at the machine; `expectedCost` and `bound` add the trip and a
 * possible second one, in technician-minutes; `bound` ≤ the cost of any plan.
 */
export function planVisit(
  model: Model,
  evidence: Evidence,
  situation: Situation,
  options: PlanOptions = DEFAULT_PLAN_OPTIONS,
): Plan {
  const belief = options.belief ?? updateBelief(model, evidence);
  const { probability } = belief;
  const carried = situation.carried ?? carriedBy(model, evidence, { situation, belief });
  const visit = visitProblem(model, evidence, {
    situation,
    probability,
    onBoard: new Set(carried),
  });
  const solution = solveRepair(visit.problem, options.nodes);
  const prices = pricesOf(model, shortlist(model, probability), situation);
  const trip = prices.tripMinutes / prices.perMinute;
  const fixed = trip + visit.runs * SEE_IT_RUNS_MINUTES;
  return {
    steps: planSteps(model, visit, solution.root),
    minutes: simulateMinutes(visit.problem, solution.root, {
      seed: options.seed,
      samples: options.samples,
      runs: {
        chance: visit.runs / (visit.runs + massOf(visit.problem.weights)),
        minutes: SEE_IT_RUNS_MINUTES,
      },
    }),
    expectedCost: fixed + solution.cost,
    bound: fixed + solution.bound,
  };
}

function carriedBy(
  model: Model,
  evidence: Evidence,
  at: { readonly situation: Situation; readonly belief: Belief },
): readonly string[] {
  const kit = packKit(model, evidence, at.situation, { belief: at.belief });
  return kit.items.filter((item) => item.carry).map((item) => item.part);
}
