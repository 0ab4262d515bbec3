import type { Evidence, Situation } from "../domain/evidence.ts";
import type { Ways } from "../domain/triage.ts";
import { type Belief, updateBelief } from "./belief.ts";
import { candidates } from "./candidates.ts";
import { seenNow } from "./channel.ts";
import { collectPolicy, expected, pricesOf, visitPolicy } from "./cost-to-go.ts";
import type { Model } from "./model.ts";
import { selfHelpPolicy, selfHelps } from "./self-help.ts";
import { shortlist } from "./shortlist.ts";

/**
 * How the case should go: the expected cost of safe self-help then a visit, of a visit, and of
 * fetching the machine, in technician-minutes, and the chance that self-help ends it. `byChat`
 * counts the chance that nothing is wrong any more with what self-help cures.
 */
export function weighWays(
  model: Model,
  evidence: Evidence,
  situation: Situation,
  belief: Belief = updateBelief(model, evidence),
): Ways {
  const { probability } = belief;
  const operator: Situation = { ...situation, performer: "operator" };
  const looking = {
    model,
    evidence,
    situation: operator,
    probability,
    seen: seenNow(model, evidence),
  };
  const list = shortlist(model, probability);
  const prices = pricesOf(model, list, { ...operator });
  const visit = visitPolicy(prices, list.weights);
  const helps = selfHelps(prices, candidates(looking).acts, situation.has);
  const helped = selfHelpPolicy(list.weights, helps, visit);
  const cost = expected(list.weights, visit.costs);
  return {
    selfHelp: helped === null ? cost : expected(list.weights, helped.policy.costs),
    visit: cost,
    collect: expected(list.weights, collectPolicy(prices, list.weights).costs),
    byChat: (probability[0] ?? 0) + (helped === null ? 0 : expected(list.weights, helped.ended)),
  };
}
