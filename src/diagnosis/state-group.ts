import { UnknownId } from "../domain/result.ts";
import type { EvidenceGroup, Seen, SharedLikelihood, SharedRows } from "./model.ts";

/**
 * An observation as seen from the state it depends on: P(own state | state above). Views of the
 * observation itself hang below it.
 */
export interface Member {
  readonly id: string;
  readonly states: number;
  /** (states above) × (own states), row by row; null: it is that state itself. */
  readonly emission: Float64Array | null;
  readonly views: readonly Member[];
}

/**
 * Observations that hang on one state: given that state they are independent, and only the state
 * depends on the hypothesis. A single observation is the simplest case.
 */
export function createStateGroup(
  id: string,
  rows: SharedRows,
  members: readonly Member[],
): EvidenceGroup {
  const widths = new Map(flatten(members).map((member) => [member.id, member.states]));
  return {
    id,
    observations: [...widths.keys()],
    weigh: (seen) => weighRows(rows, stateLikelihood(members, rows.width, seen)),
    predict(seen, observation) {
      const states = widths.get(observation);
      if (states === undefined) throw new UnknownId("observation", observation);
      const asked = (s: number): Seen => pinned(seen, observation, { states, pin: s });
      const likelihoods = Array.from({ length: states }, (_, s) =>
        stateLikelihood(members, rows.width, asked(s)),
      );
      return predictRows(rows, likelihoods);
    },
  };
}

/** P(reports | row) for each row: the row times the likelihood of its states. */
function weighRows(rows: SharedRows, likelihood: Float64Array): SharedLikelihood {
  const { width } = rows;
  const like = new Float64Array(rows.rows.length / width);
  for (let r = 0; r < like.length; r++) {
    let sum = 0;
    for (let s = 0; s < width; s++) sum += (rows.rows[r * width + s] ?? 0) * (likelihood[s] ?? 0);
    like[r] = sum;
  }
  return { rowOf: rows.rowOf, like };
}

function predictRows(rows: SharedRows, likelihoods: readonly Float64Array[]): SharedRows {
  const width = likelihoods.length;
  const count = rows.rows.length / rows.width;
  const predicted = new Float64Array(count * width);
  const columns = likelihoods.map((likelihood) => weighRows(rows, likelihood).like);
  for (let r = 0; r < count; r++) {
    let total = 0;
    for (const column of columns) total += column[r] ?? 0;
    for (const [s, column] of columns.entries()) {
      // A row that cannot explain what was seen predicts nothing in particular.
      predicted[r * width + s] = total > 0 ? (column[r] ?? 0) / total : 1 / width;
    }
  }
  return { width, rowOf: rows.rowOf, rows: predicted };
}

function stateLikelihood(members: readonly Member[], width: number, seen: Seen): Float64Array {
  const product = new Float64Array(width).fill(1);
  for (const member of members) multiply(product, upward(member, seen));
  return product;
}

/** P(everything seen of the member and its views | state above); null: nothing was seen. */
function upward(member: Member, seen: Seen): Float64Array | null {
  const own = ownLikelihood(member, seen);
  const { emission, states } = member;
  if (own === null || emission === null) return own;
  const above = new Float64Array(emission.length / states);
  for (let z = 0; z < above.length; z++) {
    let sum = 0;
    for (let s = 0; s < states; s++) sum += (emission[z * states + s] ?? 0) * (own[s] ?? 0);
    above[z] = sum;
  }
  return above;
}

function ownLikelihood(member: Member, seen: Seen): Float64Array | null {
  const reported = seen.get(member.id);
  let own = reported === undefined ? null : Float64Array.from(reported);
  for (const view of member.views) {
    const message = upward(view, seen);
    if (message === null) continue;
    own ??= new Float64Array(member.states).fill(1);
    multiply(own, message);
  }
  return own;
}

function multiply(into: Float64Array, by: Float64Array | null): void {
  if (by === null) return;
  for (let s = 0; s < into.length; s++) into[s] = (into[s] ?? 0) * (by[s] ?? 0);
}

/** What was seen, with the observation's true state fixed on top of its reports. */
function pinned(
  seen: Seen,
  observation: string,
  at: { readonly states: number; readonly pin: number },
): Seen {
  const reported = seen.get(observation);
  const only = new Float64Array(at.states);
  only[at.pin] = reported === undefined ? 1 : (reported[at.pin] ?? 0);
  return new Map(seen).set(observation, only);
}

function flatten(members: readonly Member[]): readonly Member[] {
  return members.flatMap((member) => [member, ...flatten(member.views)]);
}
