import { join } from "node:path";
import type { DocumentKind, DocumentOf, DocumentStore } from "../cases/ports.ts";
import { formatRules } from "./document-text.ts";
import { disk, type FileOperations, isMissing } from "./file-operations.ts";
import type { Damage } from "./lowdb-store.ts";
import { folders, isStored, readStored } from "./stored-file.ts";

/** Reads documents; nothing can be written through it. */
export type DocumentReader = Pick<DocumentStore, "all">;

export interface LowdbReaderOptions {
  /** A file that cannot be used: told, and left where it is. */
  readonly onDamage: (damage: Damage) => void;
  readonly files?: Pick<FileOperations, "read" | "names">;
}

/**
 * Reads the folder of a program that may be at work there at this moment: its drafts are not tidied
 * away, nothing is set aside, nothing is made. A folder that is not there holds nothing.
 */
export function createLowdbReader(folder: string, options: LowdbReaderOptions): DocumentReader {
  const { onDamage, files = disk } = options;
  async function namesIn(inner: string): Promise<readonly string[]> {
    try {
      return (await files.names(inner)).filter(isStored);
    } catch (error) {
      if (isMissing(error)) return [];
      throw error;
    }
  }
  return {
    async *all<K extends DocumentKind>(kind: K): AsyncIterable<DocumentOf<K>> {
      const inner = join(folder, folders[kind]);
      for (const name of await namesIn(inner)) {
        const path = join(inner, name);
        const stored = await readStored(kind, path, { files, rules: formatRules });
        if (!stored.ok) onDamage({ kind, file: path, why: stored.why });
        else if (stored.document !== null) yield stored.document;
      }
    },
  };
}
