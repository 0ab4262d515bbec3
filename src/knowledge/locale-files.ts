import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";

/** The Fluent texts of one language. */
export interface LocaleTexts {
  readonly language: string;
  /** Messages of the chat by file name, in the order of the names. */
  readonly chat: Readonly<Record<string, string>>;
  /** Translation of the knowledge; null where there is none. English has none: its words stand in
   * the files of the knowledge. */
  readonly knowledge: string | null;
}

export const KNOWLEDGE_FILE = "knowledge.ftl";

/**
 * Reads the Fluent files of every language.
 * @param folder the `locales/` folder; each folder in it is a language
 * @returns the languages, English first
 * @throws what the file system throws when the folder cannot be read
 */
export async function readLocales(folder: string): Promise<LocaleTexts[]> {
  const found = await readdir(folder, { withFileTypes: true });
  const languages = found.filter((entry) => entry.isDirectory()).map((entry) => entry.name);
  languages.sort((a, b) => Number(b === "en") - Number(a === "en") || (a < b ? -1 : 1));
  return Promise.all(languages.map((language) => readLocale(folder, language)));
}

async function readLocale(folder: string, language: string): Promise<LocaleTexts> {
  const names = (await readdir(join(folder, language))).filter((name) => name.endsWith(".ftl"));
  const texts = await Promise.all(
    names.sort().map(async (name) => {
      const text = await readFile(join(folder, language, name), "utf8");
      return [name, text.replaceAll("\r\n", "\n")] as const;
    }),
  );
  return {
    language,
    chat: Object.fromEntries(texts.filter(([name]) => name !== KNOWLEDGE_FILE)),
    knowledge: texts.find(([name]) => name === KNOWLEDGE_FILE)?.[1] ?? null,
  };
}

/** All messages of the chat in one text, as the wording takes them. */
export function chatText(locale: LocaleTexts): string {
  return Object.values(locale.chat).join("\n");
}
