import type { Phrases } from "../../src/domain/phrases.ts";
import type { Reader, ReadingResult, ReadOptions } from "../../src/domain/reading.ts";
import { coreModel } from "./core-model.ts";
import { shippedPhrases, shippedReader } from "./shipped.ts";

export const model = coreModel();

export const english: Phrases = await shippedPhrases("en");

export const reader: Reader = await shippedReader(model, "en");

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
