import type { Phrases, Sign, SignMeaning, TimeWords, ZeroWords } from "../domain/phrases.ts";
import { createLexicon, type Lexicon } from "./language.ts";
import { createPatternIndex, type PatternIndex } from "./patterns.ts";

export type Marker =
  | { readonly kind: "now" | "before" | "second-hand" | "second-hand-all" }
  | { readonly kind: "unreal" | "elsewhere" | "here" }
  | { readonly kind: "hedge"; readonly strength: number };

/** Something named in the message beside what is wrong. */
export interface Aside {
  readonly list: "component" | "replaced" | "not-replaced" | "red-flag" | "fuel" | "urgency";
  readonly id: string;
}

/** What of the phrases is still asked for once their patterns are ready. */
export type SpokenPhrases = Pick<
  Phrases,
  | "language"
  | "numbers"
  | "measures"
  | "bands"
  | "together"
  | "outcomes"
  | "repairs"
  | "replacedMeans"
  | "machines"
>;

/** One language, ready to read: its words, its phrases, its small words of grammar. */
export interface Language {
  readonly phrases: SpokenPhrases;
  readonly lexicon: Lexicon;
  readonly signs: PatternIndex<SignMeaning>;
  /** Words that make a sign something else. */
  readonly otherwise: PatternIndex<SignMeaning>;
  readonly markers: PatternIndex<Marker>;
  readonly asides: PatternIndex<Aside>;
  readonly times: PatternIndex<TimeWords>;
  readonly zeros: PatternIndex<ZeroWords>;
  readonly commands: PatternIndex<string>;
  /** Things done about the trouble, by act or repair. */
  readonly acts: PatternIndex<string>;
  /** Labels of the entry that tells what put the machine right. */
  readonly remedy: PatternIndex<"remedy">;
  /** Short answers to each observation's question, by state. */
  readonly answers: ReadonlyMap<string, PatternIndex<string>>;
  /** What people call the thing that an observation looks at. */
  readonly names: PatternIndex<string>;
  /** Near and unless words of each measure, and of each band, by position in the phrases. */
  readonly places: PatternIndex<Place>;
  readonly words: GrammarWords;
}

export interface Place {
  readonly list: "measure" | "band";
  readonly index: number;
  readonly rulesOut: boolean;
}

export interface GrammarWords {
  readonly not: ReadonlySet<string>;
  readonly politeness: ReadonlySet<string>;
  readonly notAfter: ReadonlySet<string>;
  readonly or: ReadonlySet<string>;
  readonly stop: ReadonlySet<string>;
  readonly perceive: ReadonlySet<string>;
  readonly joins: ReadonlySet<string>;
  readonly sequence: ReadonlySet<string>;
  readonly after: ReadonlySet<string>;
  /** Words that lead from a state to its place. */
  readonly at: ReadonlySet<string>;
  readonly looked: ReadonlySet<string>;
  readonly fillers: ReadonlySet<string>;
  /** Place of a button by the stem of its ordinal; -1 = the last. */
  readonly ordinals: ReadonlyMap<string, number>;
  readonly nominal: ReadonlySet<string>;
  readonly nominalOf: ReadonlySet<string>;
  readonly age: ReadonlySet<string>;
}

/** Compiles one language's phrases; the cost is paid once. */
export function compileLanguage(phrases: Phrases): Language {
  const lexicon = createLexicon(phrases);
  const grammar = phrases.grammar;
  const stemsOf = (words: readonly string[]): ReadonlySet<string> =>
    new Set(words.flatMap((word) => lexicon.stems(word)));
  const signs = phrases.signs.map((sign) => [meaningOf(sign), sign] as const);
  return {
    phrases: spokenOf(phrases),
    lexicon,
    signs: createPatternIndex(
      lexicon,
      signs.map(([meaning, { say }]) => [meaning, say] as const),
    ),
    otherwise: createPatternIndex(
      lexicon,
      signs.map(([meaning, { unless = [] }]) => [meaning, unless] as const),
    ),
    markers: createPatternIndex<Marker>(lexicon, [
      [{ kind: "now" }, grammar.now],
      [{ kind: "before" }, grammar.before],
      [{ kind: "second-hand" }, grammar.secondHand],
      [{ kind: "second-hand-all" }, grammar.secondHandAll],
      [{ kind: "unreal" }, grammar.unreal],
      [{ kind: "elsewhere" }, grammar.elsewhere],
      [{ kind: "here" }, grammar.here],
      ...grammar.hedges.map(
        ({ strength, say }) => [{ kind: "hedge" as const, strength }, say] as const,
      ),
    ]),
    asides: createPatternIndex<Aside>(lexicon, asidesOf(phrases)),
    zeros: createPatternIndex(
      lexicon,
      phrases.numbers.zeros.map((zero) => [zero, zero.say] as const),
    ),
    times: createPatternIndex(
      lexicon,
      phrases.numbers.times.map((time) => [time, time.say] as const),
    ),
    commands: createPatternIndex(lexicon, [...phrases.commands]),
    acts: createPatternIndex(lexicon, phrases.acts),
    remedy: createPatternIndex(lexicon, [["remedy" as const, grammar.remedy]]),
    answers: new Map(
      [...phrases.answers].map(
        ([id, states]) => [id, createPatternIndex(lexicon, [...states])] as const,
      ),
    ),
    names: createPatternIndex(lexicon, phrases.names),
    places: createPatternIndex<Place>(lexicon, placesOf(phrases)),
    words: {
      not: stemsOf(grammar.not),
      politeness: stemsOf(phrases.politeness),
      notAfter: stemsOf(grammar.notAfter),
      or: stemsOf(grammar.or),
      stop: stemsOf(grammar.stop),
      perceive: stemsOf(grammar.perceive),
      joins: stemsOf(grammar.joins),
      sequence: stemsOf(grammar.sequence),
      after: stemsOf(grammar.after),
      at: stemsOf(grammar.at),
      looked: stemsOf(grammar.looked),
      fillers: stemsOf([...grammar.joins, ...grammar.sequence, ...grammar.fillers]),
      ordinals: new Map(
        [...phrases.numbers.ordinals].map(([word, place]) => [
          lexicon.stems(word).join(" "),
          place,
        ]),
      ),
      nominal: stemsOf(phrases.numbers.nominal),
      nominalOf: stemsOf(phrases.numbers.nominalOf),
      age: stemsOf(phrases.numbers.age),
    },
  };
}

function meaningOf({ say: _say, unless: _unless, ...meaning }: Sign): SignMeaning {
  return meaning;
}

function spokenOf(phrases: Phrases): SpokenPhrases {
  const { language, numbers, measures, bands, together, outcomes } = phrases;
  const { repairs, replacedMeans, machines } = phrases;
  const rules = { measures, bands, together, outcomes, repairs, replacedMeans };
  return { language, numbers, machines, ...rules };
}

type Owned<Owner> = readonly (readonly [Owner, Phrases["replaced"]])[];

function asidesOf(phrases: Phrases): Owned<Aside> {
  return [
    [{ list: "replaced", id: "replaced" }, phrases.replaced],
    [{ list: "not-replaced", id: "not-replaced" }, phrases.notReplaced],
    [{ list: "urgency", id: "high" }, phrases.urgency.high],
    [{ list: "urgency", id: "low" }, phrases.urgency.low],
    ...[...phrases.components].map(
      ([id, say]) => [{ list: "component", id }, say] satisfies Owned<Aside>[number],
    ),
    ...[...phrases.redFlags].map(
      ([id, say]) => [{ list: "red-flag", id }, say] satisfies Owned<Aside>[number],
    ),
    ...[...phrases.fuels].map(
      ([id, say]) => [{ list: "fuel", id }, say] satisfies Owned<Aside>[number],
    ),
  ];
}

function placesOf(phrases: Phrases): Owned<Place> {
  const lists = [
    ["measure", phrases.measures],
    ["band", phrases.bands],
  ] as const;
  return lists.flatMap(([list, rules]) =>
    rules.flatMap((rule, index) => [
      [{ list, index, rulesOut: false }, rule.near] as const,
      [{ list, index, rulesOut: true }, rule.unless] as const,
    ]),
  );
}
