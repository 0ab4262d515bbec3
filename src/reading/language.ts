import stemmers from "snowball-stemmers";
import type { Pattern, Phrases } from "../domain/reading.ts";
import { createSpelling } from "./spelling.ts";
import type { Gap, RawToken } from "./tokens.ts";
import { fold } from "./tokens.ts";

/** A word of the text as the patterns see it. */
export interface Token {
  readonly text: string;
  readonly stem: string;
  readonly number: boolean;
  readonly from: number;
  readonly to: number;
  readonly gap: Gap;
  readonly before: string;
  readonly after: string;
  /** True where the language's phrases know the word, as it stands or corrected. */
  readonly known: boolean;
  /** True where it was taken for a misspelling. */
  readonly corrected: boolean;
}

/** Words of one language: their stems, their other spellings, and the nearest known word. */
export interface Lexicon {
  /** The stems a written word of a pattern stands for (more than one for "won't"). */
  stems(word: string): readonly string[];
  tokens(raw: readonly RawToken[]): readonly Token[];
  /** True where the word says nothing by itself. */
  isOrdinary(stem: string): boolean;
}

/** A word seldom comes with more different spellings than this in one run of the program. */
const REMEMBERED_STEMS = 20_000;

/** The lexicon of one language, from every word that its phrases mention. */
export function createLexicon(phrases: Phrases): Lexicon {
  const stem = rememberingStemmer(phrases.stemmer);
  const plain = (word: string): string => dropEnding(fold(word), phrases.endings);
  const sameAs = new Map(
    [...phrases.sameAs].map(([word, words]) => [fold(word), words.map(plain)] as const),
  );
  const words = [...patternWords(phrases), ...phrases.ordinary].map(plain);
  const ordinary = new Set(phrases.ordinary.map((word) => stem(plain(word))));
  const known = new Set([...words, ...[...sameAs.values()].flat()].map(stem));
  const spelling = createSpelling([...words, ...sameAs.keys()], stem);
  const expand = (folded: string): readonly string[] =>
    sameAs.get(folded) ?? sameAs.get(dropEnding(folded, phrases.endings)) ?? [folded];

  const wordStems = (word: string): readonly string[] =>
    fold(word)
      .split("-")
      .flatMap(expand)
      .map((part) => stem(dropEnding(part, phrases.endings)));

  const tokensOf = (raw: RawToken): readonly Token[] => {
    const { text, number, from, to, before, after } = raw;
    const base = { text, number, from, to, before, after };
    if (number) return [{ ...base, stem: text, gap: raw.gap, known: true, corrected: false }];
    const stemsHere = wordStems(text);
    const isKnown = stemsHere.every((part) => known.has(part));
    const near = isKnown ? null : spelling.nearest(dropEnding(text, phrases.endings));
    const stemsMeant = near === null ? stemsHere : wordStems(near);
    return stemsMeant.map((part, index) => ({
      ...base,
      stem: part,
      gap: index === 0 ? raw.gap : "none",
      known: isKnown || near !== null,
      corrected: near !== null,
    }));
  };

  return {
    stems: wordStems,
    tokens: (raw) => raw.flatMap(tokensOf),
    isOrdinary: (part) => ordinary.has(part),
  };
}

function rememberingStemmer(algorithm: string): (word: string) => string {
  const stemmer = stemmers.newStemmer(algorithm);
  const remembered = new Map<string, string>();
  return (word) => {
    const before = remembered.get(word);
    if (before !== undefined) return before;
    const stem = stemmer.stem(word);
    if (remembered.size < REMEMBERED_STEMS) remembered.set(word, stem);
    return stem;
  };
}

function dropEnding(word: string, endings: readonly string[]): string {
  const ending = endings.find((one) => word.length > one.length && word.endsWith(one));
  return ending === undefined ? word : word.slice(0, word.length - ending.length);
}

function patternWords(phrases: Phrases): readonly string[] {
  const grammar = phrases.grammar;
  const lists = [phrases.components, phrases.redFlags, phrases.commands, phrases.fuels];
  const patterns: readonly Pattern[] = [
    ...phrases.signs.flatMap((sign) => sign.say),
    ...phrases.measures.flatMap((measure) => [...measure.near, ...measure.unless]),
    ...phrases.bands.flatMap((band) => [...band.near, ...band.unless]),
    ...[...lists, phrases.machines].flatMap((list) => [...list.values()].flat()),
    ...phrases.replaced,
    ...phrases.notReplaced,
    ...phrases.urgency.high,
    ...phrases.urgency.low,
    ...grammar.now,
    ...grammar.before,
    ...grammar.secondHand,
    ...grammar.secondHandAll,
    ...grammar.unreal,
    ...grammar.hedges.flatMap((hedge) => hedge.say),
    ...phrases.numbers.times.flatMap((time) => time.say),
  ];
  const inPatterns = patterns.flatMap((pattern) =>
    pattern.flatMap((piece) =>
      piece.kind === "words" ? piece.any.flatMap((word) => word.split("-")) : [],
    ),
  );
  const numbers = phrases.numbers;
  return [
    ...inPatterns,
    ...grammar.not,
    ...grammar.notAfter,
    ...grammar.or,
    ...grammar.stop,
    ...grammar.perceive,
    ...grammar.joins,
    ...grammar.sequence,
    ...grammar.fillers,
    ...numbers.words.keys(),
    ...numbers.ordinals.keys(),
    ...[...numbers.units.values()].flat(),
    ...numbers.about,
    ...numbers.rangeWords,
    ...numbers.nominal,
    ...numbers.between,
    ...numbers.betweenAnd,
    ...numbers.age,
    ...numbers.ago,
    ...numbers.since,
    ...numbers.months.flat(),
  ];
}
