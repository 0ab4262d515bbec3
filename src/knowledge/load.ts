import { createHash } from "node:crypto";
import type { Knowledge } from "../domain/knowledge.ts";
import type { Problem, Result } from "../domain/result.ts";
import { buildKnowledge } from "./build-knowledge.ts";
import { checkApart } from "./check-apart.ts";
import { checkDeadEnds } from "./check-dead-ends.ts";
import { checkReferences } from "./check-references.ts";
import { checkSafety } from "./check-safety.ts";
import { checkSense } from "./check-sense.ts";
import { type FlowText, type FlowTexts, readFlowTexts } from "./flow-texts.ts";
import { gather } from "./gather.ts";
import { readYaml } from "./read-yaml.ts";
import type { SourceFile } from "./source-file.ts";

/**
 * How much is checked. `usable` leaves out whether every two faults can be told apart, which is
 * half of the work and matters to those who write: with two alike the program still works.
 */
export type Depth = "whole" | "usable";

/**
 * Reads and checks the knowledge: text, shape, references, sense, in this order.
 * @param folder the `flows/` folder
 * @returns the knowledge, or every mistake at once with its file and line; what cannot be read is
 *   set aside item by item, so that one mistake neither hides others nor is reported many times
 * @throws what the file system throws when a file cannot be read
 */
export async function loadKnowledge(
  folder: string,
  depth: Depth = "whole",
): Promise<Result<Knowledge>> {
  return understandFlows(readFlowTexts(folder), depth);
}

/** What `loadKnowledge` makes of the texts it reads. */
export function understandFlows({ texts, stray }: FlowTexts, depth: Depth): Result<Knowledge> {
  const read = readKnowledge(texts, depth);
  if (stray.length === 0) return read;
  return { ok: false, problems: inOrder([...stray, ...(read.ok ? [] : read.problems)]) };
}

/** The part of `loadKnowledge` that touches no disk. */
export function readKnowledge(
  texts: readonly FlowText[],
  depth: Depth = "whole",
): Result<Knowledge> {
  const problems: Problem[] = [];
  const files: SourceFile[] = [];
  const unread: string[] = [];
  for (const { path, text } of texts) {
    const read = readYaml(`flows/${path}`, path.split("/")[0] ?? "", text);
    problems.push(...read.problems);
    unread.push(...read.ids);
    if (read.problems.length === 0) files.push(read.source);
  }
  const { gathered, problems: shape } = gather(files, unread);
  const references = checkReferences(gathered);
  const { knowledge, problems: rows } = buildKnowledge(gathered, fingerprint(files));
  problems.push(...shape, ...references, ...rows, ...checkSafety(gathered));
  if (gathered.broken.size === 0) problems.push(...checkSense(gathered));
  // A misspelt id makes faults look alike and things look unused; that is one mistake, not three.
  const settled = shape.length + references.length + rows.length === 0;
  if (knowledge !== undefined && settled && gathered.broken.size === 0) {
    problems.push(...checkDeadEnds(gathered, knowledge));
    if (depth === "whole") problems.push(...checkApart(gathered, knowledge));
  }
  if (problems.length > 0 || knowledge === undefined) {
    return { ok: false, problems: inOrder(problems) };
  }
  return { ok: true, value: knowledge };
}

function fingerprint(files: readonly SourceFile[]): string {
  const content = files.map(({ folder, id, data }) => [folder, id, data]);
  return createHash("sha256").update(JSON.stringify(content)).digest("hex").slice(0, 16);
}

function inOrder(problems: readonly Problem[]): Problem[] {
  return [...problems].sort(
    (a, b) => (a.file ?? "").localeCompare(b.file ?? "") || (a.line ?? 0) - (b.line ?? 0),
  );
}
