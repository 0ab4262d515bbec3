import type { Measure } from "../domain/phrases.ts";
import type {
  Ambiguous,
  AmbiguousOption,
  Implausible,
  ReaderModel,
  ReaderObservation,
  ValueReading,
} from "../domain/reading.ts";
import type { Clauses } from "./clauses.ts";
import type { Language, Place } from "./grammar.ts";
import { isNominal } from "./machine-hints.ts";
import type { Match } from "./patterns.ts";
import type { Quantity } from "./quantity.ts";
import { reachesOf } from "./reaches.ts";
import type { Scopes } from "./scopes.ts";
import { spanOf } from "./span.ts";

export interface Measured {
  readonly values: readonly ValueReading[];
  readonly ambiguous: readonly Ambiguous[];
  readonly implausible: readonly Implausible[];
  /** Quantities that found their observation. */
  readonly placed: readonly Quantity[];
  /** Those among them whose place was named in more than one word, and the observation it is. */
  readonly named: ReadonlyMap<Quantity, string>;
}

export interface MeasureInput {
  readonly language: Language;
  readonly model: ReaderModel;
  readonly scopes: Scopes;
  readonly volts: number;
}

/** A number whose unit and place were both named. */
const SURE_IF_PLACED = 0.95;
/** Below this a number is not even asked about. */
const LEAST_SCORE = 0.5;
/** The place was named, the unit was not. */
const SURE_WITHOUT_UNIT = 0.8;

/** What `nearness` gives two words in the same clause; one alone ("battery") names no place yet. */
const SCORE_IF_NAMED = 1.5;

interface Candidate {
  readonly measure: Measure;
  readonly score: number;
  /** How many things are measured in this unit. */
  readonly usual: number;
}

/** Gives each number to the observation it was read at. */
export function placeQuantities(
  text: Clauses,
  quantities: readonly Quantity[],
  input: MeasureInput,
): Measured {
  const near = quantities.length === 0 ? [] : input.language.places.all(text);
  const reaches = reachesOf(text, quantities);
  const values: ValueReading[] = [];
  const open: Ambiguous[] = [];
  const implausible: Implausible[] = [];
  const placed: Quantity[] = [];
  const named = new Map<Quantity, string>();
  for (const quantity of withoutCounts(text, quantities)) {
    if (isNominal(text, quantity, input.language.words)) {
      placed.push(quantity);
      continue;
    }
    const candidates = candidatesFor(text, quantity, { near, reaches, input });
    const fitting = candidates
      .filter((one) => fits(quantity, one.measure.observation, input))
      .sort((a, b) => b.score - a.score || b.usual - a.usual);
    const [best] = fitting;
    if (quantity.none === true && (best?.score ?? 0) < SCORE_IF_NAMED) continue;
    if (best === undefined || best.score < LEAST_SCORE) {
      const wrong = implausibleReading(text, quantity, { candidates, input });
      if (wrong !== null) implausible.push(wrong);
      continue;
    }
    placed.push(quantity);
    if (best.score >= SCORE_IF_NAMED) named.set(quantity, best.measure.observation);
    const sure = sureOf(quantity, fitting);
    const at = { observation: best.measure.observation, probability: sure };
    if (sure === 0)
      open.push({ span: spanOf(text, quantity), options: optionsOf(quantity, fitting) });
    else values.push({ ...readingOf(quantity, at, input), ...told(text, quantity, input.scopes) });
  }
  return { values, ambiguous: open, implausible, placed, named };
}

/** Whole numbers up to this number things where readings beside them have their units. */
const LARGEST_COUNT = 9;

/** "battery 2 rests 10.4 V": without the numbers of things. */
function withoutCounts(text: Clauses, quantities: readonly Quantity[]): readonly Quantity[] {
  const readings = quantities.filter(({ unit, decimal }) => unit !== null || decimal);
  const sentences = new Set(readings.map(({ from }) => text.sentences[from]));
  return quantities.filter(
    ({ unit, decimal, value, from }) =>
      unit !== null || decimal || value > LARGEST_COUNT || !sentences.has(text.sentences[from]),
  );
}

/** P(the best place is meant); 0 where it must be asked: no words near, two places, wrong unit. */
function sureOf(quantity: Quantity, fitting: readonly Candidate[]): number {
  const [best, next] = fitting;
  if (best === undefined || best.score < 1) return 0;
  if (next !== undefined && best.score <= next.score && !isUsual(quantity, best, next)) return 0;
  if (quantity.unit === null || quantity.none === true) return SURE_WITHOUT_UNIT;
  return best.measure.unit === quantity.unit ? SURE_IF_PLACED : 0;
}

/** Of two units that a bare number may have, the one that more is measured in: "9.8 cranking". */
function isUsual(quantity: Quantity, best: Candidate, next: Candidate): boolean {
  const isBare = quantity.unit === null && best.measure.unit !== next.measure.unit;
  return isBare && best.usual > next.usual;
}

function optionsOf(quantity: Quantity, fitting: readonly Candidate[]): readonly AmbiguousOption[] {
  const total = fitting.reduce((sum, one) => sum + one.score, 0);
  return fitting.map(({ measure, score }) => ({
    observation: measure.observation,
    value: roundReading(quantity.value),
    unit: measure.unit,
    probability: score / total,
  }));
}

/** Words of places, and how far those around each token reach. */
interface Around {
  readonly near: readonly Match<Place>[];
  readonly reaches: readonly number[];
  readonly input: MeasureInput;
}

/** Words further away than this tell nothing of a number, even in a sentence without an end. */
const WORDS_AROUND = 60;

/** Volts are often called amps; the person is then asked. */
const CALLED_AMPS = 0.8;

function candidatesFor(
  text: Clauses,
  quantity: Quantity,
  { near, reaches, input }: Around,
): readonly Candidate[] {
  const reach = reaches[quantity.from];
  const isNear = (token: number): boolean => reaches[token] === reach;
  // Looked for once, not for every measure, so that a text full of numbers stays quick.
  const here = near.filter(
    ({ owner, from }) =>
      owner.list === "measure" &&
      text.sentences[from] === text.sentences[quantity.from] &&
      Math.abs(from - quantity.from) <= WORDS_AROUND,
  );
  const { measures } = input.language.phrases;
  return measures.flatMap((measure, index) => {
    const asSaid = quantity.unit === measure.unit || quantity.unit === null;
    const calledAmps = quantity.unit === "A" && measure.unit === "V";
    if (!asSaid && !calledAmps) return [];
    const about = here.filter(({ owner }) => owner.index === index);
    if (about.some(({ owner, from }) => owner.rulesOut && isNear(from))) return [];
    const words = about
      .filter(({ owner }) => !owner.rulesOut)
      .map((match) => nearness(match, isNear(match.from)));
    const doubted = about.some(({ owner }) => owner.rulesOut);
    const unsaid = quantity.unit === null || calledAmps || doubted ? 0 : measure.weight;
    // "drops to 6" is a reading, "6" elsewhere in the sentence need not be.
    const led =
      quantity.decimal || about.some(({ owner, to }) => !owner.rulesOut && to === quantity.from);
    const score = quantity.unit === null && !led ? 0 : Math.max(unsaid, ...words);
    if (score <= 0) return [];
    const usual = measures.filter(({ unit }) => unit === measure.unit).length;
    return [{ measure, usual, score: calledAmps ? score * CALLED_AMPS : score }];
  });
}

/** At least 1 within reach, more for longer phrases; less beyond it. */
function nearness(match: Match<Place>, isNear: boolean): number {
  return isNear ? 1 + match.words / 4 : 0.9;
}

/** Bounds of a reading on a machine of these volts; null where there are none. */
export function plausibleRange(
  observation: ReaderObservation,
  volts: number,
): readonly [number, number] | null {
  if (observation.plausible === undefined) return null;
  const [low, high] = observation.plausible;
  const scale = observation.scalesWithVolts ? volts / 12 : 1;
  return [low * scale, high * scale];
}

function fits(quantity: Quantity, id: string, input: MeasureInput): boolean {
  const observation = input.model.observations.get(id);
  if (observation === undefined) return false;
  const range = plausibleRange(observation, input.volts);
  return range === null || (quantity.value >= range[0] && quantity.value <= range[1]);
}

function implausibleReading(
  text: Clauses,
  quantity: Quantity,
  { candidates, input }: { candidates: readonly Candidate[]; input: MeasureInput },
): Implausible | null {
  const best = candidates.find((one) => one.score >= 1 && one.measure.unit === quantity.unit);
  const observation = best && input.model.observations.get(best.measure.observation);
  const range = observation === undefined ? null : plausibleRange(observation, input.volts);
  if (best === undefined || observation === undefined || range === null) return null;
  return {
    observation: observation.id,
    value: roundReading(quantity.value),
    unit: best.measure.unit,
    range,
    span: spanOf(text, quantity),
  };
}

function readingOf(
  quantity: Quantity,
  { observation, probability }: { readonly observation: string; readonly probability: number },
  input: MeasureInput,
): Pick<ValueReading, "observation" | "value" | "unit" | "spread" | "probability"> {
  const unit = input.model.observations.get(observation)?.unit ?? quantity.unit ?? "";
  const [value, spread] = [roundReading(quantity.value), roundReading(quantity.spread)];
  return { observation, value, unit, spread, probability };
}

/** Conversions leave digits nobody measured. */
export function roundReading(value: number): number {
  return Number(value.toPrecision(6));
}

function told(
  text: Clauses,
  quantity: Quantity,
  scopes: Scopes,
): Pick<ValueReading, "hedge" | "source" | "span"> {
  const { hedge, source } = scopes.of(quantity.from);
  return { hedge, source, span: spanOf(text, quantity) };
}
