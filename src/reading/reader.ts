import type {
  Phrases,
  Reader,
  ReaderModel,
  ReadingResult,
  ReadOptions,
} from "../domain/reading.ts";
import { answerTo } from "./answers.ts";
import { findAsides } from "./asides.ts";
import { chooseLanguage } from "./choose-language.ts";
import { claimsOf } from "./claims.ts";
import { type Clauses, cutClauses } from "./clauses.ts";
import { compileLanguage, type Language } from "./grammar.ts";
import { placeQuantities } from "./measures.ts";
import { findMentions } from "./mentions.ts";
import { createNumberReader, type NumberReader } from "./numbers.ts";
import { findScopes } from "./scopes.ts";
import { settle } from "./settle.ts";
import { joinMentions } from "./together.ts";
import { tokenise } from "./tokens.ts";
import { uncovered } from "./uncovered.ts";

interface Compiled {
  readonly language: Language;
  readonly numbers: NumberReader;
}

/**
 * A reader of what people type, by rules alone. Reading takes time linear in the text and never
 * fails: what cannot be read is in `notUnderstood`.
 *
 * @param phrases how each language says things; at least one
 */
export function createReader(phrases: readonly Phrases[], model: ReaderModel): Reader {
  const compiled = phrases.map((one): Compiled => {
    const language = compileLanguage(one);
    return { language, numbers: createNumberReader(language.lexicon, one.numbers) };
  });
  const read = (text: string, options: ReadOptions): ReadingResult => {
    const wanted = compiled.filter((one) =>
      options.languages.includes(one.language.phrases.language),
    );
    const tried = wanted.length === 0 ? compiled : wanted;
    const results = tried.map((one) => readIn(text, one, { model, options }));
    return chooseLanguage(text, results, options.languages);
  };
  return { read };
}

interface Input {
  readonly model: ReaderModel;
  readonly options: ReadOptions;
}

function readIn(text: string, { language, numbers }: Compiled, input: Input): ReadingResult {
  const { model, options } = input;
  const tokens = language.lexicon.tokens(tokenise(text));
  const clauses = cutClauses(tokens, language.words);
  const scopes = findScopes(clauses, language);
  const mentions = findMentions(clauses, language, scopes);
  const joints = joinMentions(clauses, mentions, language.phrases.together);
  const asides = findAsides(clauses, language);
  const claims = claimsOf(clauses, mentions, joints);
  const settled = settle(clauses, claims, { model, sequence: language.words.sequence });
  const quantities = numbers.quantities(clauses);
  const volts = options.volts ?? 12;
  const measured = placeQuantities(clauses, quantities, { language, model, scopes, volts });
  const answer = answerTo(clauses, quantities, { language, model, scopes, options });
  const covered = coverage(clauses, [
    ...mentions,
    ...measured.placed,
    ...asides.covered,
    ...answer.covered,
  ]);
  return {
    language: language.phrases.language,
    understood: [
      ...answer.understood,
      ...settled.understood,
      ...measured.states,
      ...measured.values,
    ],
    ambiguous: [...settled.ambiguous, ...measured.ambiguous],
    notUnderstood: uncovered(clauses, covered, {
      lexicon: language.lexicon,
      marked: scopes.marked,
    }),
    denied: settled.denied,
    earlier: settled.earlier,
    implausible: [...answer.implausible, ...measured.implausible],
    replaced: asides.replaced,
    components: asides.components,
    machine: { certainty: 0 },
    urgency: asides.urgency,
    redFlags: asides.redFlags,
    command: answer.command,
  };
}

function coverage(
  text: Clauses,
  stretches: readonly { readonly from: number; readonly to: number }[],
): ReadonlySet<number> {
  const covered = new Set<number>();
  for (const { from, to } of stretches) {
    for (let at = from; at < Math.min(to, text.tokens.length); at += 1) covered.add(at);
  }
  return covered;
}
