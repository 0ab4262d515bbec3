import { mkdir, open, readdir, readFile, rename, rm } from "node:fs/promises";

/** The few things done to files; tests kill between any two of them. */
export interface FileOperations {
  /** The text of a file; null where there is none. */
  read(path: string): Promise<string | null>;
  write(path: string, text: string): Promise<void>;
  /** Returns when what was written to the file, or changed in the folder, is on the disk itself. */
  sync(path: string): Promise<void>;
  rename(from: string, to: string): Promise<void>;
  /** Removes a file; one that is not there is fine. */
  remove(path: string): Promise<void>;
  makeFolder(path: string): Promise<void>;
  names(folder: string): Promise<readonly string[]>;
}

/** True of what the disk says where there is no such file or folder. */
export const isMissing = (error: unknown): boolean =>
  error instanceof Error && "code" in error && error.code === "ENOENT";

/** Some systems (Windows) do not open folders; they keep renames without being told. */
const isFolderRefusal = (error: unknown): boolean =>
  error instanceof Error &&
  "code" in error &&
  (error.code === "EISDIR" || error.code === "EPERM" || error.code === "EINVAL");

/** The real disk. */
export const disk: FileOperations = {
  async read(path) {
    try {
      return await readFile(path, "utf8");
    } catch (error) {
      if (isMissing(error)) return null;
      throw error;
    }
  },
  async write(path, text) {
    // Documents hold phone numbers and places: nobody else on the machine may read them.
    const file = await open(path, "w", 0o600);
    try {
      await file.writeFile(text, "utf8");
    } finally {
      await file.close();
    }
  },
  async sync(path) {
    try {
      const file = await open(path, "r");
      try {
        await file.sync();
      } finally {
        await file.close();
      }
    } catch (error) {
      if (!isFolderRefusal(error)) throw error;
    }
  },
  rename,
  remove: (path) => rm(path, { force: true }),
  makeFolder: async (path) => void (await mkdir(path, { recursive: true, mode: 0o700 })),
  names: (folder) => readdir(folder),
};
