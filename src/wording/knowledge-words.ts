import { createLanguagePack } from "./language-pack.ts";
import type { ReportTrouble } from "./trouble.ts";

export interface KnowledgeWordsOptions {
  /** English words by key, from the files of the knowledge. */
  readonly english: ReadonlyMap<string, string>;
  /** Fluent text of each other language's translations, by language. */
  readonly translations: Readonly<Record<string, string>>;
  readonly report?: ReportTrouble;
}

/**
 * Makes the look-up of the knowledge's words.
 * @returns the word of a key in a language, or null where that language lacks it
 */
export function createKnowledgeWords(
  options: KnowledgeWordsOptions,
): (key: string, language: string) => string | null {
  const { english, translations, report = () => {} } = options;
  const packs = new Map(
    Object.entries(translations)
      .filter(([language]) => language !== "en")
      .map(([language, text]) => [language, createLanguagePack(language, text, report)]),
  );
  return (key, language) => {
    if (language === "en") return english.get(key) ?? null;
    const formatted = packs.get(language)?.format(key, {});
    return formatted && formatted.errors.length === 0 ? formatted.text : null;
  };
}
