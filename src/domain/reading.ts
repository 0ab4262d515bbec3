import type { Fuel, MachineKindId } from "./vocabulary.ts";

/** A stretch of the text: UTF-16 offsets, from inclusive, to exclusive. */
export type Span = readonly [number, number];

export const commands = ["back", "stop", "person", "more", "dont-know", "yes", "no"] as const;
export type Command = (typeof commands)[number];

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

/** Something that was done about the trouble, and what came of it. */
export interface ActTold {
  /** An act or a repair of the knowledge. */
  readonly act: string;
  readonly outcome: "cured" | "no-change";
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
  /** What was done, where the words tell what came of it. */
  readonly acts: readonly ActTold[];
  /** Parts that were replaced. */
  readonly replaced: readonly Found[];
  /** Parts that were named at all. */
  readonly components: readonly Found[];
  readonly machine: MachineHints;
  readonly urgency: "high" | "low" | null;
  readonly redFlags: readonly Found[];
  readonly command: Command | null;
  /** The label says that it was so only once something had been done: "after cleaning". */
  readonly afterwards: boolean;
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
  /** What the text is about, where it stands apart: the name of an entry. */
  readonly label?: string;
  /** True where it was written once the machine ran again: what was renewed then was the cure. */
  readonly mended?: boolean;
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
  readonly title: string;
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
