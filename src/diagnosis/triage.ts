import type { Evidence, Situation } from "../domain/evidence.ts";
import type { Triage } from "../domain/triage.ts";
import { updateBelief } from "./belief.ts";
import { packKit } from "./kit.ts";
import type { Model } from "./model.ts";
import { type Budget, chooseNext, DEFAULT_BUDGET } from "./next-check.ts";
import { DEFAULT_PLAN_OPTIONS, planVisit } from "./plan.ts";
import { rankCauses } from "./ranking.ts";
import { weighWays } from "./ways.ts";

export interface TriageOptions {
  /** Seeds the simulation of minutes. */
  readonly seed?: number;
  /** Most states the plan's search may look at. */
  readonly nodes?: number;
  /** Simulated visits for the minutes. */
  readonly samples?: number;
  readonly budget?: Budget;
  /** Most parts that can be loaded. */
  readonly capacity?: number;
}

/** Everything the engine says of a case: causes with reasons, next check, plan, kit, ways. */
export function triage(
  model: Model,
  evidence: Evidence,
  situation: Situation,
  options: TriageOptions = {},
): Triage {
  const belief = updateBelief(model, evidence);
  const kit = packKit(model, evidence, situation, {
    belief,
    ...(options.capacity === undefined ? {} : { capacity: options.capacity }),
  });
  const carried = kit.items.filter((item) => item.carry).map((item) => item.part);
  return {
    ranking: rankCauses(model, evidence, belief),
    next: chooseNext(model, evidence, situation, options.budget ?? DEFAULT_BUDGET),
    plan: planVisit(
      model,
      evidence,
      { ...situation, carried: situation.carried ?? carried },
      {
        seed: options.seed ?? DEFAULT_PLAN_OPTIONS.seed,
        nodes: options.nodes ?? DEFAULT_PLAN_OPTIONS.nodes,
        samples: options.samples ?? DEFAULT_PLAN_OPTIONS.samples,
        belief,
      },
    ),
    kit,
    ways: weighWays(model, evidence, situation, belief),
  };
}
