import {
  collectPolicy,
  expected,
  type Policy,
  type Prices,
  visitPolicy,
  visitStartingWith,
} from "./cost-to-go.ts";
import { type SelfHelp, selfHelpPolicy } from "./self-help.ts";
import type { Choice } from "./value.ts";

/** Orders of work that begin with each of the most probable faults are always considered. */
const FIRST_FAULTS = 4;

/** The choice between ways to go on, as a case stands. */
export interface Portfolio extends Choice<Policy> {
  readonly prices: Prices;
  readonly helps: readonly SelfHelp[];
}

/** Candidate ways under the present belief, and what a changed belief would suggest. */
export function portfolioOf(prices: Prices, helps: readonly SelfHelp[]): Portfolio {
  const { weights } = prices.list;
  const visits = [visitPolicy(prices, weights)];
  const most = Math.min(FIRST_FAULTS, prices.work.faults.length);
  for (let fault = 0; fault < most; fault++) {
    visits.push(visitStartingWith(prices, weights, fault));
  }
  const ways = prices.collectMinutes < Infinity ? [collectPolicy(prices, weights)] : [];
  return {
    prices,
    helps,
    weights,
    policies: [...visits, ...ways].flatMap((after) => withSelfHelp(weights, helps, after)),
    suggest: (joint) => withSelfHelp(joint, helps, visitPolicy(prices, joint)),
  };
}

function withSelfHelp(weights: Float64Array, helps: readonly SelfHelp[], after: Policy): Policy[] {
  const helped = selfHelpPolicy(weights, helps, after);
  return helped === null ? [after] : [after, helped.policy];
}

/** What changes between two ways, the weightiest first. */
export function differenceOf(
  now: Policy,
  then: Policy,
): "chat" | "trip" | "kit" | "order" | "cause" {
  if (now.way !== then.way) {
    return now.way === "self-help" || then.way === "self-help" ? "chat" : "trip";
  }
  if (now.kit.some((on, part) => on !== then.kit[part])) return "kit";
  return now.firstFault === then.firstFault ? "cause" : "order";
}

/** The cheapest way that needs nothing of the operator. */
export function bestWithoutHelp({ policies, weights }: Portfolio): Policy {
  const [first, ...others] = policies.filter((policy) => policy.way !== "self-help");
  if (first === undefined) throw new RangeError("no way to go on");
  return others.reduce(
    (best, policy) =>
      expected(weights, policy.costs) < expected(weights, best.costs) ? policy : best,
    first,
  );
}
