import type { MachineFacts } from "../domain/evidence.ts";
import type { Fault, Knowledge } from "../domain/knowledge.ts";
import { OutOfRange, TurnrowError, UnknownId } from "../domain/result.ts";
import { chanceHolds } from "./machine-condition.ts";
import type { Hypotheses } from "./model.ts";

/**
 * How much more or less often two independent faults meet in one call than their shares of calls
 * multiplied. Shares are shares of calls, not chances that a standing machine has the fault, so
 * the product alone would say that nearly every second call has two faults. With 0.05 about one
 * call in fifty has. Estimate.
 */
export const COINCIDENCE = 0.05;

/** Bound on independent pairs, whatever the cut-off lets through: keeps belief within its time. */
export const MOST_INDEPENDENT_PAIRS = 300;

/** The largest part of a root cause's calls that may come with a consequence. */
const MOST_BROUGHT = 0.95;

export interface PriorOptions {
  /** Multiplies a fault's share: what closed cases taught, or the season. */
  readonly times?: ReadonlyMap<string, number>;
  readonly coincidence?: number;
}

interface Pair {
  readonly first: number;
  readonly second: number;
  readonly prior: number;
  readonly declared: boolean;
}

/**
 * The hypotheses of a machine with their prior: single faults by share and factors, the declared
 * pairs P(root)·P(consequence | root) taken out of the root's own share, independent pairs
 * coincidence·P(a)·P(b) down to `rates.pairCutOff`, "nothing wrong" and "something else" by their
 * rates. The prior sums to 1 within 1e-12.
 * @throws TurnrowError when no fault applies, OutOfRange for a share or rate outside its range
 */
export function buildHypotheses(
  knowledge: Knowledge,
  facts: MachineFacts,
  options: PriorOptions,
): Hypotheses {
  const { nothingWrong, somethingElse } = checkedRates(knowledge);
  const applicable = sharesOf(knowledge, facts, options.times ?? new Map());
  const faults = [...applicable.keys()];
  if (faults.length === 0) throw new TurnrowError("no fault applies to this machine");
  const total = [...applicable.values()].reduce((sum, share) => sum + share, 0);
  const shares = Float64Array.from(applicable.values(), (share) => share / total);
  const broughtBy = declaredPairs(knowledge, faults, shares);
  const met = independentPairs(knowledge, { faults, shares, declared: broughtBy }, options);
  const singles = Float64Array.from(shares);
  for (const pair of broughtBy) singles[pair.first] = (singles[pair.first] ?? 0) - pair.prior;
  const extra = met.reduce((sum, pair) => sum + pair.prior, 0);
  const scale = (1 - nothingWrong - somethingElse) / (1 + extra);
  return arrays(faults, singles, [...broughtBy, ...met], { nothingWrong, somethingElse, scale });
}

/** Share × expected factors × P(the machine can have it), for every fault that can be. */
export function sharesOf(
  knowledge: Knowledge,
  facts: MachineFacts,
  times: ReadonlyMap<string, number>,
): ReadonlyMap<string, number> {
  const kind = knowledge.machines.get(facts.kind);
  const shares = new Map<string, number>();
  for (const id of times.keys()) if (!knowledge.faults.has(id)) throw new UnknownId("fault", id);
  for (const fault of knowledge.faults.values()) {
    inRange(fault.id, fault.share, fault.share > 0 && fault.share < Infinity, "above 0");
    if (kind !== undefined && kind.systems.length > 0 && !kind.systems.includes(fault.system)) {
      continue;
    }
    const share =
      fault.share *
      chanceHolds(fault.needs, facts, kind, 1) *
      (times.get(fault.id) ?? 1) *
      factorOf(fault, (when) => chanceHolds(when, facts, kind, 0));
    inRange(fault.id, share, share >= 0 && share < Infinity, "a share");
    if (share > 0) shares.set(fault.id, share);
  }
  return shares;
}

function factorOf(fault: Fault, chance: (when: Fault["needs"]) => number): number {
  return fault.factors.reduce((product, factor) => {
    inRange(fault.id, factor.times, factor.times > 0, "above 0");
    return product * (1 + chance(factor.when) * (factor.times - 1));
  }, 1);
}

function checkedRates(knowledge: Knowledge): { nothingWrong: number; somethingElse: number } {
  const { nothingWrong, somethingElse, pairCutOff } = knowledge.rates;
  const share = (id: string, value: number): void =>
    inRange(`rates.${id}`, value, value >= 0 && value < 1, "in [0, 1)");
  share("nothingWrong", nothingWrong);
  share("somethingElse", somethingElse);
  share("nothingWrong + somethingElse", nothingWrong + somethingElse);
  inRange("rates.pairCutOff", pairCutOff, pairCutOff > 0, "above 0");
  return { nothingWrong, somethingElse };
}

function inRange(id: string, value: number, holds: boolean, range: string): void {
  if (!holds) throw new OutOfRange(id, value, range);
}

function declaredPairs(knowledge: Knowledge, faults: readonly string[], shares: Float64Array) {
  const indexOf = new Map(faults.map((id, index) => [id, index]));
  const pairs: Pair[] = [];
  for (const [first, id] of faults.entries()) {
    const brought = [...(knowledge.faults.get(id)?.brings ?? [])].flatMap(([other, chance]) => {
      inRange(`${id} brings ${other}`, chance, chance > 0 && chance < 1, "in (0, 1)");
      if (!knowledge.faults.has(other)) throw new UnknownId("fault", other);
      const second = indexOf.get(other);
      return second === undefined || second === first ? [] : [{ second, chance }];
    });
    const sum = brought.reduce((total, entry) => total + entry.chance, 0);
    const scale = sum > MOST_BROUGHT ? MOST_BROUGHT / sum : 1;
    for (const { second, chance } of brought) {
      pairs.push({ first, second, prior: (shares[first] ?? 0) * chance * scale, declared: true });
    }
  }
  return pairs;
}

interface PairSource {
  readonly faults: readonly string[];
  readonly shares: Float64Array;
  readonly declared: readonly Pair[];
}

function independentPairs(knowledge: Knowledge, source: PairSource, options: PriorOptions): Pair[] {
  const { shares, declared } = source;
  const coincidence = options.coincidence ?? COINCIDENCE;
  const key = (a: number, b: number): number => Math.min(a, b) * shares.length + Math.max(a, b);
  const taken = new Set(declared.map((pair) => key(pair.first, pair.second)));
  const cutOff = knowledge.rates.pairCutOff;
  const ranked = [...shares.keys()].sort((a, b) => (shares[b] ?? 0) - (shares[a] ?? 0));
  const pairs: Pair[] = [];
  for (const [place, a] of ranked.entries()) {
    for (let next = place + 1; next < ranked.length; next++) {
      const b = ranked[next] ?? 0;
      const prior = coincidence * (shares[a] ?? 0) * (shares[b] ?? 0);
      if (prior < cutOff) break;
      const [first, second] = a < b ? [a, b] : [b, a];
      if (!taken.has(key(a, b))) pairs.push({ first, second, prior, declared: false });
    }
  }
  return mostProbable(pairs);
}

/** The most probable pairs; those that tie with the first one left out are left out too. */
function mostProbable(pairs: Pair[]): Pair[] {
  if (pairs.length <= MOST_INDEPENDENT_PAIRS) return pairs;
  const sorted = pairs.sort((a, b) => b.prior - a.prior);
  const limit = (sorted[MOST_INDEPENDENT_PAIRS]?.prior ?? 0) * (1 + 1e-12);
  return sorted.filter((pair) => pair.prior > limit);
}

interface Masses {
  readonly nothingWrong: number;
  readonly somethingElse: number;
  readonly scale: number;
}

function arrays(
  faults: readonly string[],
  singles: Float64Array,
  pairs: readonly Pair[],
  masses: Masses,
): Hypotheses {
  const count = 2 + faults.length + pairs.length;
  const first = new Int32Array(count).fill(-1);
  const second = new Int32Array(count).fill(-1);
  const declared = new Uint8Array(count);
  const prior = new Float64Array(count);
  prior[0] = masses.nothingWrong;
  for (const [index, share] of singles.entries()) {
    first[index + 1] = index;
    prior[index + 1] = share * masses.scale;
  }
  for (const [place, pair] of pairs.entries()) {
    const h = 1 + faults.length + place;
    first[h] = pair.first;
    second[h] = pair.second;
    declared[h] = Number(pair.declared);
    prior[h] = pair.prior * masses.scale;
  }
  prior[count - 1] = masses.somethingElse;
  return { faults, count, first, second, declared, prior };
}
