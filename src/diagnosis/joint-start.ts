import type { Knowledge, Row } from "../domain/knowledge.ts";
import { crankingStates, firingStates, ON_START, stages } from "../domain/vocabulary.ts";
import type { Hypotheses, Seen } from "./model.ts";
import { bothInChain, startRow } from "./start-rows.ts";

/** P(firing state | engine turns) for every known hypothesis. */
export interface Firing {
  readonly states: readonly string[];
  /** Hypothesis-major. */
  readonly rows: Float64Array;
  /** Where the firing states stand among those of `on-start`. */
  readonly places: readonly number[];
}

/** What combustion does under each hypothesis once the engine turns. */
export function firingOf(knowledge: Knowledge, hypotheses: Hypotheses): Firing {
  const onStart = knowledge.observations.get(ON_START)?.states ?? [];
  const width = firingStates.length;
  const rows = new Float64Array((hypotheses.count - 1) * width);
  for (let h = 0; h < hypotheses.count - 1; h++) {
    rows.set(firingRow(knowledge, hypotheses, h).slice(crankingStates.length), h * width);
  }
  return {
    states: firingStates,
    rows,
    places: firingStates.map((state) => onStart.findIndex(({ id }) => id === state)),
  };
}

/** Nothing wrong: the engine fires. */
const RUNS: Row = [
  ...crankingStates.map((state) => Number(state === "turns")),
  ...firingStates.map((state) => Number(state === "starts")),
];

function firingRow(knowledge: Knowledge, { faults, first, second }: Hypotheses, h: number): Row {
  const [a, b] = [first[h] ?? -1, second[h] ?? -1].map((f) =>
    knowledge.faults.get(faults[f] ?? ""),
  );
  if (a === undefined) return RUNS;
  if (b === undefined) return startRow(a);
  const earlier = stages.indexOf(a.blocks) - stages.indexOf(b.blocks);
  const order = earlier === 0 ? "same-stage" : earlier < 0 ? "first-earlier" : "second-earlier";
  return bothInChain(startRow(a), startRow(b), order);
}

/** P(report of `on-start` | engine turns, hypothesis); 1 where nothing was said. */
export function startLikelihood(firing: Firing, seen: Seen): Float64Array {
  const { rows, places } = firing;
  const width = places.length;
  const reported = seen.get(ON_START);
  const like = new Float64Array(rows.length / width).fill(1);
  if (reported === undefined) return like;
  for (let h = 0; h < like.length; h++) {
    let sum = 0;
    for (const [k, place] of places.entries()) {
      sum += (rows[h * width + k] ?? 0) * (reported[place] ?? 0);
    }
    like[h] = sum;
  }
  return like;
}
