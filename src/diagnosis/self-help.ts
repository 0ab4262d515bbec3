import type { Act, Remedy } from "../domain/knowledge.ts";
import { expected, type Policy, type Prices } from "./cost-to-go.ts";
import { goneForGood } from "./epochs.ts";

/** At most this many things are tried by the operator before somebody comes. */
const MOST_TRIED = 3;

/** Something the operator can safely do that may end the trouble. */
export interface SelfHelp {
  readonly id: string;
  readonly burden: number;
  /** P(complaint gone for good | shortlisted hypothesis); the lump, last, counts 0. */
  readonly cures: Float64Array;
}

/** The acts and the remedies without parts that an operator may do, as far as they can cure. */
export function selfHelps(prices: Prices, acts: readonly Act[]): readonly SelfHelp[] {
  const { knowledge, hypotheses } = prices.model;
  const minute = knowledge.rates.operatorMinute;
  const tried = acts.map((act) => ({ id: act.id, burden: act.burden, cures: act.cures }));
  const remedies = [...knowledge.remedies.values()].filter(operatorCan).map((remedy) => ({
    id: remedy.id,
    burden: remedy.minutes * minute,
    cures: new Map(
      hypotheses.faults
        .filter((id) => knowledge.faults.get(id)?.remedies.includes(remedy.id) === true)
        .map((id) => [id, remedy.cures] as const),
    ),
  }));
  return [...tried, ...remedies]
    .map(({ id, burden, cures }) => ({ id, burden, cures: curesOf(prices, cures) }))
    .filter(({ cures }) => cures.some((chance) => chance > 0));
}

function operatorCan(remedy: Remedy): boolean {
  return remedy.performers.includes("operator") && remedy.parts.length === 0;
}

function curesOf({ model, list }: Prices, cures: ReadonlyMap<string, number>): Float64Array {
  const byFault = Float64Array.from(model.hypotheses.faults, (id) => cures.get(id) ?? 0);
  const chances = new Float64Array(list.weights.length);
  for (const [i, h] of list.hypotheses.entries()) {
    chances[i] = goneForGood(model.hypotheses, h, byFault);
  }
  return chances;
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
  if (helps.length === 0) return null;
  const left = Float64Array.from(weights);
  const spent = new Float64Array(weights.length);
  const open = [...helps];
  let reached = Float64Array.from(weights, () => 1);
  let tried = 0;
  while (tried < MOST_TRIED && open.length > 0) {
    const gains = open.map((help) => gainOf(help, left, after));
    const best = gains.indexOf(Math.max(...gains));
    const help = open[best];
    if (help === undefined || (gains[best] ?? 0) <= 0) break;
    open.splice(best, 1);
    tried += 1;
    for (let i = 0; i < left.length; i++) {
      const fails = 1 - (help.cures[i] ?? 0);
      spent[i] = (spent[i] ?? 0) + (reached[i] ?? 0) * help.burden;
      left[i] = (left[i] ?? 0) * fails;
    }
    reached = reached.map((chance, i) => chance * (1 - (help.cures[i] ?? 0)));
  }
  if (tried === 0) return null;
  const costs = after.costs.map((cost, i) => (spent[i] ?? 0) + (reached[i] ?? 0) * cost);
  return {
    policy: { ...after, way: "self-help", costs },
    ended: reached.map((chance) => 1 - chance),
  };
}

/** Expected saving, less burden, of trying it before going on. */
export function gainOf(help: SelfHelp, weights: Float64Array, after: Policy): number {
  const cured = weights.map((weight, i) => weight * (help.cures[i] ?? 0));
  const mass = weights.reduce((sum, weight) => sum + weight, 0);
  return expected(cured, after.costs) - help.burden * mass;
}
