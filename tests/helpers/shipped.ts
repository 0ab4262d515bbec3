import { join } from "node:path";
import { openKnowledgeFiles } from "../../src/commands/kept-knowledge.ts";
import type { CircuitNetwork } from "../../src/domain/circuit.ts";
import type { Knowledge } from "../../src/domain/knowledge.ts";
import type { Phrases } from "../../src/domain/phrases.ts";
import type { Reader, ReaderModel } from "../../src/domain/reading.ts";
import type { Result } from "../../src/domain/result.ts";
import { openKeptStore } from "../../src/knowledge/kept-store.ts";
import { readPhraseText } from "../../src/knowledge/phrase-texts.ts";
import { readPhrases } from "../../src/knowledge/phrases.ts";
import { codeForm, programDigest } from "../../src/knowledge/program-digest.ts";
import { compileLanguage } from "../../src/reading/grammar.ts";
import { type LanguageTables, openLanguage, tablesOf } from "../../src/reading/kept-language.ts";
import { createReaderOf } from "../../src/reading/reader.ts";

/**
 * What ships, understood once for all test files: they share what is kept under a hash of the files
 * and of the code, as understanding it takes seconds.
 */
const store = openKeptStore(join(".cache", "knowledge"), programDigest());

function need<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw new Error(result.problems.map(({ file, line, says }) => `${file}:${line} ${says}`).join());
}

/** The knowledge as commands use it. */
export async function shippedKnowledge(): Promise<Knowledge> {
  return need(await openKnowledgeFiles(".").knowledge());
}

/** Every starting circuit. */
export async function loadShippedCircuits(): Promise<ReadonlyMap<string, CircuitNetwork>> {
  return need(await openKnowledgeFiles(".").circuits());
}

/** The phrases of a language, whatever the knowledge says. */
export async function shippedPhrases(language: string): Promise<Phrases> {
  const { file, text } = readPhraseText(".", language);
  const made = await store.get({
    name: `phrases-${language}-${codeForm}`,
    from: [file, text],
    is: (value): value is Phrases => isWith(value, "politeness"),
    make: async () => {
      const { phrases, problems } = readPhrases(file, text, null);
      if (phrases === null || problems.length > 0) return { ok: false, problems };
      return { ok: true, value: phrases };
    },
  });
  return need(made);
}

/** A reader of some languages. */
export async function shippedReader(
  model: ReaderModel,
  ...languages: readonly string[]
): Promise<Reader> {
  const closed = languages.map(async (language) => {
    const tables = await tablesIn(language);
    return { language, open: () => openLanguage(tables) };
  });
  return createReaderOf(await Promise.all(closed), model);
}

async function tablesIn(language: string): Promise<LanguageTables> {
  const { file, text } = readPhraseText(".", language);
  const made = await store.get({
    name: `tables-${language}-${codeForm}`,
    from: [file, text],
    is: (value): value is LanguageTables => isWith(value, "signs"),
    make: async () => {
      const phrases = await shippedPhrases(language);
      return { ok: true, value: tablesOf(compileLanguage(phrases)) };
    },
  });
  return need(made);
}

function isWith(value: unknown, key: string): boolean {
  return typeof value === "object" && value !== null && key in value;
}
