import { join } from "node:path";
import type { CircuitNetwork } from "../domain/circuit.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import type { Phrases } from "../domain/phrases.ts";
import type { Problem, Result } from "../domain/result.ts";
import { type FileText, readCircuitTexts, readFlowTexts } from "../knowledge/flow-texts.ts";
import { type KeptStore, openKeptStore } from "../knowledge/kept-store.ts";
import { phraseLanguages, readPhraseText } from "../knowledge/phrase-texts.ts";
import { codeForm, programDigest } from "../knowledge/program-digest.ts";
import { compileLanguage, type Language } from "../reading/grammar.ts";
import { type LanguageTables, openLanguage, tablesOf } from "../reading/kept-language.ts";
import type { ClosedLanguage } from "../reading/reader.ts";

/** What is read from `flows/` and `locales/`, from the texts or as kept from an earlier start. */
export interface KnowledgeFiles {
  knowledge(): Promise<Result<Knowledge>>;
  /**
   * How each language says things, to be opened when it is first read.
   * @param languages only these, where they have phrases; absent: all there are
   */
  languages(
    known: Knowledge,
    languages?: readonly string[],
  ): Promise<Result<readonly ClosedLanguage[]>>;
  circuits(): Promise<Result<ReadonlyMap<string, CircuitNetwork>>>;
}

/**
 * Opens the files below a root. What understands them is itself only loaded where they have changed
 * since they were last understood: that is most of the time of a short command.
 *
 * @param root the folder that holds `flows/` and `locales/`
 * @param folder where what is kept stands
 */
export function openKnowledgeFiles(
  root: string,
  folder = join(root, ".cache", "knowledge"),
): KnowledgeFiles {
  const store = openKeptStore(folder, programDigest());
  return {
    knowledge: () => knowledgeIn(root, store),
    languages: (known, languages) => languagesIn(root, store, { known, languages }),
    circuits: () => circuitsIn(root, store),
  };
}

function knowledgeIn(root: string, store: KeptStore): Promise<Result<Knowledge>> {
  const all = readFlowTexts(join(root, "flows"));
  return store.get({
    name: `knowledge-${codeForm}`,
    from: [JSON.stringify(all.stray), ...all.texts.flatMap(({ path, text }) => [path, text])],
    is: isKnowledge,
    make: async () => (await import("../knowledge/load.ts")).understandFlows(all, "usable"),
  });
}

async function languagesIn(
  root: string,
  store: KeptStore,
  wanted: { readonly known: Knowledge; readonly languages: readonly string[] | undefined },
): Promise<Result<readonly ClosedLanguage[]>> {
  const problems: Problem[] = [];
  const all: ClosedLanguage[] = [];
  const { known, languages } = wanted;
  for (const language of phraseLanguages(root)) {
    if (languages?.includes(language) === false) continue;
    const phrases = readPhraseText(root, language);
    const thing = {
      name: `language-${language}-${codeForm}`,
      from: [known.version, phrases.file, phrases.text],
      is: isLanguage,
    };
    const tables = store.find(thing);
    if (tables !== undefined) {
      all.push({ language, open: () => openLanguage(tables) });
      continue;
    }
    const understood = await understandPhrases(phrases, known);
    if (understood.ok) {
      const { value } = understood;
      all.push({ language, open: () => openedAndKept(value, (made) => store.keep(thing, made)) });
    } else problems.push(...understood.problems);
  }
  return problems.length === 0 ? { ok: true, value: all } : { ok: false, problems };
}

/** Made ready only when it is first read, so that a start need not wait for it. */
function openedAndKept(phrases: Phrases, keep: (tables: LanguageTables) => void): Language {
  const language = compileLanguage(phrases);
  keep(tablesOf(language));
  return language;
}

async function understandPhrases(
  { file, text }: FileText,
  known: Knowledge,
): Promise<Result<Phrases>> {
  const { knownStates, readPhrases } = await import("../knowledge/phrases.ts");
  const { phrases, problems } = readPhrases(file, text, knownStates(known));
  if (phrases === null || problems.length > 0) return { ok: false, problems };
  return { ok: true, value: phrases };
}

function circuitsIn(
  root: string,
  store: KeptStore,
): Promise<Result<ReadonlyMap<string, CircuitNetwork>>> {
  const texts = readCircuitTexts(root);
  return store.get({
    name: `circuits-${codeForm}`,
    from: texts.flatMap(({ file, text }) => [file, text]),
    is: isCircuits,
    make: async () => {
      const { readCircuits } = await import("../knowledge/circuit-files.ts");
      const { circuits, problems } = readCircuits(texts);
      return problems.length > 0 ? { ok: false, problems } : { ok: true, value: circuits };
    },
  });
}

// What is asked of kept data is little: its digest says already that it is what was written.

function isKnowledge(value: unknown): value is Knowledge {
  if (typeof value !== "object" || value === null) return false;
  return "version" in value && "faults" in value && value.faults instanceof Map;
}

function isLanguage(value: unknown): value is LanguageTables {
  return typeof value === "object" && value !== null && "phrases" in value && "signs" in value;
}

function isCircuits(value: unknown): value is ReadonlyMap<string, CircuitNetwork> {
  return value instanceof Map;
}
