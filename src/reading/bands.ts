import type { BandRule, SignMeaning } from "../domain/phrases.ts";
import type { ReaderModel, StateReading } from "../domain/reading.ts";
import type { Clauses } from "./clauses.ts";
import type { Language, Place } from "./grammar.ts";
import type { Match } from "./patterns.ts";
import type { Quantity } from "./quantity.ts";
import type { Scopes } from "./scopes.ts";
import { spanOf } from "./span.ts";

/** States told by a quantity: "stood six weeks", "minus ten outside". */
export interface Banded {
  readonly readings: readonly StateReading[];
  readonly placed: readonly Quantity[];
}

export interface BandInput {
  readonly language: Language;
  readonly model: ReaderModel;
  readonly scopes: Scopes;
  /** Signs of the text: a quantity that one of them is about is theirs. */
  readonly matches: readonly Match<SignMeaning>[];
}

const SURE_OF_BAND = 0.9;

interface Candidate {
  readonly quantity: Quantity;
  readonly band: BandRule;
  readonly state: string;
  /** Clauses between the quantity and the words it belongs to. */
  readonly distance: number;
}

/** One state for each observation: from the quantity nearest to its words, else the smallest. */
export function readBands(
  text: Clauses,
  quantities: readonly Quantity[],
  input: BandInput,
): Banded {
  if (quantities.length === 0) return { readings: [], placed: [] };
  const near = input.language.places.all(text).filter(({ owner }) => owner.list === "band");
  const best = new Map<string, Candidate>();
  const placed: Quantity[] = [];
  for (const quantity of quantities) {
    const found = candidateFor(text, { quantity, near, bands: input.language.phrases.bands });
    if (found === null || !input.model.observations.has(found.band.observation)) continue;
    if (isTheirs(text, found, input.matches) || isSaid(found, input.matches)) continue;
    placed.push(quantity);
    const there = best.get(found.band.observation);
    if (there === undefined || isNearer(found, there)) best.set(found.band.observation, found);
  }
  const readings = [...best.values()].map(({ quantity, band, state }) => {
    const { hedge, source } = input.scopes.of(quantity.from);
    const told = { probability: SURE_OF_BAND, hedge, source, span: spanOf(text, quantity) };
    return { observation: band.observation, state, ...told };
  });
  return { readings, placed };
}

/**
 * "flat after *three weeks* standing", "only when it has stood *a few days*": lengths of time within
 * what was told, or directly behind it. A moment in the past stands for itself ("died *an hour ago*").
 */
function isTheirs(
  text: Clauses,
  { quantity, band }: Candidate,
  matches: readonly Match<SignMeaning>[],
): boolean {
  if (quantity.unit !== "h") return false;
  return matches.some(({ owner, from, to }) => {
    const isAboutOther = owner.means.some((one) => one.observation !== band.observation);
    if (!isAboutOther) return false;
    const follows = to === quantity.from && text.joined(to);
    return follows || (from < quantity.to && quantity.from < to);
  });
}

/** Words that say another state outright stand over a length of time: "won't catch, ran a minute". */
function isSaid(
  { quantity, band, state }: Candidate,
  matches: readonly Match<SignMeaning>[],
): boolean {
  if (quantity.unit !== "h") return false;
  return matches.some(({ owner }) => {
    const same = owner.means.filter((one) => one.observation === band.observation);
    return same.length > 0 && same.every((one) => one.state !== state);
  });
}

/** The state of a band that a quantity falls in; null where it has another unit. */
export function stateIn(band: BandRule, quantity: Quantity): string | null {
  if (quantity.unit !== band.unit) return null;
  return band.states.find((one) => quantity.value < one.upTo)?.state ?? null;
}

function isNearer(one: Candidate, other: Candidate): boolean {
  if (one.distance !== other.distance) return one.distance < other.distance;
  return one.quantity.value < other.quantity.value;
}

interface Search {
  readonly quantity: Quantity;
  readonly near: readonly Match<Place>[];
  readonly bands: readonly BandRule[];
}

function candidateFor(text: Clauses, { quantity, near, bands }: Search): Candidate | null {
  const clause = text.clauses[quantity.from] ?? 0;
  let best: Candidate | null = null;
  for (const [index, band] of bands.entries()) {
    const state = stateIn(band, quantity);
    if (state === null) continue;
    const about = near.filter(
      ({ owner, from }) =>
        owner.index === index && text.sentences[from] === text.sentences[quantity.from],
    );
    const away = ({ from }: Match<Place>): number => Math.abs((text.clauses[from] ?? 0) - clause);
    if (about.some((match) => match.owner.rulesOut && away(match) === 0)) continue;
    const wanted = about.filter((match) => !match.owner.rulesOut).map(away);
    const distance = band.near.length === 0 ? 0 : Math.min(...wanted, Number.POSITIVE_INFINITY);
    // A time ago may be an afterthought: "I've used it all week, even an hour ago".
    if (distance > (band.unit === "ago" ? 1 : 0)) continue;
    const found = { quantity, band, state, distance };
    if (best === null || isNearer(found, best)) best = found;
  }
  return best;
}
