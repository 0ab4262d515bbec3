import stemmers from "snowball-stemmers";
import type { Pattern, PatternPiece, Phrases } from "../domain/phrases.ts";
import { createSpelling, shelveWords, type WordShelves } from "./spelling.ts";
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
  /** What it is made of, as plain data that can be kept; see `openLexicon`. */
  readonly stock: WordStock;
}

/** The words of one language, folded and sorted once. */
export interface WordStock {
  /** Name of the Snowball algorithm. */
  readonly stemmer: string;
  readonly endings: readonly string[];
  readonly sameAs: ReadonlyMap<string, readonly string[]>;
  /** Stems of words that say nothing by themselves. */
  readonly ordinary: ReadonlySet<string>;
  /** Stems of all words that the phrases mention. */
  readonly known: ReadonlySet<string>;
  /** Words that a misspelling may be taken for. */
  readonly shelves: WordShelves;
}

/** What a word of a text stands for. */
interface Meant {
  readonly stems: readonly string[];
  readonly known: boolean;
  readonly corrected: boolean;
}

/** Words remembered, so that the common ones are stemmed and compared once; then no more. */
const REMEMBERED = 20_000;

/** The lexicon of one language, from every word that its phrases mention. */
export function createLexicon(phrases: Phrases): Lexicon {
  const stem = createStem(phrases.stemmer);
  return lexiconOf(stockOf(phrases, stem), stem);
}

/** The lexicon whose words these are. */
export function openLexicon(stock: WordStock): Lexicon {
  return lexiconOf(stock, createStem(stock.stemmer));
}

type Stem = (word: string) => string;

function createStem(name: string): Stem {
  const stemmer = stemmers.newStemmer(name);
  return remembering((word) => stemmer.stem(word));
}

function stockOf(phrases: Phrases, stem: Stem): WordStock {
  const { stemmer, endings } = phrases;
  const plain = (word: string): string => dropEnding(fold(word), endings);
  const sameAs = new Map(
    [...phrases.sameAs].map(([word, words]) => [fold(word), words.map(plain)] as const),
  );
  const mentioned = [...patternWords(phrases), ...phrases.ordinary, ...phrases.known];
  const words = [...new Set(mentioned)].map(plain);
  const ordinary = new Set(phrases.ordinary.map((word) => stem(plain(word))));
  const known = new Set([...words, ...[...sameAs.values()].flat()].map(stem));
  const shelves = shelveWords([...words, ...longEnough(sameAs.keys())]);
  return { stemmer, endings, sameAs, ordinary, known, shelves };
}

function lexiconOf(stock: WordStock, stem: Stem): Lexicon {
  const { endings, sameAs, ordinary, known } = stock;
  const expand = (folded: string): readonly string[] =>
    sameAs.get(folded) ?? sameAs.get(dropEnding(folded, endings)) ?? [folded];
  const wordStems = remembering((word: string): readonly string[] =>
    fold(word)
      .split("-")
      .flatMap(expand)
      .map((part) => stem(dropEnding(part, endings))),
  );
  const oneWord = (word: string): string => wordStems(word).join(" ");
  const spelling = createSpelling(stock.shelves, oneWord);
  const meant = remembering((word: string): Meant => {
    const stems = wordStems(word);
    const isKnown = stems.every((part) => known.has(part));
    const near = isKnown ? null : spelling.nearest(dropEnding(word, endings));
    if (near === null) return { stems, known: isKnown, corrected: false };
    return { stems: wordStems(near), known: true, corrected: true };
  });
  return {
    stems: wordStems,
    tokens: (raw) => raw.flatMap((token) => tokensOf(token, meant)),
    isOrdinary: (part) => ordinary.has(part),
    stock,
  };
}

/** A short misspelling has words of all kinds near it: "flux" is no "flud". */
const LONG_ENOUGH = 6;

function longEnough(words: Iterable<string>): readonly string[] {
  return [...words].filter((word) => word.length >= LONG_ENOUGH);
}

function tokensOf(raw: RawToken, meant: (word: string) => Meant): readonly Token[] {
  if (raw.number) return [tokenOf(raw, raw.text, asFigures)];
  const word = meant(raw.text);
  return word.stems.map((stem, index) => {
    const token = tokenOf(raw, stem, word);
    return index === 0 ? token : { ...token, gap: "none" };
  });
}

const asFigures: Meant = { stems: [], known: true, corrected: false };

/** Written out, as copying whole tokens was a fifth of the time of reading. */
function tokenOf(raw: RawToken, stem: string, word: Meant): Token {
  return {
    text: raw.text,
    stem,
    number: raw.number,
    from: raw.from,
    to: raw.to,
    gap: raw.gap,
    before: raw.before,
    after: raw.after,
    known: word.known,
    corrected: word.corrected,
  };
}

/** The same answer for the same word; only the first so many words are remembered. */
function remembering<Answer>(ask: (word: string) => Answer): (word: string) => Answer {
  const remembered = new Map<string, Answer>();
  return (word) => {
    const before = remembered.get(word);
    if (before !== undefined) return before;
    const answer = ask(word);
    if (remembered.size < REMEMBERED) remembered.set(word, answer);
    return answer;
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
    ...phrases.signs.flatMap((sign) => [...sign.say, ...(sign.unless ?? [])]),
    ...phrases.measures.flatMap((measure) => [...measure.near, ...measure.unless]),
    ...phrases.bands.flatMap((band) => [...band.near, ...band.unless]),
    ...[...lists, phrases.machines, phrases.acts, phrases.names].flatMap((list) =>
      [...list.values()].flat(),
    ),
    ...[...phrases.answers.values()].flatMap((states) => [...states.values()].flat()),
    ...phrases.replaced,
    ...phrases.notReplaced,
    ...phrases.urgency.high,
    ...phrases.urgency.low,
    ...grammar.now,
    ...grammar.before,
    ...grammar.secondHand,
    ...grammar.secondHandAll,
    ...grammar.unreal,
    ...grammar.elsewhere,
    ...grammar.here,
    ...grammar.hedges.flatMap((hedge) => hedge.say),
    ...phrases.numbers.times.flatMap((time) => time.say),
    ...phrases.numbers.zeros.flatMap((zero) => zero.say),
  ];
  // The same piece stands in many patterns.
  const pieces = new Set<PatternPiece>();
  for (const pattern of patterns) for (const piece of pattern) pieces.add(piece);
  const inPatterns = [...pieces].flatMap((piece) =>
    piece.kind === "words" ? piece.any.flatMap((word) => word.replace(/^=/, "").split("-")) : [],
  );
  const numbers = phrases.numbers;
  return [
    ...inPatterns,
    ...phrases.politeness,
    ...grammar.not,
    ...grammar.notAfter,
    ...grammar.or,
    ...grammar.stop,
    ...grammar.perceive,
    ...grammar.joins,
    ...grammar.sequence,
    ...grammar.after,
    ...grammar.fillers,
    ...numbers.words.keys(),
    ...numbers.ordinals.keys(),
    ...[...numbers.units.values()].flat(),
    ...numbers.about,
    ...numbers.rangeWords,
    ...numbers.nominal,
    ...numbers.nominalOf,
    ...numbers.minus,
    ...numbers.belowZero.flatMap((run) => run.split("-")),
    ...numbers.between,
    ...numbers.betweenAnd,
    ...numbers.age,
    ...numbers.ago,
    ...numbers.since,
    ...numbers.months.flat(),
  ];
}
