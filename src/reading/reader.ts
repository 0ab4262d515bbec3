import type { Phrases } from "../domain/phrases.ts";
import type { Reader, ReaderModel } from "../domain/reading.ts";
import { chooseLanguage } from "./choose-language.ts";
import { compileLanguage } from "./grammar.ts";
import { createKindMatcher } from "./machine-kind.ts";
import { createNumberReader } from "./numbers.ts";
import { type Compiled, understand } from "./understand.ts";

/**
 * A reader of what people type, by rules alone. Reading takes time linear in the text and never
 * fails: what cannot be read is in `notUnderstood`.
 *
 * @param phrases how each language says things; at least one
 */
export function createReader(phrases: readonly Phrases[], model: ReaderModel): Reader {
  const compiled = phrases.map((one): Compiled => {
    const language = compileLanguage(one);
    return { language, numbers: createNumberReader(language.lexicon, one.numbers, language.times) };
  });
  const kindOf = createKindMatcher(model.machines);
  return {
    read: (text, options) => {
      const wanted = compiled.filter(({ language }) =>
        options.languages.includes(language.phrases.language),
      );
      const tried = wanted.length === 0 ? compiled : wanted;
      const results = tried.map((one) => understand(text, one, { model, options, kindOf }));
      return chooseLanguage(text, results, options.languages);
    },
  };
}
