import type {
  Expecting,
  Implausible,
  ReaderModel,
  ReaderObservation,
  StateReading,
  ValueReading,
} from "../domain/reading.ts";
import { stateIn } from "./bands.ts";
import type { Clauses } from "./clauses.ts";
import type { Language } from "./grammar.ts";
import { plausibleRange, roundReading } from "./measures.ts";
import { denials } from "./negation.ts";
import type { Match } from "./patterns.ts";
import type { Quantity } from "./quantity.ts";
import type { Scopes } from "./scopes.ts";
import { type Stretch, spanOf } from "./span.ts";
import { matchTitles } from "./titles.ts";

/** What a message answers to the open question; all empty when it does not. */
export interface Answer {
  readonly states: readonly StateReading[];
  readonly values: readonly ValueReading[];
  readonly implausible: readonly Implausible[];
  readonly covered: readonly Stretch[];
  /** Words that say the answer and are not about anything else; null where it is the whole. */
  readonly said: Stretch | null;
}

export interface AnswerInput {
  readonly language: Language;
  readonly model: ReaderModel;
  readonly scopes: Scopes;
  readonly quantities: readonly Quantity[];
  readonly volts: number;
}

const noAnswer: Answer = { states: [], values: [], implausible: [], covered: [], said: null };

/** A button chosen by its number, or by its whole title. */
const SURE_OF_CHOICE = 0.97;
const SURE_OF_VALUE = 0.95;
/** Words of the answer's own, not the button's. */
const SURE_OF_SHORT = 0.95;
/** Volts called amps, or the other way about. */
const SURE_OF_OTHER_UNIT = 0.7;

/** Tries a message as an answer to a question: a number, a button's number, a button's words. */
export function answerTo(text: Clauses, expecting: Expecting, input: AnswerInput): Answer {
  const observation = input.model.observations.get(expecting.observation);
  if (observation === undefined || text.tokens.length === 0) return noAnswer;
  if (observation.kind === "number") return valueAnswer(text, observation, input);
  const offered =
    expecting.offered ??
    observation.states.map((state) => ({ state: state.id, title: state.title }));
  const chosen: Chosen | null =
    byQuantity(observation.id, input) ??
    byNumber(text, offered, input.language) ??
    byShortAnswer(text, observation.id, input) ??
    matchTitles(text, { observation, offered, language: input.language });
  if (chosen === null) return noAnswer;
  const { hedge, source } = input.scopes.of(0);
  const whole = { from: 0, to: text.tokens.length };
  const reading: StateReading = {
    observation: observation.id,
    state: chosen.state,
    probability: SURE_OF_CHOICE * chosen.share,
    hedge,
    source,
    span: spanOf(text, whole),
  };
  return { ...noAnswer, states: [reading], covered: [whole], said: chosen.at ?? null };
}

interface Chosen {
  readonly state: string;
  /** How much of the title was said, in (0, 1]. */
  readonly share: number;
  /** The words that say it; absent: the whole message. */
  readonly at?: Stretch;
}

/** "three weeks", "minus ten": a quantity where the state is a band of one. */
function byQuantity(observation: string, input: AnswerInput): Chosen | null {
  const bands = input.language.phrases.bands.filter((band) => band.observation === observation);
  for (const quantity of input.quantities) {
    for (const band of bands) {
      const state = stateIn(band, quantity);
      if (state !== null) return { state, share: 1 };
    }
  }
  return null;
}

/** "2", "2)", "the second", "last one": the place of a button. */
function byNumber(
  text: Clauses,
  offered: readonly { readonly state: string }[],
  language: Language,
): Chosen | null {
  const content = text.tokens.filter((token) => {
    return token.number || ordinalOf(token.stem, language) !== undefined;
  });
  const others = text.tokens.filter(
    (token) => !content.includes(token) && !language.lexicon.isOrdinary(token.stem),
  );
  const [only] = content;
  if (only === undefined || content.length > 1 || others.length > 0) return null;
  const place = only.number ? Number(only.text) : ordinalOf(only.stem, language);
  if (place === undefined || !Number.isInteger(place)) return null;
  const state = place === 0 ? undefined : offered.at(place < 0 ? place : place - 1)?.state;
  return state === undefined ? null : { state, share: 1 };
}

/** Longer answers are stories; the phrases read them better. */
const LONGEST_SHORT_ANSWER = 8;
/** "broken, and the flywheel has turned on the shaft": the answer is what comes first. */
const SHARE_OF_FIRST = 0.9;

/**
 * "seen", "soaked": words that mean something only where this was asked; not as things used to be
 * ("used to come on").
 */
function byShortAnswer(
  text: Clauses,
  observation: string,
  { language, scopes }: AnswerInput,
): Chosen | null {
  const end = text.clauses.findIndex((clause) => clause !== text.clauses[0]);
  const first = end === -1 ? text.tokens.length : end;
  if (Math.min(first, text.tokens.length) > LONGEST_SHORT_ANSWER) return null;
  const found = language.answers.get(observation)?.longest(text) ?? [];
  const all = found.filter(({ from }) => scopes.of(from).when !== "before");
  const isShort = text.tokens.length <= LONGEST_SHORT_ANSWER;
  const whole = isShort ? saidIn(text, all, language) : null;
  if (whole !== null) return { ...whole, share: SURE_OF_SHORT };
  const begun = all.filter((match) => match.to <= first);
  const said = saidIn(text, begun, language);
  return said === null ? null : { ...said, share: SURE_OF_SHORT * SHARE_OF_FIRST };
}

/** The one state that is said and not denied. */
function saidIn(text: Clauses, matches: readonly Match<string>[], language: Language) {
  const [match, ...others] = matches;
  if (match === undefined || others.some((one) => one.owner !== match.owner)) return null;
  if (denials(text, matches, language.words).includes(true)) return null;
  return { state: match.owner, at: { from: match.from, to: others.at(-1)?.to ?? match.to } };
}

function ordinalOf(stem: string, language: Language): number | undefined {
  return language.words.ordinals.get(stem);
}

function valueAnswer(text: Clauses, observation: ReaderObservation, input: AnswerInput): Answer {
  const unit = observation.unit ?? null;
  const same = input.quantities.find((one) => one.unit === unit || one.unit === null);
  const mistaken = input.quantities.find(
    (one) => (unit === "V" && one.unit === "A") || (unit === "A" && one.unit === "V"),
  );
  const quantity = same ?? mistaken;
  if (quantity === undefined) return noAnswer;
  const value = roundReading(hydrometer(quantity.value, unit));
  const span = spanOf(text, quantity);
  const range = plausibleRange(observation, input.volts);
  const base = { observation: observation.id, value, unit: unit ?? "", span };
  if (range !== null && (value < range[0] || value > range[1])) {
    return { ...noAnswer, implausible: [{ ...base, range }], covered: [quantity] };
  }
  const { hedge, source } = input.scopes.of(quantity.from);
  const probability = same === undefined ? SURE_OF_OTHER_UNIT : SURE_OF_VALUE;
  const spread = roundReading(quantity.spread);
  const reading: ValueReading = { ...base, spread, probability, hedge, source };
  return { ...noAnswer, values: [reading], covered: [quantity], said: quantity };
}

/** A hydrometer's scale is read as 1265 or as 1.265. */
function hydrometer(value: number, unit: string | null): number {
  return unit === "SG" && value >= 1000 ? value / 1000 : value;
}
