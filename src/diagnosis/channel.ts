import type { Evidence } from "../domain/evidence.ts";
import { UnknownId } from "../domain/result.ts";
import type { Reporter } from "../domain/vocabulary.ts";
import { type Arranged, arrange } from "./arrange.ts";
import { doneAct } from "./done-act.ts";
import { narrow } from "./evidence-terms.ts";
import {
  type CompiledObservation,
  type EvidenceGroup,
  type Model,
  NOTHING_SEEN,
  type Seen,
  type SharedRows,
} from "./model.ts";
import { somethingElsePredicts } from "./something-else.ts";

/** What a person might answer, and how likely that is under each hypothesis. */
export interface Channel {
  readonly observation: string;
  /** State ids; for a list each member named alone, and "" for none named. */
  readonly outcomes: readonly string[];
  /** P(outcome | hypothesis), known hypotheses first, something else last; rows sum to 1. */
  chance(h: number, outcome: number): number;
  /** P(outcome) over several hypotheses together, weighted by a belief. */
  lumpChance(lumped: Int32Array, probability: Float64Array, outcome: number): number;
}

/** The reports of each group that still hold now. */
export function seenNow(model: Model, evidence: Evidence): ReadonlyMap<number, Seen> {
  const volts = model.volts.reduce((a, b) => (b.share > a.share ? b : a)).volts;
  return latestSeen(model, arrange(model, evidence, volts));
}

function latestSeen(model: Model, arranged: Arranged): ReadonlyMap<number, Seen> {
  const now = new Map<number, Seen>();
  for (const layer of arranged.layers) {
    for (const [group, seen] of layer.groups) now.set(group, seen);
  }
  for (const done of arranged.acts) {
    for (const id of doneAct(model.knowledge, done).makesStale) {
      const group = model.observations.get(id)?.group ?? -1;
      const after = arranged.layers.some(
        (layer) => layer.epoch >= done.epoch && layer.groups.has(group),
      );
      if (!after) now.delete(group);
    }
  }
  return now;
}

/**
 * P(answer | hypothesis) for one more observation, given what was seen so far of its group and of
 * the observations it depends on.
 * @throws UnknownId
 */
export function channelOf(
  model: Model,
  seen: ReadonlyMap<number, Seen>,
  question: { readonly observation: string; readonly reporter: Reporter },
): Channel {
  const observation = model.observations.get(question.observation);
  const group = model.groups[observation?.group ?? -1];
  if (observation === undefined || group === undefined) {
    throw new UnknownId("observation", question.observation);
  }
  const { id } = observation.source;
  const told = answers(
    observation,
    group.predict(seen.get(observation.group) ?? NOTHING_SEEN, id),
    {
      reporter: question.reporter,
    },
  );
  const outcomes = observation.source.states.map((state) => state.id);
  if (observation.isList) outcomes.push("");
  const width = outcomes.length;
  const mean = averageRow(model, told);
  const other = mean.map((predicted) => somethingElsePredicts(predicted, 1 / width));
  const gate = gateOf(model, seen, observation);
  const last = model.hypotheses.count - 1;
  const at = (h: number, outcome: number): number =>
    told.rows[(told.rowOf[h] ?? 0) * width + outcome] ?? 0;
  const chance = (h: number, outcome: number): number => {
    if (h === last) return other[outcome] ?? 0;
    if (gate === null) return at(h, outcome);
    const open = gate[h] ?? 1;
    return open * at(h, outcome) + (1 - open) * (mean[outcome] ?? 0);
  };
  return {
    observation: id,
    outcomes,
    chance,
    lumpChance: (lumped, probability, outcome) => {
      let sum = 0;
      let mass = 0;
      for (const h of lumped) {
        const weight = probability[h] ?? 0;
        sum += weight * chance(h, outcome);
        mass += weight;
      }
      return mass > 0 ? sum / mass : 1 / width;
    },
  };
}

/** What a technician might answer next, each observation reckoned once. */
export type Prospects = (observation: string) => Channel;

/** @throws UnknownId, when it is asked about what the knowledge does not have */
export function technicianProspects(model: Model, evidence: Evidence): Prospects {
  const seen = seenNow(model, evidence);
  const known = new Map<string, Channel>();
  return (observation) => {
    const channel =
      known.get(observation) ?? channelOf(model, seen, { observation, reporter: "technician" });
    known.set(observation, channel);
    return channel;
  };
}

function gateOf(
  model: Model,
  seen: ReadonlyMap<number, Seen>,
  observation: CompiledObservation,
): Float64Array | null {
  if (observation.source.onlyIf.length === 0) return null;
  const gate = new Float64Array(model.hypotheses.count - 1).fill(1);
  for (const condition of observation.source.onlyIf) {
    const group = model.observations.get(condition.observation)?.group ?? -1;
    narrow(gate, model, { condition, seen: seen.get(group) ?? NOTHING_SEEN });
  }
  return gate;
}

/** True states turned into what this reporter would say. */
function answers(
  observation: CompiledObservation,
  truth: ReturnType<EvidenceGroup["predict"]>,
  by: { readonly reporter: Reporter },
): SharedRows {
  const confusion = observation.source.confusion[by.reporter];
  if (observation.isList) return namedAlone(truth, confusion);
  const { width, rowOf } = truth;
  const flat = Float64Array.from(confusion.flat());
  const rows = new Float64Array(truth.rows.length);
  for (let base = 0; base < rows.length; base += width) {
    for (let t = 0; t < width; t++) {
      const chance = truth.rows[base + t] ?? 0;
      if (chance === 0) continue;
      for (let s = 0; s < width; s++) {
        rows[base + s] = (rows[base + s] ?? 0) + chance * (flat[t * width + s] ?? 0);
      }
    }
  }
  return { width, rowOf, rows };
}

/** A list's answer in short: nothing named, or one of the members, in proportion to their odds. */
function namedAlone(truth: SharedRows, confusion: readonly (readonly number[])[]): SharedRows {
  const members = truth.width;
  const yes = confusion[0]?.[0] ?? 1;
  const no = confusion[1]?.[0] ?? 0;
  const count = truth.rows.length / members;
  const width = members + 1;
  const rows = new Float64Array(count * width);
  for (let r = 0; r < count; r++) {
    let none = 1;
    let total = 0;
    for (let m = 0; m < members; m++) {
      const present = truth.rows[r * members + m] ?? 0;
      const named = present * yes + (1 - present) * no;
      rows[r * width + m] = named;
      total += named;
      none *= 1 - named;
    }
    for (let m = 0; m < members; m++) {
      const index = r * width + m;
      rows[index] = total > 0 ? ((rows[index] ?? 0) / total) * (1 - none) : 0;
    }
    rows[r * width + members] = none;
  }
  return { width, rowOf: truth.rowOf, rows };
}

function averageRow(model: Model, shared: SharedRows): Float64Array {
  const { prior } = model.hypotheses;
  const { width, rowOf, rows } = shared;
  const mean = new Float64Array(width);
  let mass = 0;
  for (let h = 0; h < rowOf.length; h++) {
    const weight = prior[h] ?? 0;
    const base = (rowOf[h] ?? 0) * width;
    mass += weight;
    for (let s = 0; s < width; s++) mean[s] = (mean[s] ?? 0) + weight * (rows[base + s] ?? 0);
  }
  return mean.map((value) => value / mass);
}
