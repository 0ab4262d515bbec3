import {
  collectPolicy,
  expected,
  type Policy,
  type Prices,
  visitPolicy,
  visitStartingWith,
} from "./cost-to-go.ts";
import { type SelfHelp, selfHelpPolicy } from "./self-help.ts";

/** Orders of work that begin with each of the most probable faults are always considered. */
const FIRST_FAULTS = 4;

/** The ways to go on that one choice is judged by. */
export interface Portfolio {
  readonly prices: Prices;
  readonly helps: readonly SelfHelp[];
  /** The present best plan is always among them, so that knowing more can never cost more. */
  readonly policies: readonly Policy[];
}

/** Candidate ways under the present belief. */
export function basePolicies(prices: Prices, helps: readonly SelfHelp[]): Portfolio {
  const { weights } = prices.list;
  const visits = [visitPolicy(prices, weights)];
  for (const fault of likeliestFaults(prices)) {
    visits.push(visitStartingWith(prices, weights, fault));
  }
  const ways = prices.collectMinutes < Infinity ? [collectPolicy(prices, weights)] : [];
  const policies = [...visits, ...ways].flatMap((after) => withSelfHelp(weights, helps, after));
  return { prices, helps, policies };
}

/** The ways that a changed belief suggests, besides the base ones. */
export function suggested(portfolio: Portfolio, weights: Float64Array): readonly Policy[] {
  const visit = visitPolicy(portfolio.prices, weights);
  return withSelfHelp(weights, portfolio.helps, visit);
}

function withSelfHelp(weights: Float64Array, helps: readonly SelfHelp[], after: Policy): Policy[] {
  const helped = selfHelpPolicy(weights, helps, after);
  return helped === null ? [after] : [after, helped.policy];
}

/** The cheapest way under a belief; the first of equals. */
export function bestPolicy(policies: readonly Policy[], weights: Float64Array): Policy {
  const [first] = policies;
  if (first === undefined) throw new RangeError("no way to go on");
  let best = first;
  let least = expected(weights, best.costs);
  for (const policy of policies) {
    const cost = expected(weights, policy.costs);
    if (cost < least) [best, least] = [policy, cost];
  }
  return best;
}

function likeliestFaults({ model, list }: Prices): readonly number[] {
  const faults = new Set<number>();
  for (const h of list.hypotheses) {
    const fault = model.hypotheses.first[h] ?? -1;
    if (fault >= 0) faults.add(fault);
    if (faults.size === FIRST_FAULTS) break;
  }
  return [...faults];
}
