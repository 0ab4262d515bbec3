import { mkdtempSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readCircuitTexts, readFlowTexts } from "../knowledge/flow-texts.ts";
import { phraseLanguages, readPhraseText } from "../knowledge/phrase-texts.ts";
import { openKnowledgeFiles } from "./kept-knowledge.ts";

/** A general-purpose library that parses the same files and does nothing else with them. */
const PEER = "yaml";

export interface LoadingBench {
  /** Everything below flows/ and every language, made ready from the texts. */
  readonly anewMs: number;
  /** The same as kept from an earlier start. */
  readonly keptMs: number;
  /** How many times longer it takes anew. */
  readonly ratio: number;
  /** How many times longer the peer takes to parse than what is kept takes to read; null: absent. */
  readonly peer: { readonly name: string; readonly ratio: number | null };
}

/**
 * How long a start waits for its knowledge. Times are of the processor, the least of each.
 *
 * @param root the folder that holds `flows/` and `locales/`
 * @param repeats of each measurement, at least 1
 */
export async function benchLoading(root: string, repeats = 3): Promise<LoadingBench> {
  const folder = mkdtempSync(join(tmpdir(), "turnrow-bench-"));
  try {
    const anew = () => {
      rmSync(folder, { recursive: true });
      return openAll(root, folder);
    };
    const anewMs = await leastOf(anew, repeats);
    const keptMs = await leastOf(() => openAll(root, folder), 2 * repeats);
    const parse = loadPeer();
    const texts = textsOf(root);
    const peerMs = parse && (await leastOf(async () => texts.map(parse), repeats));
    const peer = { name: PEER, ratio: peerMs === null ? null : peerMs / keptMs };
    return { anewMs, keptMs, ratio: anewMs / keptMs, peer };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function openAll(root: string, folder: string): Promise<void> {
  const files = openKnowledgeFiles(root, folder);
  const knowledge = await files.knowledge();
  const languages = knowledge.ok ? await files.languages(knowledge.value) : knowledge;
  if (languages.ok) for (const { open } of languages.value) open();
  await files.circuits();
}

function textsOf(root: string): readonly string[] {
  return [
    ...readFlowTexts(join(root, "flows")).texts,
    ...readCircuitTexts(root),
    ...phraseLanguages(root).map((language) => readPhraseText(root, language)),
  ].map(({ text }) => text);
}

async function leastOf(run: () => Promise<unknown>, repeats: number): Promise<number> {
  let least = Number.POSITIVE_INFINITY;
  for (let round = 0; round < repeats; round += 1) {
    const before = process.cpuUsage();
    await run();
    const { user, system } = process.cpuUsage(before);
    least = Math.min(least, (user + system) / 1000);
  }
  return least;
}

function loadPeer(): ((text: string) => unknown) | null {
  const found: unknown = createRequire(import.meta.url)(PEER);
  const parse = typeof found === "object" && found !== null ? Reflect.get(found, "parse") : null;
  return typeof parse === "function" ? (text) => Reflect.apply(parse, null, [text]) : null;
}
