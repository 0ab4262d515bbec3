import { ON_START } from "../domain/vocabulary.ts";
import { passThrough } from "./joint-act.ts";
import {
  halves,
  insideOf,
  type JointContext,
  type JointParts,
  jointContext,
  UNLIKE_SIMULATED,
  weighRows,
} from "./joint-context.ts";
import { TURNS } from "./joint-evidence.ts";
import { contradictionLift, numberScale } from "./joint-numbers.ts";
import { startLikelihood } from "./joint-start.ts";
import type { EvidenceGroup, Measurements, Seen, SharedLikelihood, SharedRows } from "./model.ts";

/**
 * Observations whose joint likelihood comes from simulated machines. Each hypothesis is looked up
 * by those of its faults that the circuit simulates; faults beyond the circuit that let the engine
 * turn leave the circuit as it is and only decide what combustion does. Any other fault, and pairs
 * that were not simulated, are weighed by their rows.
 */
export function createJointGroup(parts: JointParts): EvidenceGroup {
  const { joint, rows } = parts;
  const context = jointContext(parts);
  return {
    id: `circuit ${[...joint.observations].join(" ")}`,
    observations: rows.flatMap((group) => group.observations),
    weigh: (seen, measured) => weighJoint(context, seen, measured),
    predict: (seen, observation) => predictJoint(context, seen, observation),
    passThrough: (passage) => passThrough(context, passage),
  };
}

function weighJoint(context: JointContext, seen: Seen, measured?: Measurements): SharedLikelihood {
  const { entries, joint, rows } = context;
  const byRows = weighRows(rows, seen, entries.length);
  const inside = insideOf(context, seen);
  const outside = new Map([...seen].filter(([id]) => !joint.observations.has(id)));
  if (inside.size === 0) return { rowOf: identity(entries.length), like: byRows };
  const rest = weighRows(rows, outside, entries.length);
  const simulated = simulatedLike(context, inside, measured);
  const numbers = { seen: inside, measured };
  const scale = numberScale(context, numbers);
  const like = byRows.map((value, h) => {
    if ((entries[h] ?? -1) < 0) return value;
    const circuit = (simulated[h] ?? 0) * (rest[h] ?? 1) * scale;
    return (1 - UNLIKE_SIMULATED) * circuit + UNLIKE_SIMULATED * value;
  });
  const elseLift = contradictionLift(context, numbers);
  return { rowOf: identity(entries.length), like, elseLift };
}

/** P(evidence | hypothesis, the machine is as simulated); 0 for hypotheses beyond the circuit. */
function simulatedLike(context: JointContext, inside: Seen, measured?: Measurements): Float64Array {
  const { entries, likelihood, firing } = context;
  const { stays, turns } = halves(context, inside, measured);
  const stay = stays === null ? null : likelihood(stays);
  const turn = likelihood(turns);
  const fires = startLikelihood(firing, inside);
  return Float64Array.from(entries, (entry, h) =>
    entry < 0 ? 0 : (stay?.[entry] ?? 0) + (turn[entry] ?? 0) * (fires[h] ?? 1),
  );
}

function identity(count: number): Int32Array {
  return Int32Array.from({ length: count }, (_, h) => h);
}

function predictJoint(context: JointContext, seen: Seen, observation: string): SharedRows {
  const { rows, joint, entries } = context;
  const own = rows.find((group) => group.observations.includes(observation));
  if (own === undefined) throw new RangeError(`the group does not hold ${observation}`);
  const byRows = own.predict(seen, observation);
  if (!joint.observations.has(observation)) return byRows;
  const inside = insideOf(context, seen);
  const simulated =
    observation === ON_START
      ? predictStart(context, inside)
      : predictOther(context, inside, observation);
  const { width } = byRows;
  const table = new Float64Array(entries.length * width);
  const circuitLike = simulatedLike(context, inside);
  const rowsLike = weighRows(rows, inside, entries.length);
  for (let h = 0; h < entries.length; h++) {
    const from = (byRows.rowOf[h] ?? 0) * width;
    const usual = byRows.rows.subarray(from, from + width);
    const row = simulated(h);
    const circuit = (1 - UNLIKE_SIMULATED) * (circuitLike[h] ?? 0);
    const other = UNLIKE_SIMULATED * (rowsLike[h] ?? 0);
    const share = row === null || circuit <= 0 ? 0 : circuit / (circuit + other);
    for (let s = 0; s < width; s++) {
      table[h * width + s] = share * (row?.[s] ?? 0) + (1 - share) * (usual[s] ?? 0);
    }
  }
  return { width, rowOf: identity(entries.length), rows: table };
}

type RowOf = (h: number) => Float64Array | null;

/** P(state of `on-start`): the circuit's cranking states, the turning one split by combustion. */
function predictStart(context: JointContext, inside: Seen): RowOf {
  const { joint, translator, entries, firing, knowledge } = context;
  const others = new Map([...inside].filter(([id]) => id !== ON_START));
  const cranked = joint.predictive(translator.translate(others, null).items, {
    observation: ON_START,
  });
  const names = joint.statesOf(ON_START);
  const states = knowledge.observations.get(ON_START)?.states ?? [];
  const reported = inside.get(ON_START);
  return (h) => {
    const entry = entries[h] ?? -1;
    if (entry < 0) return null;
    const at = (name: string): number => cranked[entry * names.length + names.indexOf(name)] ?? 0;
    const row = Float64Array.from(states, (state, s) => {
      const fires = firing.states.indexOf(state.id);
      const chance =
        fires >= 0
          ? at(TURNS) * (firing.rows[h * firing.states.length + fires] ?? 0)
          : names.includes(state.id)
            ? at(state.id)
            : 0;
      return chance * (reported?.[s] ?? 1);
    });
    return scaled(row);
  };
}

function predictOther(context: JointContext, inside: Seen, observation: string): RowOf {
  const { joint, translator, entries, likelihood, firing, knowledge } = context;
  const { stays, turns } = halves(context, inside);
  const states = joint.statesOf(observation);
  const question =
    states.length > 0 ? { observation } : { observation, edges: translator.edges(observation) };
  const own = (knowledge.observations.get(observation)?.states ?? []).map(({ id }) => id);
  const turning = joint.predictive(turns.items, question);
  const staying = stays === null ? null : joint.predictive(stays.items, question);
  const width = turning.length / joint.hypotheses.length;
  const fires = startLikelihood(firing, inside);
  const turnLike = likelihood(turns);
  const stayLike = stays === null ? null : likelihood(stays);
  const places = own.map((id, s) => (states.length > 0 ? states.indexOf(id) : s));
  return (h) => {
    const entry = entries[h] ?? -1;
    if (entry < 0) return null;
    const turn = (turnLike[entry] ?? 0) * (fires[h] ?? 1);
    const stay = stayLike?.[entry] ?? 0;
    const row = new Float64Array(places.length);
    for (let s = 0; s < row.length; s++) {
      const at = places[s] ?? -1;
      if (at < 0) continue;
      const from = entry * width + at;
      row[s] = turn * (turning[from] ?? 0) + stay * (staying?.[from] ?? 0);
    }
    return scaled(row);
  };
}

/** Null where nothing is left to scale. */
function scaled(row: Float64Array): Float64Array | null {
  let total = 0;
  for (let s = 0; s < row.length; s++) total += row[s] ?? 0;
  return total > 0 ? row.map((value) => value / total) : null;
}
