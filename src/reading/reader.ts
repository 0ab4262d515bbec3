import type { Phrases } from "../domain/phrases.ts";
import type { Reader, ReaderModel, ReadingResult } from "../domain/reading.ts";
import { chooseLanguage } from "./choose-language.ts";
import { cutClauses } from "./clauses.ts";
import { compileLanguage, type Language } from "./grammar.ts";
import { createLabelReader, isAfterwards, type LabelReader, tellsRemedy } from "./labels.ts";
import { createKindMatcher, withNames } from "./machine-kind.ts";
import { createNumberReader } from "./numbers.ts";
import { tokenise } from "./tokens.ts";
import { tellsOutcome, withoutSettings } from "./trials.ts";
import { type Compiled, type UnderstandInput, understand } from "./understand.ts";

interface Labelled extends Compiled {
  readonly labelOf: LabelReader;
}

/** A short name, a colon, and the rest of the line. */
const LABEL = /^\s*([^:=\n]{2,60})[:=]/;
/** Longer texts are stories. */
const LONGEST_LABELLED = 300;

/**
 * A reader of what people type, by rules alone. Reading takes time linear in the text and never
 * fails: what cannot be read is in `notUnderstood`. A language is made ready when it is first read.
 *
 * @param phrases how each language says things; at least one
 */
export function createReader(phrases: readonly Phrases[], model: ReaderModel): Reader {
  const languages = phrases.map((one) => {
    return { language: one.language, open: () => compileLanguage(one) };
  });
  return createReaderOf(languages, model);
}

/** A language that is opened when it is first read. */
export interface ClosedLanguage {
  readonly language: string;
  readonly open: () => Language;
}

/** The same of languages that may have been made ready before. */
export function createReaderOf(languages: readonly ClosedLanguage[], model: ReaderModel): Reader {
  const ready = new Map<ClosedLanguage, Labelled>();
  const readyIn = (one: ClosedLanguage): Labelled => {
    const before = ready.get(one);
    if (before !== undefined) return before;
    const language = one.open();
    const { phrases, lexicon, times } = language;
    const numbers = createNumberReader(lexicon, phrases.numbers, times);
    const labelOf = createLabelReader(language, model);
    const kindOf = createKindMatcher(withNames(model.machines, phrases.machines));
    const labelled = { language, numbers, labelOf, kindOf };
    ready.set(one, labelled);
    return labelled;
  };
  return {
    read: (text, options) => {
      const wanted = languages.filter(({ language }) => options.languages.includes(language));
      const tried = wanted.length === 0 ? languages : wanted;
      const results = tried.map((one) => readIn(text, readyIn(one), { model, options }));
      return chooseLanguage(text, results, options.languages);
    },
  };
}

/** Where words stand under a name, they are first tried as the answer about the thing it names. */
function readIn(text: string, one: Labelled, input: UnderstandInput): ReadingResult {
  const { label: given, expecting } = input.options;
  const inText = given === undefined ? labelIn(text) : null;
  const label = given ?? inText?.[1]?.trim();
  if (label === undefined || expecting !== undefined) return understand(text, one, input);
  const remedy = input.options.mended === true && tellsRemedy(label, one.language);
  const joined = given === undefined ? withoutColon(text, inText) : `${given} ${text}`;
  const inOne = understand(joined, one, { ...input, remedy });
  const apart = given === undefined ? understand(text, one, { ...input, remedy }) : inOne;
  const whole = saysNothing(apart) ? inOne : apart;
  const full = { ...whole, afterwards: remedy || isAfterwards(label, one.language) };
  const observation = one.labelOf(label);
  const said = given === undefined ? withoutLabel(text, inText) : text;
  if (observation === null) {
    const end = given === undefined ? (inText?.[0].length ?? 0) : given.length;
    return underOtherName(full, { said, end, model: input.model, one });
  }
  // What was done and what came of it may stand on both sides of the colon.
  if (remedy || full.acts.length > 0) return full;
  const options = { ...input.options, expecting: { observation } };
  const answered = understand(said, one, { ...input, options });
  if (!isAbout(answered, observation)) return full;
  // "brake switch: tested, good" answers about its plug and clears the switch; a look does not.
  const cleared = inOne.denied.filter(
    (denial) => denial.observation !== observation && denial.hedge === 0,
  );
  return { ...answered, denied: [...answered.denied, ...cleared] };
}

/** What stands under a name that is nothing to observe: "fuel tap nearly shut: keeps running". */
function underOtherName(
  full: ReadingResult,
  { said, end, model, one }: { said: string; end: number; model: ReaderModel; one: Labelled },
): ReadingResult {
  const isList = (id: string): boolean => model.observations.get(id)?.kind === "list";
  if (isOutcome(said, one)) return withoutSettings(full, end, isList);
  // "tried to crank: no" tells nothing of what cranking would have shown.
  return isBareDenial(said, one) ? { ...full, ambiguous: [] } : full;
}

function saysNothing({ understood, denied, ambiguous, acts }: ReadingResult): boolean {
  return understood.length + denied.length + ambiguous.length + acts.length === 0;
}

function isOutcome(said: string, { language }: Labelled): boolean {
  const tokens = language.lexicon.tokens(tokenise(said));
  return tellsOutcome(cutClauses(tokens, language.words), language);
}

function isBareDenial(said: string, { language }: Labelled): boolean {
  const tokens = language.lexicon.tokens(tokenise(said));
  return tokens.length > 0 && tokens.every(({ stem }) => language.words.not.has(stem));
}

function labelIn(text: string): RegExpExecArray | null {
  const isLine = text.length <= LONGEST_LABELLED && !text.trim().includes("\n");
  const found = isLine ? LABEL.exec(text) : null;
  return found === null || text.slice(found[0].length).trim() === "" ? null : found;
}

/** "relay: burnt" as "relay  burnt"; spans stay those of the whole text. */
function withoutColon(text: string, label: RegExpExecArray | null): string {
  const length = label?.[0].length ?? 0;
  return length === 0 ? text : `${text.slice(0, length - 1)} ${text.slice(length)}`;
}

/** Blanks in its place, so that spans stay those of the whole text. */
function withoutLabel(text: string, label: RegExpExecArray | null): string {
  const length = label?.[0].length ?? 0;
  return " ".repeat(length) + text.slice(length);
}

function isAbout(result: ReadingResult, observation: string): boolean {
  return [...result.understood, ...result.denied, ...result.implausible].some(
    (one) => one.observation === observation,
  );
}
