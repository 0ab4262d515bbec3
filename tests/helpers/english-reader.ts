import type { Phrases } from "../../src/domain/phrases.ts";
import type { Reader, ReadingResult, ReadOptions } from "../../src/domain/reading.ts";
import { loadPhrases } from "../../src/knowledge/phrases.ts";
import { createReader } from "../../src/reading/reader.ts";
import { coreModel } from "./core-model.ts";

export const model = coreModel();

const loaded = loadPhrases(".", null);
if (!loaded.ok) throw new Error(loaded.problems.map((problem) => problem.says).join("\n"));

export const allPhrases: readonly Phrases[] = loaded.value;
export const english: Phrases = englishOf(allPhrases);

function englishOf(all: readonly Phrases[]): Phrases {
  const found = all.find((one) => one.language === "en");
  if (found === undefined) throw new Error("there are no English phrases");
  return found;
}

export const reader: Reader = createReader([english], model);

export function read(text: string, options: Partial<ReadOptions> = {}): ReadingResult {
  return reader.read(text, { languages: ["en"], ...options });
}

/** What a text says for certain: `observation=state` and `observation=value`, sorted. */
export function says(text: string, options: Partial<ReadOptions> = {}): readonly string[] {
  return read(text, options)
    .understood.map((one) => `${one.observation}=${"state" in one ? one.state : one.value}`)
    .sort();
}

/** The options of everything a text leaves open. */
export function leavesOpen(text: string): readonly string[] {
  return read(text).ambiguous.flatMap((one) =>
    one.options.map((option) => `${option.observation}=${option.state ?? option.value}`),
  );
}
