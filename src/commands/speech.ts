import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Knowledge } from "../domain/knowledge.ts";
import type { Wording } from "../domain/rendered.ts";
import { expectedWords } from "../knowledge/locale-words.ts";
import { createKnowledgeWords } from "../wording/knowledge-words.ts";
import type { ReportTrouble } from "../wording/trouble.ts";
import { createWording } from "../wording/wording.ts";

export interface Speech {
  readonly wording: Wording;
  /** A word of the knowledge, English where the language lacks it, the key where both do. */
  readonly word: (key: string, language: string) => string;
  /** Languages with chat words of their own, English first. */
  readonly languages: readonly string[];
}

const chatFiles = ["units.ftl", "chat.ftl"];

const text = (path: string) => (existsSync(path) ? readFileSync(path, "utf8") : "");

/** Reads the words of every language that has a folder with chat words. */
export function openSpeech(
  root: string,
  knowledge: Knowledge,
  options: { readonly timeZone: string; readonly report?: ReportTrouble },
): Speech {
  const folder = join(root, "locales");
  const languages = readdirSync(folder)
    .filter((name) => existsSync(join(folder, name, "chat.ftl")))
    .sort((a, b) => Number(b === "en") - Number(a === "en") || a.localeCompare(b, "en"));
  const read = (language: string, names: readonly string[]) =>
    names.map((name) => text(join(folder, language, name))).join("\n");
  const knowledgeWord = createKnowledgeWords({
    english: expectedWords(knowledge),
    translations: Object.fromEntries(languages.map((one) => [one, read(one, ["knowledge.ftl"])])),
  });
  const wording = createWording({
    locales: Object.fromEntries(languages.map((one) => [one, read(one, chatFiles)])),
    knowledgeWord,
    timeZone: options.timeZone,
    ...(options.report === undefined ? {} : { report: options.report }),
  });
  const word = (key: string, language: string) =>
    knowledgeWord(key, language) ?? knowledgeWord(key, "en") ?? key;
  return { wording, word, languages };
}
