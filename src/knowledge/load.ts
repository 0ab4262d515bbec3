import { createHash } from "node:crypto";
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Knowledge } from "../domain/knowledge.ts";
import type { Problem, Result } from "../domain/result.ts";
import { buildKnowledge } from "./build-knowledge.ts";
import { checkApart } from "./check-apart.ts";
import { checkDeadEnds } from "./check-dead-ends.ts";
import { checkReferences } from "./check-references.ts";
import { checkSafety } from "./check-safety.ts";
import { checkSense } from "./check-sense.ts";
import { gather } from "./gather.ts";
import { readYaml } from "./read-yaml.ts";
import type { SourceFile } from "./source-file.ts";

const folders = ["systems", "questions", "shared", "machines"] as const;

/** The text of one file below `flows/`. */
export interface FlowText {
  /** Folder and name, for example `systems/battery.yaml`. */
  readonly path: string;
  readonly text: string;
}

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
  const texts: FlowText[] = [];
  for (const name of folders) {
    for (const file of await yamlNames(join(folder, name))) {
      const path = `${name}/${file}`;
      texts.push({ path, text: await readFile(join(folder, path), "utf8") });
    }
  }
  const stray = await strayFiles(folder);
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

/** Names of the YAML files of a folder; a leading underscore hides a file. */
async function yamlNames(folder: string): Promise<string[]> {
  const names = await readdir(folder).catch(() => []);
  return names.filter((name) => name.endsWith(".yaml") && !name.startsWith("_")).sort();
}

/** Files that nobody would read: a wrong ending, or a place outside the known folders. */
async function strayFiles(root: string): Promise<Problem[]> {
  const names = await readdir(root, { recursive: true }).catch(() => []);
  return names
    .map((name) => name.replaceAll("\\", "/"))
    .filter((name) => /\.yml$/.test(name) || (name.endsWith(".yaml") && !name.includes("/")))
    .map((name) => ({
      file: `flows/${name}`,
      says:
        "This file is not read: knowledge stands in systems/, questions/, shared/ or " +
        "machines/, in files ending in .yaml.",
    }));
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
