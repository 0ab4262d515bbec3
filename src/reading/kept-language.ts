import type { SignMeaning, TimeWords, ZeroWords } from "../domain/phrases.ts";
import type { Aside, GrammarWords, Language, Marker, Place, SpokenPhrases } from "./grammar.ts";
import { openLexicon, type WordStock } from "./language.ts";
import type { PatternTable } from "./pattern-table.ts";
import { openPatternIndex } from "./patterns.ts";

/** A language that is ready to read, as plain data: what can be kept from one start to the next. */
export interface LanguageTables {
  readonly phrases: SpokenPhrases;
  readonly stock: WordStock;
  readonly words: GrammarWords;
  readonly signs: PatternTable<SignMeaning>;
  readonly otherwise: PatternTable<SignMeaning>;
  readonly markers: PatternTable<Marker>;
  readonly asides: PatternTable<Aside>;
  readonly times: PatternTable<TimeWords>;
  readonly zeros: PatternTable<ZeroWords>;
  readonly commands: PatternTable<string>;
  readonly acts: PatternTable<string>;
  readonly remedy: PatternTable<"remedy">;
  readonly answers: ReadonlyMap<string, PatternTable<string>>;
  readonly names: PatternTable<string>;
  readonly places: PatternTable<Place>;
}

/** Everything the language is read with; all of it is made ready, which may take a second. */
export function tablesOf(language: Language): LanguageTables {
  return {
    phrases: language.phrases,
    stock: language.lexicon.stock,
    words: language.words,
    signs: language.signs.table(),
    otherwise: language.otherwise.table(),
    markers: language.markers.table(),
    asides: language.asides.table(),
    times: language.times.table(),
    zeros: language.zeros.table(),
    commands: language.commands.table(),
    acts: language.acts.table(),
    remedy: language.remedy.table(),
    answers: new Map([...language.answers].map(([id, index]) => [id, index.table()] as const)),
    names: language.names.table(),
    places: language.places.table(),
  };
}

/** The language of these tables; it reads as the one they were taken from. */
export function openLanguage(tables: LanguageTables): Language {
  return {
    phrases: tables.phrases,
    lexicon: openLexicon(tables.stock),
    words: tables.words,
    signs: openPatternIndex(tables.signs),
    otherwise: openPatternIndex(tables.otherwise),
    markers: openPatternIndex(tables.markers),
    asides: openPatternIndex(tables.asides),
    times: openPatternIndex(tables.times),
    zeros: openPatternIndex(tables.zeros),
    commands: openPatternIndex(tables.commands),
    acts: openPatternIndex(tables.acts),
    remedy: openPatternIndex(tables.remedy),
    answers: new Map(
      [...tables.answers].map(([id, table]) => [id, openPatternIndex(table)] as const),
    ),
    names: openPatternIndex(tables.names),
    places: openPatternIndex(tables.places),
  };
}
