import type { Situation } from "../domain/evidence.ts";
import type { Model } from "./model.ts";
import type { Shortlist } from "./shortlist.ts";
import { type Workload, workloadOf } from "./workload.ts";

/** Minutes for seeing that a machine runs and doing nothing. */
export const SEE_IT_RUNS_MINUTES = 5;

/** A way to go on from here and what it costs under each hypothesis of a shortlist. */
export interface Policy {
  readonly way: "self-help" | "visit" | "collect";
  /** Parts taken along, by index of `Workload.parts`: 1 = on board. */
  readonly kit: Uint8Array;
  /** Index in the model of the fault looked for first; -1: none. */
  readonly firstFault: number;
  /** Technician-minutes, one entry a shortlisted hypothesis, the lump last. */
  readonly costs: Float64Array;
}

/** What fixes the price of everything on one case. */
export interface Prices {
  readonly model: Model;
  readonly list: Shortlist;
  readonly work: Workload;
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

/** The prices of a case from here on; a technician at the machine has made the trip. */
export function pricesOf(model: Model, list: Shortlist, situation: Situation): Prices {
  const { rates } = model.knowledge;
  const perMinute = 1 + rates.standstillPerHour[situation.urgency] / 60;
  const there = situation.performer === "technician" && situation.place === "at-machine";
  const oneWay = situation.travelMinutes ?? rates.travelMinutes;
  return {
    model,
    list,
    work: workloadOf(model, list),
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
  const kit = kitFor(prices, presence, weights);
  return visitWith(prices, orderOf(prices, presence), kit);
}

/** The visit with a given fault (by its place in the workload) looked for first. */
export function visitStartingWith(prices: Prices, weights: Float64Array, first: number): Policy {
  const presence = presenceIn(prices, weights);
  const kit = kitFor(prices, presence, weights);
  const rest = orderOf(prices, presence).filter((fault) => fault !== first);
  return visitWith(prices, Int32Array.from([first, ...rest]), kit);
}

/** The machine is brought in: no part is missing there, but it must be fetched. */
export function collectPolicy(prices: Prices, weights: Float64Array): Policy {
  const order = orderOf(prices, presenceIn(prices, weights));
  const everything = new Uint8Array(prices.work.parts.length).fill(1);
  const shop = { ...prices, tripMinutes: prices.collectMinutes, carried: new Set<string>() };
  return { ...visitWith(shop, order, everything), way: "collect" };
}

/** Σ weight·cost; entries of weight 0 count nothing. */
export function expected(weights: Float64Array, costs: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i++) {
    const weight = weights[i] ?? 0;
    if (weight > 0) sum += weight * (costs[i] ?? 0);
  }
  return sum;
}

/** Weight of each fault being there, by its place in the workload. */
function presenceIn({ work }: Prices, weights: Float64Array): Float64Array {
  const presence = new Float64Array(work.faults.length);
  const { first, second } = work;
  for (let i = 0; i < first.length; i++) {
    const weight = weights[i] ?? 0;
    const a = first[i] ?? -1;
    const b = second[i] ?? -1;
    if (a >= 0) presence[a] = (presence[a] ?? 0) + weight;
    if (b >= 0) presence[b] = (presence[b] ?? 0) + weight;
  }
  return presence;
}

/**
 * Places of the faults by falling probability per minute; `presence` is used up. Sorted by
 * insertion: the lists are short, nearly in order, and sorted hundreds of times a choice.
 */
function orderOf({ work }: Prices, presence: Float64Array): Int32Array {
  const efficiency = presence;
  const order = new Int32Array(presence.length);
  for (let f = 0; f < order.length; f++) {
    const own = (presence[f] ?? 0) / (work.look[f] ?? 1);
    efficiency[f] = own;
    let place = f;
    while (place > 0 && (efficiency[order[place - 1] ?? 0] ?? 0) < own) {
      order[place] = order[place - 1] ?? 0;
      place -= 1;
    }
    order[place] = f;
  }
  return order;
}

/** Parts worth carrying, by index; those on board where that is settled. */
function kitFor(prices: Prices, presence: Float64Array, weights: Float64Array): Uint8Array {
  const { work, carried, secondTripMinutes } = prices;
  const kit = new Uint8Array(work.parts.length);
  if (carried !== null) return kit.map((_, part) => Number(carried.has(work.parts[part] ?? "")));
  const need = new Float64Array(kit.length);
  for (let f = 0; f < presence.length; f++) {
    for (let k = work.partsFrom[f] ?? 0; k < (work.partsFrom[f + 1] ?? 0); k++) {
      const part = work.partsOf[k] ?? 0;
      need[part] = (need[part] ?? 0) + (presence[f] ?? 0);
    }
  }
  let mass = 0;
  for (let i = 0; i < weights.length; i++) mass += weights[i] ?? 0;
  for (let part = 0; part < kit.length; part++) {
    const pays = (need[part] ?? 0) * secondTripMinutes > (work.carryMinutes[part] ?? 0) * mass;
    kit[part] = Number(pays);
  }
  return kit;
}

function visitWith(prices: Prices, order: Int32Array, kit: Uint8Array): Policy {
  const { list, work, perMinute } = prices;
  const found = foundAfter(work, order);
  const missing = missingParts(work, kit);
  const start = prices.tripMinutes + (prices.carried === null ? carryOf(work, kit) : 0);
  const costs = new Float64Array(list.weights.length);
  for (let i = 0; i < costs.length - 1; i++) {
    const a = work.first[i] ?? -1;
    const b = work.second[i] ?? -1;
    if (a < 0) {
      costs[i] = start + SEE_IT_RUNS_MINUTES * perMinute;
      continue;
    }
    const looking = b < 0 ? (found[a] ?? 0) : Math.max(found[a] ?? 0, found[b] ?? 0);
    const working = looking + (work.fix[a] ?? 0) + (work.fix[b] ?? 0);
    const again = missing[a] === 1 || missing[b] === 1;
    costs[i] = start + working * perMinute + (again ? prices.secondTripMinutes : 0);
  }
  const looked = found[order[order.length - 1] ?? -1] ?? 0;
  costs[costs.length - 1] = start + looked * perMinute + prices.helpMinutes;
  return { way: "visit", kit, firstFault: work.faults[order[0] ?? -1] ?? -1, costs };
}

/** Minutes of looking until each fault is found. */
function foundAfter(work: Workload, order: Int32Array): Float64Array {
  const found = new Float64Array(work.faults.length);
  let looked = 0;
  for (let place = 0; place < order.length; place++) {
    const fault = order[place] ?? 0;
    looked += work.look[fault] ?? 0;
    found[fault] = looked;
  }
  return found;
}

/** 1 for each fault whose repair needs something that is not in the kit. */
function missingParts(work: Workload, kit: Uint8Array): Uint8Array {
  const missing = new Uint8Array(work.faults.length);
  for (let f = 0; f < missing.length; f++) {
    for (let k = work.partsFrom[f] ?? 0; k < (work.partsFrom[f + 1] ?? 0); k++) {
      if (kit[work.partsOf[k] ?? 0] === 0) missing[f] = 1;
    }
  }
  return missing;
}

function carryOf({ carryMinutes }: Workload, kit: Uint8Array): number {
  let sum = 0;
  for (let part = 0; part < kit.length; part++) {
    if (kit[part] === 1) sum += carryMinutes[part] ?? 0;
  }
  return sum;
}
