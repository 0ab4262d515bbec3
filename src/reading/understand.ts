import type { SignMeaning } from "../domain/phrases.ts";
import type { Found, ReaderModel, ReadingResult, ReadOptions } from "../domain/reading.ts";
import { type ActsTold, actsTold, vainSentences } from "./acts.ts";
import { answerTo } from "./answers.ts";
import { type Asides, findAsides } from "./asides.ts";
import { readBands } from "./bands.ts";
import { claimsOf } from "./claims.ts";
import { type Clauses, cutClauses } from "./clauses.ts";
import { commandOf } from "./commands.ts";
import type { Aside, Language } from "./grammar.ts";
import { type Hinted, machineHints } from "./machine-hints.ts";
import type { KindMatcher } from "./machine-kind.ts";
import { placeQuantities } from "./measures.ts";
import { findMentions, type Mention } from "./mentions.ts";
import { mergeAnswer } from "./merge-answer.ts";
import type { NumberReader } from "./numbers.ts";
import { partsAlone } from "./parts-alone.ts";
import type { Match } from "./patterns.ts";
import type { Quantity } from "./quantity.ts";
import { replacedReadings } from "./replaced.ts";
import { findScopes, type Scopes } from "./scopes.ts";
import { type Settled, settle } from "./settle.ts";
import { signMatches } from "./sign-matches.ts";
import { coverage, overlaps, spanOf } from "./span.ts";
import { joinMentions } from "./together.ts";
import { tokenise } from "./tokens.ts";
import { uncovered } from "./uncovered.ts";
import { isPlainest, zerosIn } from "./zeros.ts";

export interface Compiled {
  readonly language: Language;
  readonly numbers: NumberReader;
  readonly kindOf: KindMatcher;
}

export interface UnderstandInput {
  readonly model: ReaderModel;
  readonly options: ReadOptions;
  /** True where the text tells what put the machine right. */
  readonly remedy?: boolean;
}

/** 12 V where the machine's voltage is not known. */
const USUAL_VOLTS = 12;

interface Signs {
  readonly mentions: readonly Mention[];
  readonly settled: Settled;
  readonly done: ActsTold;
}

/** Reads a message in one language. */
export function understand(
  text: string,
  { language, numbers, kindOf }: Compiled,
  { model, options, remedy = false }: UnderstandInput,
): ReadingResult {
  const tokens = language.lexicon.tokens(tokenise(text));
  const clauses = cutClauses(tokens, language.words);
  const matches = signMatches(clauses, language);
  const scopes = findScopes(clauses, language, matches);
  const named = findAsides(clauses, language, scopes);
  const alone =
    remedy && named.replaced.length === 0
      ? partsAlone(clauses, { parts: named.components, signs: matches }, language)
      : [];
  const asides = alone.length === 0 ? named : { ...named, replaced: alone };
  const told = numbers
    .quantities(clauses, options.now ?? null)
    .filter(({ from }) => !scopes.isUnreal(from));
  const quantities = [
    ...told,
    ...zerosIn(clauses, language).filter(isPlainest(clauses, matches, language)),
  ];
  const volts = options.volts ?? USUAL_VOLTS;
  const banded = readBands(clauses, quantities, { language, model, scopes, matches });
  const rest = quantities.filter((one) => !banded.placed.includes(one));
  const measured = placeQuantities(clauses, rest, { language, model, scopes, volts });
  const zeros = measured.placed.filter((one) => one.none === true);
  const colds = banded.placed.filter((one) => one.value < 0);
  const signs = matches.filter(
    (match) => ![...zeros, ...colds].some((one) => overlaps(match, one)),
  );
  const { mentions, settled, done } = readSigns(clauses, signs, {
    language,
    model,
    asides,
    scopes,
    remedy,
  });
  const expected = options.expecting?.observation;
  // A number whose own place was named is no answer to a question about another one, nor is a bare
  // one in the same breath: "battery 12.5 at rest, 12.1 cranking".
  const placeOf = (one: Quantity): string | undefined => measured.named.get(one);
  const isElsewhere = quantities.some((one) => (placeOf(one) ?? expected) !== expected);
  const unnamed = quantities.filter(
    (one) =>
      placeOf(one) === expected ||
      (placeOf(one) === undefined && (!isElsewhere || one.unit !== null)),
  );
  const input = { language, model, scopes, quantities: unnamed, volts };
  const answer =
    options.expecting === undefined ? null : answerTo(clauses, options.expecting, input);
  const vain = vainSentences(clauses, mentions, language);
  const isAfter = (part: Match<Aside>): boolean =>
    vain.has(clauses.sentences[part.from] ?? 0) || done.covered.some((one) => overlaps(one, part));
  const replaced = replacedReadings(clauses, asides.replaced, {
    language,
    model,
    scopes,
    isAfter,
  });
  const hinted = hintsOf(text, clauses, { quantities, asides, language, kindOf });
  const covered = coverage(clauses, [
    ...hinted.used,
    ...mentions,
    ...measured.placed,
    ...banded.placed,
    ...asides.covered,
    ...done.covered,
    ...(answer?.covered ?? []),
  ]);
  return {
    language: language.phrases.language,
    ...mergeAnswer({
      settled,
      measured,
      others: [...banded.readings, ...replaced],
      answer,
      said: answer?.said ? spanOf(clauses, answer.said) : null,
      expected,
    }),
    notUnderstood: uncovered(clauses, covered, { language, marked: scopes.marked }),
    denied: settled.denied,
    earlier: settled.earlier,
    acts: done.acts,
    implausible: [...(answer?.implausible ?? []), ...measured.implausible],
    ...namedIn(clauses, asides),
    machine: hinted.hints,
    command: commandOf(clauses, language),
    afterwards: false,
  };
}

interface SignParts {
  readonly language: Language;
  readonly model: ReaderModel;
  readonly asides: Asides;
  readonly scopes: Scopes;
  readonly remedy: boolean;
}

function readSigns(
  clauses: Clauses,
  matches: readonly Match<SignMeaning>[],
  parts: SignParts,
): Signs {
  const { language, model, asides, scopes, remedy } = parts;
  const mentions = findMentions(clauses, matches, { language, scopes });
  const real = mentions.filter(({ from }) => !scopes.isUnreal(from));
  const done = actsTold(clauses, {
    language,
    mentions: real,
    replaced: asides.replaced,
    isUnreal: scopes.isUnreal,
    remedy,
  });
  const told = real.filter((mention) => !done.spoken.has(mention));
  const joints = joinMentions(clauses, told, language.phrases.together);
  const taken = coverage(clauses, mentions);
  const sequence = new Set<number>();
  clauses.tokens.forEach((token, at) => {
    if (language.words.sequence.has(token.stem) && !taken.has(at)) sequence.add(at);
  });
  const settled = settle(claimsOf(clauses, told, joints), { model, sequence });
  return { mentions, settled, done };
}

function namedIn(
  clauses: Clauses,
  asides: Asides,
): Pick<ReadingResult, "replaced" | "components" | "redFlags" | "urgency"> {
  const found = (match: Match<Aside>): Found => ({
    id: match.owner.id,
    span: spanOf(clauses, match),
  });
  return {
    replaced: asides.replaced.map(found),
    components: asides.components.map(found),
    redFlags: asides.redFlags.map(found),
    urgency: asides.urgency,
  };
}

interface HintParts {
  readonly quantities: readonly Quantity[];
  readonly asides: Asides;
  readonly language: Language;
  readonly kindOf: KindMatcher;
}

function hintsOf(text: string, clauses: Clauses, parts: HintParts): Hinted {
  const { quantities, asides, language, kindOf } = parts;
  const { words } = language;
  const hints = { quantities, kindOf, fuel: asides.fuel, nominal: words, age: words.age };
  return machineHints(text, clauses, hints);
}
