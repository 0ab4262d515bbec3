import type { Ambiguous, ReaderModel, StateReading } from "../domain/reading.ts";
import { ambiguous, type Claim, type Claims, type Open } from "./claims.ts";
import type { Clauses } from "./clauses.ts";

export interface Settled {
  readonly understood: readonly StateReading[];
  readonly ambiguous: readonly Ambiguous[];
  readonly denied: readonly StateReading[];
  readonly earlier: readonly StateReading[];
}

/** An ambiguous word whose other meanings are excluded by something said plainly. */
const SURE_BY_EXCLUSION = 0.85;

const rank = { now: 2, unsaid: 1, before: 0 } as const;

/**
 * Weighs claims on one observation against one another: what is now stands over what was, the
 * last of a sequence over the first; what stays in conflict is ambiguous. Then narrows ambiguous
 * words by what was said plainly.
 *
 * @param sequence stems after which comes what happens now
 */
export function settle(
  text: Clauses,
  claims: Claims,
  rules: { readonly model: ReaderModel; readonly sequence: ReadonlySet<string> },
): Settled {
  const byObservation = new Map<string, Claim[]>();
  for (const claim of claims.stated) {
    const id = claim.reading.observation;
    if (!rules.model.observations.has(id)) continue;
    byObservation.set(id, [...(byObservation.get(id) ?? []), claim]);
  }
  const understood: StateReading[] = [];
  const earlier: StateReading[] = [];
  const open: Ambiguous[] = [];
  for (const [id, group] of byObservation) {
    const isList = rules.model.observations.get(id)?.kind === "list";
    const weighed = isList ? { now: group, before: [] } : weigh(text, group, rules.sequence);
    earlier.push(...weighed.before.map((claim) => claim.reading));
    const merged = mergeSame(weighed.now);
    if (isList || merged.length === 1) understood.push(...merged);
    else if (merged.length > 1) open.push(conflict(merged));
  }
  const known = claims.open.filter((one) =>
    one.options.every((option) => rules.model.observations.has(option.observation)),
  );
  const narrowed = known.map((one) => narrow(one, understood, claims.denied));
  return {
    understood: mergeSame([
      ...understood.map(bare),
      ...narrowed.flatMap((one) => (one.kind === "plain" ? [bare(one.reading)] : [])),
    ]),
    ambiguous: [...open, ...narrowed.flatMap((one) => (one.kind === "open" ? [one.open] : []))],
    denied: claims.denied.filter((one) => rules.model.observations.has(one.observation)),
    earlier,
  };
}

function bare(reading: StateReading): Claim {
  return { reading, when: "unsaid", at: 0, past: false, givesWay: false };
}

interface Weighed {
  readonly now: readonly Claim[];
  readonly before: readonly Claim[];
}

function weigh(text: Clauses, group: readonly Claim[], sequence: ReadonlySet<string>): Weighed {
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
    first !== undefined && last !== undefined && sequenceBetween(text, first, last, sequence);
  const now = follows ? standing.filter((claim) => sameState(claim, last)) : standing;
  return { now, before: group.filter((claim) => !now.some((one) => sameState(one, claim))) };
}

function sameState(one: Claim, other: Claim): boolean {
  return one.reading.state === other.reading.state;
}

function sequenceBetween(
  text: Clauses,
  first: Claim,
  last: Claim,
  sequence: ReadonlySet<string>,
): boolean {
  for (let at = first.at; at <= last.at; at += 1) {
    if (sequence.has(text.tokens[at]?.stem ?? "")) return true;
  }
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

type Narrowed =
  | { readonly kind: "open"; readonly open: Ambiguous }
  | { readonly kind: "plain"; readonly reading: StateReading }
  | { readonly kind: "gone" };

function narrow(
  one: Open,
  understood: readonly StateReading[],
  denied: readonly StateReading[],
): Narrowed {
  const said = (option: { observation: string; state: string }): boolean =>
    understood.some((r) => r.observation === option.observation && r.state === option.state);
  if (one.options.some(said)) return { kind: "gone" };
  const left = one.options.filter(
    (option) =>
      !understood.some((reading) => reading.observation === option.observation) &&
      !denied.some((r) => r.observation === option.observation && r.state === option.state),
  );
  const [only] = left;
  if (only === undefined) return { kind: "gone" };
  if (left.length > 1 || one.options.length === 1) {
    return { kind: "open", open: ambiguous(one, left) };
  }
  const { observation, state } = only;
  const probability = Math.min(one.from.probability, SURE_BY_EXCLUSION);
  return { kind: "plain", reading: { ...one.from, observation, state, probability } };
}
