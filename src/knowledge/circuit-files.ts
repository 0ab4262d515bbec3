import type { z } from "zod";
import type { CircuitNetwork } from "../domain/circuit.ts";
import type { Problem } from "../domain/result.ts";
import { buildCircuit, type SharedCircuitWords } from "./circuit-build.ts";
import { isRecord, layerFiles, problemAtPath } from "./circuit-layers.ts";
import { FaultFileShape, InterlockShape, OilShape } from "./circuit-schema.ts";
import { type FileText, readCircuitTexts } from "./flow-texts.ts";
import { readYaml } from "./read-yaml.ts";
import type { SourceFile } from "./source-file.ts";

/** Every circuit that could be read, and everything that is wrong with the others. */
export interface CircuitFiles {
  readonly circuits: ReadonlyMap<string, CircuitNetwork>;
  readonly problems: readonly Problem[];
}

/** Files that hold no circuit but what circuits share. */
const SHARED = ["faults", "interlocks", "oils"] as const;

/**
 * Reads all circuits of a folder.
 * @param root folder that holds `flows/` · @param folder below it, as shown in problems
 */
export function loadCircuits(root: string, folder = "flows/circuits"): CircuitFiles {
  return readCircuits(readCircuitTexts(root, folder));
}

/** Reads circuits from texts: the part of `loadCircuits` that touches no disk. */
export function readCircuits(texts: readonly FileText[]): CircuitFiles {
  const problems: Problem[] = [];
  const files = new Map<string, SourceFile>();
  for (const { file, text } of texts) {
    const { source, problems: found } = readYaml(file, "circuits", text);
    problems.push(...found);
    if (found.length === 0) files.set(source.id, source);
  }
  const shared = readShared(files, problems);
  const circuits = new Map<string, CircuitNetwork>();
  if (shared === undefined) return { circuits, problems };
  for (const [id, file] of files) {
    if (SHARED.some((name) => name === id)) continue;
    if (isRecord(file.data) && file.data["id"] !== id) {
      problems.push(problemAtPath([file], ["id"], `the id must be the file's name, "${id}"`));
    }
    if (isRecord(file.data) && file.data["abstract"] === true) continue;
    const layers = layerFiles(id, files, problems);
    const circuit = layers && buildCircuit(layers, shared, problems);
    if (circuit !== undefined) circuits.set(id, circuit);
  }
  findUselessFaults(shared, circuits, problems);
  return { circuits, problems: withoutRepeats(problems) };
}

function readShared(
  files: ReadonlyMap<string, SourceFile>,
  problems: Problem[],
): SharedCircuitWords | undefined {
  const read = <T>(name: string, shape: z.ZodType<T>): T | undefined => {
    const file = files.get(name);
    const parsed = shape.safeParse(file?.data);
    if (parsed.success) return parsed.data;
    for (const issue of parsed.error.issues) {
      problems.push(problemAtPath(file === undefined ? [] : [file], issue.path, issue.message));
    }
    return undefined;
  };
  const oils = read("oils", OilShape);
  const interlocks = read("interlocks", InterlockShape);
  const faults = read("faults", FaultFileShape);
  const faultFile = files.get("faults");
  if (oils === undefined || interlocks === undefined) return undefined;
  if (faults === undefined || faultFile === undefined) return undefined;
  return { oils, interlocks, faults, faultFile };
}

/** A fault that no circuit has the parts for is most often a misspelt part. */
function findUselessFaults(
  shared: SharedCircuitWords,
  circuits: ReadonlyMap<string, CircuitNetwork>,
  problems: Problem[],
): void {
  if (problems.length > 0) return;
  const used = new Set([...circuits.values()].flatMap(({ faults }) => faults.map(({ id }) => id)));
  for (const id of Object.keys(shared.faults)) {
    if (used.has(id)) continue;
    const says = `no circuit has all the parts that "${id}" changes; is one misspelt?`;
    problems.push(problemAtPath([shared.faultFile], [id], says));
  }
}

/** A mistake in a file that others build on would otherwise be told once for each of them. */
function withoutRepeats(problems: readonly Problem[]): Problem[] {
  const seen = new Map(problems.map((problem) => [JSON.stringify(problem), problem]));
  return [...seen.values()];
}
