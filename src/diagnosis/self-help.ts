import type { Act, Remedy } from "../domain/knowledge.ts";
import type { Policy, Prices } from "./cost-to-go.ts";
import { goneForGood } from "./epochs.ts";
import { massOf } from "./repair-problem.ts";

/** At most this many things are tried by the operator before somebody comes. */
const MOST_TRIED = 3;

/** Something the operator can safely do that may end the trouble. */
export interface SelfHelp {
  readonly id: string;
  readonly burden: number;
  /** Places in the shortlist of the hypotheses it may end; the lump is never among them. */
  readonly places: Int32Array;
  /** P(complaint gone for good | hypothesis), along `places`. */
  readonly cures: Float64Array;
}

/**
 * The acts an operator may do now, and the remedies that need no parts and no tools but those the
 * operator has, as far as they can cure anything on the shortlist.
 * @param has what the operator has at hand
 */
export function selfHelps(
  prices: Prices,
  acts: readonly Act[],
  has: readonly string[],
): readonly SelfHelp[] {
  const { knowledge, hypotheses } = prices.model;
  const minute = knowledge.rates.operatorMinute;
  const tried = acts.map((act) => ({ id: act.id, burden: act.burden, cures: act.cures }));
  const remedies = [...knowledge.remedies.values()]
    .filter((remedy) => operatorCan(remedy, has))
    .map((remedy) => ({
      id: remedy.id,
      burden: remedy.minutes * minute,
      cures: new Map(
        hypotheses.faults
          .filter((id) => knowledge.faults.get(id)?.remedies.includes(remedy.id) === true)
          .map((id) => [id, remedy.cures] as const),
      ),
    }));
  return [...tried, ...remedies]
    .map(({ id, burden, cures }) => ({ id, burden, ...curesOf(prices, cures) }))
    .filter(({ places }) => places.length > 0);
}

function operatorCan(remedy: Remedy, has: readonly string[]): boolean {
  return (
    remedy.performers.includes("operator") &&
    remedy.parts.length === 0 &&
    remedy.tools.every((tool) => has.includes(tool))
  );
}

function curesOf({ model, list }: Prices, cures: ReadonlyMap<string, number>) {
  const byFault = Float64Array.from(model.hypotheses.faults, (id) => cures.get(id) ?? 0);
  const chances = [...list.hypotheses].map((h) => goneForGood(model.hypotheses, h, byFault));
  const places = Int32Array.from([...chances.keys()].filter((i) => (chances[i] ?? 0) > 0));
  return { places, cures: Float64Array.from(places, (i) => chances[i] ?? 0) };
}

export interface Helped {
  readonly policy: Policy;
  /** P(self-help ends it | shortlisted hypothesis). */
  readonly ended: Float64Array;
}

/**
 * Safe self-help first, then `after`: the most rewarding thing first, as long as each is worth its
 * burden. Null where nothing is.
 */
export function selfHelpPolicy(
  weights: Float64Array,
  helps: readonly SelfHelp[],
  after: Policy,
): Helped | null {
  const chosen = chooseHelps(weights, helps, after);
  if (chosen.length === 0) return null;
  const spent = new Float64Array(weights.length);
  const reached = new Float64Array(weights.length).fill(1);
  for (const { burden, places, cures } of chosen) {
    for (let i = 0; i < spent.length; i++) spent[i] = (spent[i] ?? 0) + (reached[i] ?? 0) * burden;
    leaveOver(reached, places, cures);
  }
  const costs = after.costs.map((cost, i) => (spent[i] ?? 0) + (reached[i] ?? 0) * cost);
  return { policy: { ...after, way: "self-help", costs }, ended: reached.map((r) => 1 - r) };
}

/** The most rewarding help first, each under the belief that those before it did not work. */
function chooseHelps(
  weights: Float64Array,
  helps: readonly SelfHelp[],
  after: Policy,
): readonly SelfHelp[] {
  const chosen: SelfHelp[] = [];
  const left = Float64Array.from(weights);
  while (chosen.length < MOST_TRIED) {
    let best: SelfHelp | null = null;
    let most = 0;
    const mass = massOf(left);
    for (const help of helps) {
      if (chosen.includes(help)) continue;
      const gain = savedBy(help, left, after) - help.burden * mass;
      if (gain <= most) continue;
      best = help;
      most = gain;
    }
    if (best === null) return chosen;
    chosen.push(best);
    leaveOver(left, best.places, best.cures);
  }
  return chosen;
}

function leaveOver(values: Float64Array, places: Int32Array, cures: Float64Array): void {
  for (let k = 0; k < places.length; k++) {
    const i = places[k] ?? 0;
    values[i] = (values[i] ?? 0) * (1 - (cures[k] ?? 0));
  }
}

/** Cost of going on that is saved where it works, before its burden. */
export function savedBy(help: SelfHelp, weights: Float64Array, after: Policy): number {
  let saved = 0;
  for (let k = 0; k < help.places.length; k++) {
    const i = help.places[k] ?? 0;
    saved += (weights[i] ?? 0) * (help.cures[k] ?? 0) * (after.costs[i] ?? 0);
  }
  return saved;
}

/** P(it ends the trouble). */
export function endedBy(help: SelfHelp, weights: Float64Array): number {
  let ended = 0;
  for (let k = 0; k < help.places.length; k++) {
    ended += (weights[help.places[k] ?? 0] ?? 0) * (help.cures[k] ?? 0);
  }
  return ended;
}
