import type { Fault, Knowledge, Observation, Row } from "../domain/knowledge.ts";
import { ON_START } from "../domain/vocabulary.ts";
import { onStartRow } from "./start-rows.ts";

/** How well one check or act tells two faults apart. */
export interface Separation {
  readonly fault: string;
  readonly neighbour: string;
  /** The check or act that separates the two best; empty where none touches either. */
  readonly check: string;
  /** Expected weight of evidence of its answer, the poorer of the two directions, in decibans. */
  readonly decibans: number;
}

const DECIBANS_PER_NAT = 10 / Math.LN10;

/** What the answers to a check, or the outcome of an act, look like under a fault. */
interface View {
  readonly check: string;
  /** P(report | fault): one row, or for lists one row [named, not named] a member. */
  readonly rows: (fault: Fault) => readonly Row[];
}

/** P(whoever tries a machine after an act says rightly whether it now starts). */
const OUTCOME_TOLD_RIGHT = 0.95;

/** Tells how well the best check or act separates two faults, by their ids. */
export type Separator = (one: string, other: string) => Separation;

/** Makes the separator of a knowledge; each fault's rows are blurred once. */
export function createSeparator(knowledge: Knowledge): Separator {
  const views = viewsOf(knowledge);
  const seen = new Map(
    [...knowledge.faults].map(([id, fault]) => [id, views.map((view) => view.rows(fault))]),
  );
  return (one, other) => bestCheck(one, other, { views, seen });
}

/**
 * For each fault its nearest neighbour on the same machine, with the check or act that separates
 * the two best. The measure is the smaller of the two Kullback-Leibler divergences of what is
 * reported.
 */
export function nearestNeighbours(knowledge: Knowledge): Separation[] {
  const faults = [...knowledge.faults.values()];
  const separate = createSeparator(knowledge);
  return faults.flatMap((fault) => {
    const found = faults
      .filter((other) => other !== fault && meet(fault, other, knowledge))
      .map((other) => separate(fault.id, other.id));
    const nearest = found.sort((a, b) => a.decibans - b.decibans)[0];
    return nearest === undefined ? [] : [nearest];
  });
}

/** How far apart the faults are as a whole. */
export interface Apartness {
  /** Median distance of a fault from its nearest neighbour, in decibans. */
  readonly median: number;
  /** The closest pairs, each once, the closest first. */
  readonly closest: readonly Separation[];
}

/**
 * Sums up the distances to the nearest neighbours.
 * @param rows what `nearestNeighbours` found; at least one
 * @param most how many of the closest pairs to name
 */
export function sumUpApartness(rows: readonly Separation[], most: number): Apartness {
  const sorted = [...rows].sort((a, b) => a.decibans - b.decibans);
  const middle = sorted.slice((sorted.length - 1) >> 1, (sorted.length >> 1) + 1);
  const pairs = new Map(
    sorted.map((row) => [[row.fault, row.neighbour].sort().join(" / "), row] as const).reverse(),
  );
  return {
    median: middle.reduce((sum, row) => sum + row.decibans, 0) / middle.length,
    closest: [...pairs.values()].sort((a, b) => a.decibans - b.decibans).slice(0, most),
  };
}

/** True where some machine kind can have both faults. */
export function meet(one: Fault, other: Fault, knowledge: Knowledge): boolean {
  const fuels = one.needs.fuels?.filter((fuel) => other.needs.fuels?.includes(fuel) ?? true);
  if (fuels?.length === 0) return false;
  return [...knowledge.machines.values()].some((machine) => {
    const has = ({ system, needs }: Fault) =>
      machine.systems.includes(system) &&
      (needs.kinds?.includes(machine.id) ?? true) &&
      (needs.features ?? []).every((feature) => (machine.features.get(feature) ?? 0) > 0) &&
      (needs.fuels ?? [])
        .concat(needs.fuels ? [] : ["petrol", "diesel", "gas"])
        .some((fuel) => (machine.fuels[fuel] ?? 0) > 0);
    return has(one) && has(other);
  });
}

function viewsOf(knowledge: Knowledge): View[] {
  const checks = [...knowledge.checks.values()].flatMap((check): View[] => {
    const observation = knowledge.observations.get(check.yields);
    if (observation === undefined) return [];
    const who = check.performers.includes("technician") ? "technician" : "operator";
    const confusion = observation.confusion[who];
    return [{ check: check.id, rows: (fault) => reported(fault, observation, confusion) }];
  });
  const acts = [...knowledge.acts.values()].map(
    (act): View => ({
      check: act.id,
      rows: ({ id }) => {
        const gone = 1 - (1 - (act.cures.get(id) ?? 0)) * (1 - (act.masks.get(id) ?? 0));
        const told = gone * OUTCOME_TOLD_RIGHT + (1 - gone) * (1 - OUTCOME_TOLD_RIGHT);
        return [[told, 1 - told]];
      },
    }),
  );
  return [...checks, ...acts];
}

function reported(
  fault: Fault,
  observation: Observation,
  confusion: readonly Row[],
): readonly Row[] {
  const states = observation.states.map((state) => state.id);
  const row =
    observation.id === ON_START
      ? onStartRow(states, fault)
      : (fault.rows.get(observation.id) ?? observation.usual);
  if (observation.kind !== "list") return [blurred(row, confusion)];
  return row.map((present) => blurred([present, 1 - present], confusion));
}

function blurred(row: Row, confusion: readonly Row[]): Row {
  const width = confusion[0]?.length ?? 0;
  return Array.from({ length: width }, (_, column) =>
    row.reduce((sum, chance, state) => sum + chance * (confusion[state]?.[column] ?? 0), 0),
  );
}

function bestCheck(
  one: string,
  other: string,
  all: { views: readonly View[]; seen: ReadonlyMap<string, readonly (readonly Row[])[]> },
): Separation {
  let best: Separation = { fault: one, neighbour: other, check: "", decibans: 0 };
  all.views.forEach((view, index) => {
    const mine = all.seen.get(one)?.[index] ?? [];
    const theirs = all.seen.get(other)?.[index] ?? [];
    const decibans =
      DECIBANS_PER_NAT * Math.min(divergence(mine, theirs), divergence(theirs, mine));
    if (decibans > best.decibans) best = { ...best, check: view.check, decibans };
  });
  return best;
}

/** Σ p·ln(p/q) over independent rows, in nats. */
function divergence(left: readonly Row[], right: readonly Row[]): number {
  return left.reduce(
    (total, row, index) =>
      total +
      row.reduce((sum, p, state) => {
        const q = right[index]?.[state] ?? 0;
        return p > 0 && q > 0 ? sum + p * Math.log(p / q) : sum;
      }, 0),
    0,
  );
}
