import type { Situation } from "../domain/evidence.ts";
import type { Model } from "./model.ts";
import type { Shortlist } from "./shortlist.ts";

/** Minutes for seeing that a machine runs and doing nothing. */
const SEE_IT_RUNS_MINUTES = 5;

/** A way to go on from here and what it costs under each hypothesis of a shortlist. */
export interface Policy {
  readonly way: "self-help" | "visit" | "collect";
  /** Parts taken along, sorted, as one text. */
  readonly kit: string;
  /** Index of the fault looked for first; -1: none. */
  readonly firstFault: number;
  /** Technician-minutes, one entry a shortlisted hypothesis, the lump last. */
  readonly costs: Float64Array;
}

/** What fixes the price of everything on one case. */
export interface Prices {
  readonly model: Model;
  readonly list: Shortlist;
  /** Minutes there and back, before any work. */
  readonly tripMinutes: number;
  readonly secondTripMinutes: number;
  readonly helpMinutes: number;
  readonly collectMinutes: number;
  /** What a minute of work costs, the machine standing still meanwhile. */
  readonly perMinute: number;
  /** Parts on board; null: still open. */
  readonly carried: ReadonlySet<string> | null;
}

export function pricesOf(model: Model, list: Shortlist, situation: Situation): Prices {
  const { rates } = model.knowledge;
  const perMinute = 1 + rates.standstillPerHour[situation.urgency] / 60;
  const there = situation.performer === "technician" && situation.place === "at-machine";
  const oneWay = situation.travelMinutes ?? rates.travelMinutes;
  return {
    model,
    list,
    tripMinutes: there ? 0 : 2 * oneWay * perMinute,
    secondTripMinutes: rates.secondTripMinutes * perMinute,
    helpMinutes: rates.callForHelpMinutes * perMinute,
    collectMinutes: there ? Infinity : rates.collectMinutes * perMinute,
    perMinute,
    carried: situation.carried === undefined ? null : new Set(situation.carried),
  };
}

/**
 * The visit that a belief suggests: faults looked for by probability per minute, parts loaded
 * where the second trip they save is worth the carrying.
 * @param weights belief over the shortlist, the lump last; need not sum to 1
 */
export function visitPolicy(prices: Prices, weights: Float64Array): Policy {
  const presence = presenceIn(prices, weights);
  const order = orderOf(prices, presence);
  const kit = prices.carried ?? kitFor(prices, presence, total(weights));
  return visitWith(prices, order, kit);
}

/** The visit with a given fault looked for first. */
export function visitStartingWith(prices: Prices, weights: Float64Array, fault: number): Policy {
  const presence = presenceIn(prices, weights);
  const rest = orderOf(prices, presence).filter((f) => f !== fault);
  const kit = prices.carried ?? kitFor(prices, presence, total(weights));
  return visitWith(prices, [fault, ...rest], kit);
}

/** The machine is brought in: no part is missing there, but it must be fetched. */
export function collectPolicy(prices: Prices, weights: Float64Array): Policy {
  const order = orderOf(prices, presenceIn(prices, weights));
  const everything = prices.model.repairs.flatMap((repair) => repair.parts);
  const shop = { ...prices, tripMinutes: prices.collectMinutes };
  const { costs } = visitWith(shop, order, new Set(everything), 0);
  return { way: "collect", kit: "", firstFault: order[0] ?? -1, costs };
}

export function expected(weights: Float64Array, costs: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i++) {
    const weight = weights[i] ?? 0;
    if (weight > 0) sum += weight * (costs[i] ?? 0);
  }
  return sum;
}

function total(weights: Float64Array): number {
  return weights.reduce((sum, weight) => sum + weight, 0);
}

/** Weight of each fault being there, by fault index; faults of weight 0 are absent. */
function presenceIn({ model, list }: Prices, weights: Float64Array): ReadonlyMap<number, number> {
  const presence = new Map<number, number>();
  const add = (fault: number, weight: number): void => {
    if (fault >= 0) presence.set(fault, (presence.get(fault) ?? 0) + weight);
  };
  for (const [i, h] of list.hypotheses.entries()) {
    add(model.hypotheses.first[h] ?? -1, weights[i] ?? 0);
    add(model.hypotheses.second[h] ?? -1, weights[i] ?? 0);
  }
  return presence;
}

function orderOf({ model }: Prices, presence: ReadonlyMap<number, number>): number[] {
  const efficiency = (fault: number): number =>
    (presence.get(fault) ?? 0) / Math.max(1e-9, model.repairs[fault]?.lookMinutes ?? 1);
  return [...presence.keys()].sort((a, b) => efficiency(b) - efficiency(a) || a - b);
}

function kitFor(
  prices: Prices,
  presence: ReadonlyMap<number, number>,
  mass: number,
): ReadonlySet<string> {
  const need = new Map<string, number>();
  for (const [fault, weight] of presence) {
    for (const part of prices.model.repairs[fault]?.parts ?? []) {
      need.set(part, (need.get(part) ?? 0) + weight);
    }
  }
  const kit = new Set<string>();
  for (const [part, weight] of need) {
    const carry = prices.model.knowledge.parts.get(part)?.carryMinutes ?? 0;
    if (weight * prices.secondTripMinutes > carry * mass) kit.add(part);
  }
  return kit;
}

function visitWith(
  prices: Prices,
  order: readonly number[],
  kit: ReadonlySet<string>,
  loading = prices.carried === null ? carryOf(prices, kit) : 0,
): Policy {
  const { model, list, perMinute } = prices;
  const found = new Map<number, number>();
  let looked = 0;
  for (const fault of order) {
    looked += (model.repairs[fault]?.lookMinutes ?? 0) * perMinute;
    found.set(fault, looked);
  }
  const start = prices.tripMinutes + loading;
  const costs = new Float64Array(list.weights.length);
  for (const [i, h] of list.hypotheses.entries()) {
    costs[i] = start + repairCost(prices, { h, found, looked, kit });
  }
  costs[costs.length - 1] = start + looked + prices.helpMinutes;
  return { way: "visit", kit: [...kit].sort().join(" "), firstFault: order[0] ?? -1, costs };
}

interface Repairing {
  readonly h: number;
  /** Minutes of looking until each fault is found. */
  readonly found: ReadonlyMap<number, number>;
  readonly looked: number;
  readonly kit: ReadonlySet<string>;
}

function repairCost(prices: Prices, { h, found, looked, kit }: Repairing): number {
  const { model, perMinute, secondTripMinutes, helpMinutes } = prices;
  const a = model.hypotheses.first[h] ?? -1;
  if (a < 0) return SEE_IT_RUNS_MINUTES * perMinute;
  let looking = 0;
  let fixing = 0;
  let missing = false;
  for (const fault of [a, model.hypotheses.second[h] ?? -1]) {
    const repair = model.repairs[fault];
    if (repair === undefined) continue;
    looking = Math.max(looking, found.get(fault) ?? looked + helpMinutes);
    fixing += repair.fixMinutes * perMinute;
    missing ||= repair.parts.some((part) => !kit.has(part));
  }
  return looking + fixing + (missing ? secondTripMinutes : 0);
}

function carryOf({ model }: Prices, kit: ReadonlySet<string>): number {
  let sum = 0;
  for (const part of kit) sum += model.knowledge.parts.get(part)?.carryMinutes ?? 0;
  return sum;
}
