import { basename, dirname, join } from "node:path";
import type { Adapter } from "lowdb";
import type { FileOperations } from "./file-operations.ts";

/** The text of a file, wrapped so that an empty file is not taken for a missing one. */
export interface FileText {
  readonly text: string;
}

/** Where a write begins; a leftover of this name is a write that did not get through. */
export const isLeftover = (name: string): boolean => name.startsWith(".") && name.endsWith(".tmp");

/**
 * Reads and replaces one file as a whole. When `write` resolves, the new text survives a power cut;
 * whenever it is interrupted, the file holds the old text or the new, never a mixture.
 */
export function createDurableFile(path: string, files: FileOperations): Adapter<FileText> {
  const folder = dirname(path);
  const draft = join(folder, `.${basename(path)}.tmp`);
  return {
    async read() {
      const text = await files.read(path);
      return text === null ? null : { text };
    },
    async write({ text }) {
      await files.write(draft, text);
      // Without this a power cut can leave the new name on an empty file.
      await files.sync(draft);
      await files.rename(draft, path);
      // Without this a power cut can bring the old name back after we said "saved".
      await files.sync(folder);
    },
  };
}
