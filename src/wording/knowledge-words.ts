import { FluentBundle, FluentResource } from "@fluent/bundle";

export interface KnowledgeWordsOptions {
  /** English words by key, from the files of the knowledge. */
  readonly english: ReadonlyMap<string, string>;
  /** Fluent text of each other language's translations, by language. */
  readonly translations: Readonly<Record<string, string>>;
}

/**
 * Makes the look-up of the knowledge's words.
 * @returns the word of a key in a language, or null where that language lacks it
 */
export function createKnowledgeWords(
  options: KnowledgeWordsOptions,
): (key: string, language: string) => string | null {
  const translations = new Map(
    Object.entries(options.translations)
      .filter(([language]) => language !== "en")
      .map(([language, text]) => [language, plainMessages(text)]),
  );
  return (key, language) =>
    (language === "en" ? options.english : translations.get(language))?.get(key) ?? null;
}

/** The messages that are plain text; a word of the knowledge takes no variables. */
function plainMessages(text: string): ReadonlyMap<string, string> {
  // Plain texts are the same in every language: no plural rules, nothing to mark off.
  const bundle = new FluentBundle("en", { useIsolating: false });
  const resource = new FluentResource(text);
  bundle.addResource(resource);
  const words = new Map<string, string>();
  for (const { id } of resource.body) {
    const pattern = bundle.getMessage(id)?.value;
    if (pattern === undefined || pattern === null) continue;
    const errors: Error[] = [];
    const word = bundle.formatPattern(pattern, {}, errors);
    if (errors.length === 0) words.set(id, word);
  }
  return words;
}
