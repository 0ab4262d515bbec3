/** One piece of a phrase pattern. */
export type PatternPiece =
  /**
   * One of these words, in any of its forms, or exactly as it stands after a "="; several joined by
   * hyphens stand for a run of words. Left out of the text at will when optional.
   */
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

/** Something people say, however they word it. */
export interface SignMeaning extends Meaning {
  readonly id: string;
  /** States that do not hold where it is said: "the relay is good". */
  readonly rulesOut?: readonly StateClaim[];
  /** What it means when denied; absent: only that the states in `means` do not hold. */
  readonly denied?: Meaning;
  /** P(the person means this | these words), in (0, 1]. */
  readonly sure: number;
  /** True where a later change does not undo it: events, work done, how it came about. */
  readonly past: boolean;
  /** True where any other state of the same observation takes its place ("it starts"). */
  readonly givesWay: boolean;
}

/** Something people say, in all its wordings. */
export interface Sign extends SignMeaning {
  readonly say: readonly Pattern[];
  /** Words that, in the same clause, make it something else: "no click *from the valve*". */
  readonly unless?: readonly Pattern[];
}

/** Signs that together mean something: "cranks" with "won't fire". */
export interface Together extends Meaning {
  readonly signs: readonly SignRef[];
  /** Signs whose own meaning is settled by the rule and is not reported beside it. */
  readonly settles: readonly string[];
  /** True where all must stand in one sentence. */
  readonly oneSentence: boolean;
}

/** A sign as it must stand: said, or denied. */
export interface SignRef {
  readonly sign: string;
  readonly denied: boolean;
}

/** Signs that tell what came of something that was done. */
export interface Outcomes {
  readonly cured: readonly SignRef[];
  /** "no better": whatever was done. */
  readonly noChange: readonly SignRef[];
  /** The trouble itself, behind an act: "charged it, still nothing". */
  readonly still: readonly SignRef[];
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
  /** Words that lead from a state to its thing: "a nest *in* the exhaust". */
  readonly at: readonly string[];
  /** Words at the beginning of a label: what follows was so only after something was done. */
  readonly after: readonly string[];
  /** Labels of the entry that tells what put the machine right: "fixed by", "new relay". */
  readonly remedy: readonly Pattern[];
  /** Words of looking, behind which a comma ends nothing: "coil tested, no fault". */
  readonly looked: readonly string[];
  /** Words left aside at the edge of a clause: "still nothing" is "nothing". */
  readonly fillers: readonly string[];
  readonly now: readonly Pattern[];
  readonly before: readonly Pattern[];
  /** Someone else says so: for the sentence, or for the whole message. */
  readonly secondHand: readonly Pattern[];
  readonly secondHandAll: readonly Pattern[];
  /** Comparisons and mere thoughts: what follows in the clause is not a fact. */
  readonly unreal: readonly Pattern[];
  /** Another machine, a question, a plan: what follows up to a comma or to `here` is no fact. */
  readonly elsewhere: readonly Pattern[];
  /** Words that lead back to the machine and its state: "but", "this one". */
  readonly here: readonly Pattern[];
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
  /** Words that say a meter shows nothing, with the unit: "no volts". */
  readonly zeros: readonly ZeroWords[];
  /** Words that make the length of time before them a time ago. */
  readonly ago: readonly string[];
  /** True where they stand in front of it: "hace tres semanas". */
  readonly agoFirst: boolean;
  /** Words in front of a temperature that make it one below zero: "minus ten degrees". */
  readonly minus: readonly string[];
  /** The same behind it, in one word or several joined by hyphens: "ten below-zero". */
  readonly belowZero: readonly string[];
  /** Words that make the month after them a time ago: "since october". */
  readonly since: readonly string[];
  /** "between 12 and 13": the words before the first and before the second number. */
  readonly between: readonly string[];
  readonly betweenAnd: readonly string[];
  /** Words after a nominal voltage that make it the machine's: "a 6 volt system". */
  readonly nominal: readonly string[];
  /** Words between such a word and the voltage, where it comes first: "batería de 12 voltios". */
  readonly nominalOf: readonly string[];
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

export interface ZeroWords {
  readonly unit: string;
  readonly say: readonly Pattern[];
}

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
  /** Further words of the language that are never taken for a misspelling. */
  readonly known: readonly string[];
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
  /** Acts and repairs, by id: how people say that they did it. */
  readonly acts: PhraseLists;
  /** The repair that replacing a part is, by component. */
  readonly repairs: ReadonlyMap<string, string>;
  readonly outcomes: Outcomes;
  /** Short answers that mean something only where their observation was asked: by state. */
  readonly answers: ReadonlyMap<string, PhraseLists>;
  /** What people call the thing that an observation looks at: "fuel tap". */
  readonly names: PhraseLists;
  readonly urgency: { readonly high: readonly Pattern[]; readonly low: readonly Pattern[] };
  readonly redFlags: PhraseLists;
  readonly commands: PhraseLists;
  /** Words that may stand around a command: "please", "can I". */
  readonly politeness: readonly string[];
  readonly fuels: PhraseLists;
  readonly machines: PhraseLists;
}
