import type { Next } from "../domain/triage.ts";
import type { Belief } from "./belief.ts";
import type { Looking } from "./candidates.ts";
import { channelOf } from "./channel.ts";
import { pricesOf } from "./cost-to-go.ts";
import { planVisit } from "./plan.ts";
import { portfolioOf } from "./policies.ts";
import { shortlist } from "./shortlist.ts";
import { answersOn, answerValue } from "./value.ts";

/** Enough for the first step; the plan that is shown is searched more widely. */
const NODES = 1500;

/**
 * The next check of somebody standing at the machine with tools: the first check of the plan, so
 * that what is asked and what is planned are one thing. Where the plan begins with a repair, no
 * answer would change that.
 */
export function nextOnSite(looking: Looking, belief: Belief): Next {
  const { model, evidence, situation } = looking;
  const { steps } = planVisit(model, evidence, situation, {
    seed: 1,
    samples: 1,
    nodes: NODES,
    belief,
  });
  const checks = steps.filter((step) => step.kind === "check" || step.kind === "act");
  const first = steps.find((step) => step.kind !== "open-up");
  if (first === undefined) return { kind: "stop", because: "nothing-left" };
  const isAct = first.kind === "act";
  const yields = isAct
    ? model.knowledge.acts.get(first.id)?.yields
    : model.knowledge.checks.get(first.id)?.yields;
  if (yields === undefined) return { kind: "stop", because: "clear-enough" };
  const after = checks.filter((step) => step.id !== first.id);
  return {
    kind: "ask",
    check: first.id,
    isAct,
    decides: "order",
    valueMinutes: savedBy(looking, yields),
    aboutMore: Math.round(after.reduce((sum, step) => sum + step.reached, 0)),
    trip: [],
  };
}

function savedBy({ model, situation, seen, probability }: Looking, observation: string): number {
  const prices = pricesOf(model, shortlist(model, probability), situation);
  const channel = channelOf(model, seen, { observation, reporter: "technician" });
  return answerValue(portfolioOf(prices, []), answersOn(prices.list, channel)).saved;
}
