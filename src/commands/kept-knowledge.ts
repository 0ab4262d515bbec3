import { join } from "node:path";
import type { CircuitNetwork } from "../domain/circuit.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import type { Phrases } from "../domain/phrases.ts";
import type { Problem, Result } from "../domain/result.ts";
import { readCircuitTexts, readFlowTexts } from "../knowledge/flow-texts.ts";
import { type KeptStore, openKeptStore } from "../knowledge/kept-store.ts";
import { phraseLanguages, readPhraseText } from "../knowledge/phrase-texts.ts";
import { codeForm, programDigest } from "../knowledge/program-digest.ts";

/** What is read from `flows/` and `locales/`, from the texts or as kept from an earlier start. */
export interface KnowledgeFiles {
  knowledge(): Promise<Result<Knowledge>>;
  /** @param languages only these, where they have phrases; absent: all there are */
  phrases(known: Knowledge, languages?: readonly string[]): Promise<Result<readonly Phrases[]>>;
  circuits(): Promise<Result<ReadonlyMap<string, CircuitNetwork>>>;
}

/**
 * Opens the files below a root. What understands them is itself only loaded where they have changed
 * since they were last understood: that is most of the time of a short command.
 *
 * @param root the folder that holds `flows/`, `locales/` and the hidden folder of what is kept
 */
export function openKnowledgeFiles(root: string): KnowledgeFiles {
  const store = openKeptStore(join(root, ".cache", "knowledge"), programDigest());
  return {
    knowledge: () => knowledgeIn(root, store),
    phrases: (known, languages) => phrasesIn(root, store, { known, languages }),
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

async function phrasesIn(
  root: string,
  store: KeptStore,
  wanted: { readonly known: Knowledge; readonly languages: readonly string[] | undefined },
): Promise<Result<readonly Phrases[]>> {
  const problems: Problem[] = [];
  const all: Phrases[] = [];
  const { known, languages } = wanted;
  for (const language of phraseLanguages(root)) {
    if (languages?.includes(language) === false) continue;
    const { file, text } = readPhraseText(root, language);
    const read = await store.get({
      name: `phrases-${language}-${codeForm}`,
      from: [known.version, file, text],
      is: isPhrases,
      make: async () => {
        const { knownStates, readPhrases } = await import("../knowledge/phrases.ts");
        const { phrases, problems: found } = readPhrases(file, text, knownStates(known));
        if (phrases === null || found.length > 0) return { ok: false, problems: found };
        return { ok: true, value: phrases };
      },
    });
    if (read.ok) all.push(read.value);
    else problems.push(...read.problems);
  }
  return problems.length === 0 ? { ok: true, value: all } : { ok: false, problems };
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

function isPhrases(value: unknown): value is Phrases {
  return typeof value === "object" && value !== null && "language" in value && "signs" in value;
}

function isCircuits(value: unknown): value is ReadonlyMap<string, CircuitNetwork> {
  return value instanceof Map;
}
