import { createHash } from "node:crypto";
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Knowledge } from "../domain/knowledge.ts";
import type { Problem, Result } from "../domain/result.ts";
import { buildKnowledge } from "./build-knowledge.ts";
import { checkReferences } from "./check-references.ts";
import { checkSafety } from "./check-safety.ts";
import { checkSense } from "./check-sense.ts";
import { gather } from "./gather.ts";
import { readYaml } from "./read-yaml.ts";
import type { SourceFile } from "./source-file.ts";

const folders = ["systems", "questions", "shared", "machines"] as const;

/**
 * Reads and checks the knowledge: text, shape, references, sense, in this order.
 * @param folder the `flows/` folder
 * @returns the knowledge, or every mistake at once with its file and line; a later stage runs only
 *   over what the earlier ones could read, so that one mistake is not reported many times
 */
export async function loadKnowledge(folder: string): Promise<Result<Knowledge>> {
  const { files, problems } = await readFiles(folder);
  const shape = gather(files);
  problems.push(...shape.problems);
  if (problems.length > 0) return { ok: false, problems: inOrder(problems) };
  const references = checkReferences(shape.gathered);
  const { knowledge, problems: rows } = buildKnowledge(shape.gathered, fingerprint(files));
  problems.push(...references, ...rows, ...checkSafety(shape.gathered));
  if (problems.length > 0 || knowledge === undefined) {
    return { ok: false, problems: inOrder(problems) };
  }
  const sense = checkSense(shape.gathered, knowledge);
  return sense.length > 0
    ? { ok: false, problems: inOrder(sense) }
    : { ok: true, value: knowledge };
}

async function readFiles(root: string): Promise<{ files: SourceFile[]; problems: Problem[] }> {
  const files: SourceFile[] = [];
  const problems: Problem[] = [];
  for (const folder of folders) {
    for (const name of await yamlNames(join(root, folder))) {
      const text = await readFile(join(root, folder, `${name}.yaml`), "utf8");
      const read = readYaml(`flows/${folder}/${name}.yaml`, folder, text);
      problems.push(...read.problems);
      if (read.problems.length === 0) files.push(read.source);
    }
  }
  problems.push(...(await strayFiles(root)));
  return { files, problems };
}

/** Names of the YAML files of a folder without their ending; a leading underscore hides a file. */
async function yamlNames(folder: string): Promise<string[]> {
  const names = await readdir(folder).catch(() => []);
  return names
    .filter((name) => name.endsWith(".yaml") && !name.startsWith("_"))
    .map((name) => name.slice(0, -".yaml".length))
    .sort();
}

/** Files that nobody would read: a wrong ending, or a place outside the known folders. */
async function strayFiles(root: string): Promise<Problem[]> {
  const names = await readdir(root, { recursive: true }).catch(() => []);
  return names
    .map((name) => name.replaceAll("\\", "/"))
    .filter((name) => /\.yml$/.test(name) || (name.endsWith(".yaml") && !name.includes("/")))
    .map((name) => ({
      file: `flows/${name}`,
      says: "This file is not read: knowledge stands in systems/, questions/, shared/ or machines/, in files ending in .yaml.",
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
