import { basename, dirname } from "node:path";
import type { FileOperations } from "../../src/store/file-operations.ts";

/** The process died at this file operation. */
export class Killed extends Error {}

interface Node {
  /** As a program sees it. */
  text: string;
  /** As the platter has it; null: nothing of it yet. */
  safe: string | null;
}

/**
 * A disk with a cache, as real ones have: what was written but not synced is lost with the power,
 * in part or as a whole; so are renames of a folder that was not synced.
 */
export function createFakeDisk() {
  const folders = new Map<string, Map<string, Node>>();
  const safeFolders = new Map<string, Map<string, Node>>();
  let left = Number.POSITIVE_INFINITY;
  let done = 0;

  /** Counts an operation; at the last one allowed the process dies before or in the middle of it. */
  function step(halfway?: () => void): void {
    if (left <= 0) {
      if (left === 0) halfway?.();
      left = -1;
      throw new Killed();
    }
    left--;
    done++;
  }
  const folderOf = (path: string) => {
    const folder = folders.get(dirname(path));
    if (!folder) throw new Error(`no folder ${dirname(path)}`);
    return folder;
  };

  const files: FileOperations = {
    async read(path) {
      step();
      return folders.get(dirname(path))?.get(basename(path))?.text ?? null;
    },
    async write(path, text) {
      const put = (what: string) => {
        const folder = folderOf(path);
        const node = folder.get(basename(path)) ?? { text: "", safe: null };
        node.text = what;
        folder.set(basename(path), node);
      };
      step(() => put(text.slice(0, text.length / 2)));
      put(text);
    },
    async sync(path) {
      step();
      const folder = folders.get(path);
      if (folder) safeFolders.set(path, new Map(folder));
      const node = folders.get(dirname(path))?.get(basename(path));
      if (node) node.safe = node.text;
    },
    async rename(from, to) {
      step();
      const node = folderOf(from).get(basename(from));
      if (!node) throw new Error(`no file ${from}`);
      folderOf(from).delete(basename(from));
      folderOf(to).set(basename(to), node);
    },
    async remove(path) {
      step();
      folders.get(dirname(path))?.delete(basename(path));
    },
    async makeFolder(path) {
      step();
      if (!folders.has(path)) folders.set(path, new Map());
    },
    async names(folder) {
      step();
      return [...(folders.get(folder)?.keys() ?? [])];
    },
  };

  return {
    files,
    /** Dies at the operation after so many more. */
    dieAfter(operations: number): void {
      left = operations;
    },
    operations: () => done,
    /** A new process: everything a program had written is still there. */
    restart(): void {
      left = Number.POSITIVE_INFINITY;
    },
    /**
     * The power goes: files keep what was synced, or a piece of what was not; each folder is as it
     * was synced, or as it is.
     *
     * @param keepsNames whether unsynced renames happened to reach the platter
     */
    cutPower(keepsNames: boolean): void {
      left = Number.POSITIVE_INFINITY;
      for (const [path, folder] of folders) {
        if (!keepsNames) folders.set(path, new Map(safeFolders.get(path) ?? []));
        for (const node of folder.values()) node.text = node.safe ?? "";
      }
    },
  };
}
