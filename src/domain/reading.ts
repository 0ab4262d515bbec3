import type { Fuel, MachineKindId } from "./vocabulary.ts";

/** A stretch of the text: UTF-16 offsets, from inclusive, to exclusive. */
export type Span = readonly [number, number];

/** One piece of a phrase pattern. */
export type PatternPiece =
  /** One of these words; left out of the text at will when optional. */
  | { readonly kind: "words"; readonly any: readonly string[]; readonly optional: boolean }
  /** Up to this many words of any kind, within one clause. */
  | { readonly kind: "gap"; readonly upTo: number }
  /** The beginning or the end of a clause. */
  | { readonly kind: "edge" };

/** A phrase as people say it; it begins with words, or with an edge followed by words. */
export type Pattern = readonly PatternPiece[];

export interface StateClaim {
  readonly observation: string;
  readonly state: string;
}

export interface WeighedClaim extends StateClaim {
  readonly weight: number;
}

/** What saying a thing means: states that are plain, or several meanings with weights. */
export interface Meaning {
  readonly means: readonly StateClaim[];
  /** Weights sum to 1; empty where the meaning is plain. */
  readonly maybe: readonly WeighedClaim[];
}

/** Something people say, in all its wordings. */
export interface Sign extends Meaning {
  readonly id: string;
  readonly say: readonly Pattern[];
  /** What it means when denied; absent: only that the states in `means` do not hold. */
  readonly denied?: Meaning;
  /** P(the person means this | these words), in (0, 1]. */
  readonly sure: number;
  /** True where a later change does not undo it: events, work done, how it came about. */
  readonly past: boolean;
  /** True where any other state of the same observation takes its place ("it starts"). */
  readonly givesWay: boolean;
}

/** Signs that together mean something: "cranks" with "won't fire". */
export interface Together extends Meaning {
  readonly signs: readonly { readonly sign: string; readonly denied: boolean }[];
  /** Signs whose own meaning is settled by the rule and is not reported beside it. */
  readonly settles: readonly string[];
  /** True where all must stand in one sentence. */
  readonly oneSentence: boolean;
}

/** A reading's place: which observation a number with this unit belongs to near these words. */
export interface Measure {
  readonly observation: string;
  readonly unit: string;
  readonly near: readonly Pattern[];
  /** Words that rule it out in the same sentence. */
  readonly unless: readonly Pattern[];
  /** Weight against other places when no words are near; 0 = never without them. */
  readonly weight: number;
}

/** Quantities that are answers by themselves: "stood six weeks", "minus five this morning". */
export interface BandRule {
  readonly observation: string;
  /** `h` for lengths of time, `ago` for hours before now, else the unit of the quantity. */
  readonly unit: string;
  /** Words that must stand near it; none: the unit alone says it. */
  readonly near: readonly Pattern[];
  /** Words that rule it out in the same clause. */
  readonly unless: readonly Pattern[];
  /** States by rising quantity; `upTo` is exclusive, infinite for the last. */
  readonly states: readonly { readonly state: string; readonly upTo: number }[];
}

/** The words that carry the grammar. */
export interface Grammar {
  readonly not: readonly string[];
  readonly or: readonly string[];
  /** Words that deny what stands before them: "rodents: none". */
  readonly notAfter: readonly string[];
  /** Words that end the reach of a denial: "won't start, just clicks". */
  readonly stop: readonly string[];
  /** Verbs through which a denial reaches further: "I don't hear it click". */
  readonly perceive: readonly string[];
  /** Words that open a new clause. */
  readonly joins: readonly string[];
  /** Words after which what follows is what happens now: "then", "now". */
  readonly sequence: readonly string[];
  /** Words left aside at the edge of a clause: "still nothing" is "nothing". */
  readonly fillers: readonly string[];
  readonly now: readonly Pattern[];
  readonly before: readonly Pattern[];
  /** Someone else says so: for the sentence, or for the whole message. */
  readonly secondHand: readonly Pattern[];
  readonly secondHandAll: readonly Pattern[];
  /** Comparisons and mere thoughts: what follows in the clause is not a fact. */
  readonly unreal: readonly Pattern[];
  readonly hedges: readonly { readonly strength: number; readonly say: readonly Pattern[] }[];
}

/** Number words and units. */
export interface NumberWords {
  /** The mark that groups thousands where three digits follow it; "" = none. */
  readonly thousands: "," | "." | "";
  readonly words: ReadonlyMap<string, number>;
  readonly ordinals: ReadonlyMap<string, number>;
  readonly units: ReadonlyMap<string, readonly string[]>;
  readonly about: readonly string[];
  readonly rangeWords: readonly string[];
  /** Fixed expressions of time in hours: "all winter", and, ago, "since yesterday". */
  readonly times: readonly TimeWords[];
  /** Words that make the length of time before them a time ago. */
  readonly ago: readonly string[];
  /** Words that make the month after them a time ago: "since october". */
  readonly since: readonly string[];
  /** "between 12 and 13": the words before the first and before the second number. */
  readonly between: readonly string[];
  readonly betweenAnd: readonly string[];
  /** Words after a nominal voltage that make it the machine's: "a 6 volt system". */
  readonly nominal: readonly string[];
  /** Words after a number of years that make it an age. */
  readonly age: readonly string[];
  /** Names of the months, January first, each in all its spellings. */
  readonly months: readonly (readonly string[])[];
}

export interface TimeWords {
  readonly hours: number;
  readonly ago: boolean;
  readonly say: readonly Pattern[];
}

export const commands = ["back", "stop", "person", "more", "dont-know", "yes", "no"] as const;
export type Command = (typeof commands)[number];

/** Named lists of phrases: red flags, parts of the machine, fuels. */
export type PhraseLists = ReadonlyMap<string, readonly Pattern[]>;

/** How one language says things: the checked content of `locales/<language>/phrases.yaml`. */
export interface Phrases {
  readonly language: string;
  /** Name of the Snowball algorithm. */
  readonly stemmer: string;
  /** Apostrophe endings that are dropped: 's, 'll. */
  readonly endings: readonly string[];
  /** Other spellings and contractions, each with the words it stands for. */
  readonly sameAs: ReadonlyMap<string, readonly string[]>;
  /** Words that are never taken for a misspelling of another, and say nothing by themselves. */
  readonly ordinary: readonly string[];
  readonly grammar: Grammar;
  readonly numbers: NumberWords;
  readonly signs: readonly Sign[];
  readonly together: readonly Together[];
  readonly measures: readonly Measure[];
  readonly bands: readonly BandRule[];
  readonly components: PhraseLists;
  readonly replaced: readonly Pattern[];
  readonly notReplaced: readonly Pattern[];
  /** What replacing a part is an answer to, by component; `any` for every one. */
  readonly replacedMeans: ReadonlyMap<string, readonly StateClaim[]>;
  readonly urgency: { readonly high: readonly Pattern[]; readonly low: readonly Pattern[] };
  readonly redFlags: PhraseLists;
  readonly commands: PhraseLists;
  readonly fuels: PhraseLists;
  readonly machines: PhraseLists;
}

interface ReadingBase {
  readonly observation: string;
  /** P(the person means this), in (0, 1]. */
  readonly probability: number;
  /** 0 = plainly stated, 1 = worth nothing. */
  readonly hedge: number;
  readonly source: "self" | "other";
  readonly span: Span;
}

export interface StateReading extends ReadingBase {
  readonly state: string;
}

export interface ValueReading extends ReadingBase {
  readonly value: number;
  readonly unit: string;
  /** Half the width of what was said: a range, or "about". */
  readonly spread: number;
}

export type Understood = StateReading | ValueReading;

/** Words with several meanings: to be asked, never guessed. Probabilities sum to 1. */
export interface Ambiguous {
  readonly span: Span;
  readonly options: readonly AmbiguousOption[];
}

export interface AmbiguousOption {
  readonly observation: string;
  readonly probability: number;
  readonly state?: string;
  readonly value?: number;
  readonly unit?: string;
}

/** A number that cannot be meant: outside what the observation can show. */
export interface Implausible {
  readonly observation: string;
  readonly value: number;
  readonly unit: string;
  readonly range: readonly [number, number];
  readonly span: Span;
}

export interface Found<Id extends string = string> {
  readonly id: Id;
  readonly span: Span;
}

export interface MachineHints {
  readonly kind?: MachineKindId;
  /** P(the kind is meant), 0 where none is named. */
  readonly certainty: number;
  readonly fuel?: Fuel;
  readonly volts?: number;
  readonly hours?: number;
  readonly ageYears?: number;
  readonly cylinders?: number;
  readonly horsepower?: number;
}

/** What a message says. Spans are in the message as it was given. */
export interface ReadingResult {
  readonly language: string;
  readonly understood: readonly Understood[];
  readonly ambiguous: readonly Ambiguous[];
  readonly notUnderstood: readonly Span[];
  /** States that were said not to hold. */
  readonly denied: readonly StateReading[];
  /** States that held before and do not count as now. */
  readonly earlier: readonly StateReading[];
  readonly implausible: readonly Implausible[];
  /** Parts that were replaced. */
  readonly replaced: readonly Found[];
  /** Parts that were named at all. */
  readonly components: readonly Found[];
  readonly machine: MachineHints;
  readonly urgency: "high" | "low" | null;
  readonly redFlags: readonly Found[];
  readonly command: Command | null;
}

/** An open question: typed answers are first tried as one of its states. */
export interface Expecting {
  readonly observation: string;
  /** The buttons as shown, in order, in the person's language; absent: the states' titles. */
  readonly offered?: readonly { readonly state: string; readonly title: string }[];
}

export interface ReadOptions {
  /** Languages to try, the person's own first; empty: all that are known. */
  readonly languages: readonly string[];
  /** System voltage; 12 when unknown. */
  readonly volts?: number;
  readonly expecting?: Expecting;
  /** Epoch milliseconds, for dates; absent: dates are not read. */
  readonly now?: number;
}

export interface Reader {
  read(text: string, options: ReadOptions): ReadingResult;
}

/** What the reader needs of the knowledge. */
export interface ReaderModel {
  readonly observations: ReadonlyMap<string, ReaderObservation>;
  readonly machines: readonly MachineSynonyms[];
}

export interface ReaderObservation {
  readonly id: string;
  readonly kind: "states" | "number" | "list" | "text";
  readonly states: readonly {
    readonly id: string;
    readonly title: string;
    readonly from?: number;
    readonly to?: number;
  }[];
  readonly unit?: string;
  readonly scalesWithVolts: boolean;
  readonly plausible?: readonly [number, number];
}

export interface MachineSynonyms {
  readonly id: MachineKindId;
  readonly synonyms: readonly string[];
  readonly fuels: Readonly<Partial<Record<Fuel, number>>>;
  readonly volts: readonly { readonly volts: number; readonly share: number }[];
}
