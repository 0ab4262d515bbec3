import { mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Result } from "../domain/result.ts";
import { keptKey, packKept, unpackKept } from "./kept-file.ts";

/** Something that follows from texts alone and takes long to make. */
export interface Making<T> {
  /** Names the file it is kept in; letters, digits and hyphens. */
  readonly name: string;
  /** Everything it follows from, the program's own code excepted. */
  readonly from: readonly string[];
  /** True for what `make` makes; asked of what was read back. */
  readonly is: (value: unknown) => value is T;
  make(): Promise<Result<T>>;
}

/** What was made of texts at an earlier start, so that it need not be made again. */
export interface KeptStore {
  /** As kept, where it was made of the same texts by the same program; else made now. */
  get<T>(making: Making<T>): Promise<Result<T>>;
}

/**
 * Keeps what is made in a folder. What is kept for other texts or by another program, or is damaged,
 * is made and kept anew; mistakes are never kept. Several programs may do so at once.
 *
 * @param folder made when missing
 * @param program stands for the code that makes; see `programDigest`
 */
export function openKeptStore(folder: string, program: string): KeptStore {
  return {
    async get({ name, from, is, make }) {
      const file = `${name}.kept`;
      const key = keptKey([program, name, ...from]);
      const kept = readKept(join(folder, file), key);
      if (is(kept)) return { ok: true, value: kept };
      const made = await make();
      if (made.ok) keep(folder, file, packKept(key, made.value));
      return made;
    },
  };
}

/** Keeps nothing. */
export const noKeptStore: KeptStore = { get: ({ make }) => make() };

function readKept(path: string, key: Buffer): unknown {
  try {
    return unpackKept(key, readFileSync(path));
  } catch {
    return undefined;
  }
}

/** A disk that cannot be written costs time at the next start and nothing else. */
function keep(folder: string, file: string, bytes: Buffer): void {
  try {
    mkdirSync(folder, { recursive: true });
    const half = join(folder, `${file}.${process.pid}.part`);
    writeFileSync(half, bytes);
    renameSync(half, join(folder, file));
  } catch {
    // It was made all the same.
  }
}
