import type { CircuitNetwork } from "../domain/circuit.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import type { Reader, ReaderModel } from "../domain/reading.ts";
import type { Problem, Result } from "../domain/result.ts";
import { withCircuitLabels } from "../knowledge/circuit-labels.ts";
import { createReaderOf } from "../reading/reader.ts";
import { readerModel } from "../reading/reader-model.ts";
import { type KnowledgeFiles, openKnowledgeFiles } from "./kept-knowledge.ts";

/** What every command that thinks about cases needs. */
export interface Workshop {
  readonly knowledge: Knowledge;
  readonly reader: Reader;
  readonly model: ReaderModel;
  /** Languages the reader knows, English first. */
  readonly languages: readonly string[];
  readonly circuits: ReadonlyMap<string, CircuitNetwork>;
}

/** What the reader alone needs. */
export type ReadingDesk = Pick<Workshop, "knowledge" | "reader" | "model" | "languages">;

/**
 * Reads flows/ without its circuits, and the phrases; every mistake comes back at once.
 *
 * @param languages what is read: only these, where they have phrases; absent: all there are
 */
export function openReadingDesk(
  root: string,
  languages?: readonly string[],
): Promise<Result<ReadingDesk>> {
  return readingDesk(openKnowledgeFiles(root), languages);
}

async function readingDesk(
  files: KnowledgeFiles,
  languages: readonly string[] | undefined,
): Promise<Result<ReadingDesk>> {
  const knowledge = await files.knowledge();
  if (!knowledge.ok) return knowledge;
  const spoken = await files.languages(knowledge.value, languages);
  if (!spoken.ok) return spoken;
  const model = readerModel(knowledge.value);
  return {
    ok: true,
    value: {
      knowledge: knowledge.value,
      reader: createReaderOf(spoken.value, model),
      model,
      languages: spoken.value.map((one) => one.language),
    },
  };
}

/**
 * Reads flows/ and locales/; every mistake in either comes back at once.
 *
 * @param languages as above
 */
export async function openWorkshop(
  root: string,
  languages?: readonly string[],
): Promise<Result<Workshop>> {
  const files = openKnowledgeFiles(root);
  const desk = await readingDesk(files, languages);
  if (!desk.ok) return desk;
  const circuits = await files.circuits();
  if (!circuits.ok) return circuits;
  const knowledge = withCircuitLabels(desk.value.knowledge, circuits.value.values());
  return { ok: true, value: { ...desk.value, knowledge, circuits: circuits.value } };
}

/** Makes every language ready, so that the first message of a chat need not wait for it. */
export function warmUp({ reader, languages, knowledge }: ReadingDesk): void {
  const [first] = knowledge.observations.values();
  reader.read(first?.title ?? "", { languages });
}

/** One plain message for files of the program's own that cannot be used. */
export function brokenFlows(problems: readonly Problem[]): string {
  const count = problems.length === 1 ? "one mistake" : `${problems.length} mistakes`;
  return `The knowledge cannot be used: ${count} in flows/ or locales/. "npm run flows" lists them.\n`;
}
