import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Problem } from "../domain/result.ts";

const folders = ["systems", "questions", "shared", "machines"] as const;

/** The text of one file below `flows/`. */
export interface FlowText {
  /** Folder and name, for example `systems/battery.yaml`. */
  readonly path: string;
  readonly text: string;
}

/** The text of one file, and how people are told which. */
export interface FileText {
  readonly file: string;
  readonly text: string;
}

/** All texts of the knowledge, circuits excepted. */
export interface FlowTexts {
  readonly texts: readonly FlowText[];
  /** Files that nobody would read: a wrong ending, or a place outside the known folders. */
  readonly stray: readonly Problem[];
}

/**
 * Reads the texts of the knowledge and understands none of them.
 * @param folder the `flows/` folder
 * @throws what the file system throws when a file cannot be read
 */
export function readFlowTexts(folder: string): FlowTexts {
  const texts = folders.flatMap((name) =>
    yamlNames(join(folder, name)).map((file) => {
      const path = `${name}/${file}`;
      return { path, text: readFileSync(join(folder, path), "utf8") };
    }),
  );
  return { texts, stray: strayFiles(folder) };
}

/**
 * The texts of the starting circuits, by the names that problems give them.
 * @param root folder that holds `flows/` · @param folder below it
 * @throws what the file system throws when one cannot be read
 */
export function readCircuitTexts(root: string, folder = "flows/circuits"): readonly FileText[] {
  return readdirSync(join(root, folder))
    .filter((name) => name.endsWith(".yaml"))
    .sort()
    .map((name) => ({
      file: `${folder}/${name}`,
      text: readFileSync(join(root, folder, name), "utf8"),
    }));
}

/** Names of the YAML files of a folder; a leading underscore hides a file. */
function yamlNames(folder: string): string[] {
  return namesIn(folder)
    .filter((name) => name.endsWith(".yaml") && !name.startsWith("_"))
    .sort();
}

function strayFiles(root: string): Problem[] {
  return namesIn(root, true)
    .map((name) => name.replaceAll("\\", "/"))
    .filter((name) => /\.yml$/.test(name) || (name.endsWith(".yaml") && !name.includes("/")))
    .map((name) => ({
      file: `flows/${name}`,
      says:
        "This file is not read: knowledge stands in systems/, questions/, shared/ or " +
        "machines/, in files ending in .yaml.",
    }));
}

/** What stands in a folder; a folder that is not there holds nothing. */
function namesIn(folder: string, recursive = false): string[] {
  try {
    return readdirSync(folder, { recursive, encoding: "utf8" });
  } catch {
    return [];
  }
}
