import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { FileText } from "./flow-texts.ts";

/** Languages that have phrases below `<root>/locales`: English first, then by name. */
export function phraseLanguages(root: string): readonly string[] {
  const folder = join(root, "locales");
  return readdirSync(folder)
    .filter((name) => existsSync(join(folder, name, "phrases.yaml")))
    .sort((a, b) => Number(b === "en") - Number(a === "en") || a.localeCompare(b, "en"));
}

/**
 * The text of a language's phrases.
 * @param root the folder that holds `locales/` · @param language one of `phraseLanguages`
 * @throws what the file system throws when it cannot be read
 */
export function readPhraseText(root: string, language: string): FileText {
  const file = `locales/${language}/phrases.yaml`;
  return { file, text: readFileSync(join(root, file), "utf8") };
}
