import type { Ambiguous, ReaderModel, StateReading } from "../domain/reading.ts";
import { ambiguous, type Claim, type Claims } from "./claims.ts";

export interface Settled {
  readonly understood: readonly StateReading[];
  readonly ambiguous: readonly Ambiguous[];
  readonly denied: readonly StateReading[];
  readonly earlier: readonly StateReading[];
}

const rank = { now: 2, unsaid: 1, before: 0 } as const;

export interface SettleRules {
  readonly model: ReaderModel;
  /** Tokens after which comes what happens now: "then", "now". */
  readonly sequence: ReadonlySet<number>;
}

/**
 * Weighs claims on one observation against one another: what is now stands over what was, the
 * last of a sequence over the first; what stays in conflict is ambiguous. A word of several
 * meanings is not worth asking about where one of the things it may tell was said plainly.
 *
 */
export function settle(claims: Claims, rules: SettleRules): Settled {
  const byObservation = new Map<string, Claim[]>();
  for (const claim of claims.stated) {
    const id = claim.reading.observation;
    if (!rules.model.observations.has(id)) continue;
    const there = byObservation.get(id);
    if (there === undefined) byObservation.set(id, [claim]);
    else there.push(claim);
  }
  const understood: StateReading[] = [];
  const earlier: StateReading[] = [];
  const open: Ambiguous[] = [];
  for (const [id, group] of byObservation) {
    const isList = rules.model.observations.get(id)?.kind === "list";
    const weighed = isList ? { now: group, before: [] } : weigh(group, rules.sequence);
    earlier.push(...weighed.before.map((claim) => claim.reading));
    const merged = mergeSame(weighed.now);
    if (isList || merged.length === 1) understood.push(...merged);
    else if (merged.length > 1) open.push(conflict(merged));
  }
  const worthAsking = claims.open.filter((one) =>
    one.options.every(
      ({ observation }) =>
        rules.model.observations.has(observation) &&
        !understood.some((reading) => reading.observation === observation),
    ),
  );
  return {
    understood,
    ambiguous: [...open, ...worthAsking.map((one) => ambiguous(one, one.options))],
    denied: claims.denied.filter((one) => rules.model.observations.has(one.observation)),
    earlier,
  };
}

interface Weighed {
  readonly now: readonly Claim[];
  readonly before: readonly Claim[];
}

function weigh(group: readonly Claim[], sequence: ReadonlySet<number>): Weighed {
  const strong = group.some((claim) => !claim.givesWay && claim.when !== "before")
    ? group.filter((claim) => !claim.givesWay)
    : group;
  const rankOf = (claim: Claim): number => (claim.past ? 1 : rank[claim.when]);
  const top = Math.max(...strong.map(rankOf));
  if (top === rank.before) return { now: [], before: group };
  const standing = strong.filter((claim) => rankOf(claim) === top);
  const order = [...standing].sort((a, b) => a.at - b.at);
  const last = order.at(-1);
  const first = order[0];
  const follows =
    first !== undefined && last !== undefined && sequenceBetween(first, last, sequence);
  const now = follows ? standing.filter((claim) => sameState(claim, last)) : standing;
  return { now, before: group.filter((claim) => !now.some((one) => sameState(one, claim))) };
}

function sameState(one: Claim, other: Claim): boolean {
  return one.reading.state === other.reading.state;
}

function sequenceBetween(first: Claim, last: Claim, sequence: ReadonlySet<number>): boolean {
  for (let at = first.at; at <= last.at; at += 1) if (sequence.has(at)) return true;
  return false;
}

/** One reading for each state: the surest. */
function mergeSame(claims: readonly Claim[]): readonly StateReading[] {
  const best = new Map<string, StateReading>();
  for (const { reading } of claims) {
    const key = `${reading.observation}=${reading.state}`;
    const there = best.get(key);
    const surer =
      there === undefined ||
      reading.probability * (1 - reading.hedge) > there.probability * (1 - there.hedge);
    if (surer) best.set(key, reading);
  }
  return [...best.values()];
}

function conflict(readings: readonly StateReading[]): Ambiguous {
  const from = Math.min(...readings.map((reading) => reading.span[0]));
  const to = Math.max(...readings.map((reading) => reading.span[1]));
  const total = readings.reduce((sum, reading) => sum + reading.probability, 0);
  return {
    span: [from, to],
    options: readings.map(({ observation, state, probability }) => ({
      observation,
      state,
      probability: probability / total,
    })),
  };
}
