import { mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Result } from "../domain/result.ts";
import { keptKey, packKept, unpackKept } from "./kept-file.ts";

/** Something that follows from texts alone. */
export interface KeptThing<T> {
  /** Names the file it is kept in; letters, digits and hyphens. */
  readonly name: string;
  /** Everything it follows from, the program's own code excepted. */
  readonly from: readonly string[];
  /** True for what may be kept here; asked of what was read back. */
  readonly is: (value: unknown) => value is T;
}

/** The same, and how it is made, which takes long. */
export interface Making<T> extends KeptThing<T> {
  make(): Promise<Result<T>>;
}

/** What was made of texts at an earlier start, so that it need not be made again. */
export interface KeptStore {
  /** As kept, where it was made of the same texts by the same program. */
  find<T>(thing: KeptThing<T>): T | undefined;
  keep<T>(thing: KeptThing<T>, value: T): void;
  /** As found, else made and kept now. */
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
  const placeOf = ({ name, from }: KeptThing<unknown>) => {
    return { file: `${name}.kept`, key: keptKey([program, name, ...from]) };
  };
  const store: KeptStore = {
    find(thing) {
      const { file, key } = placeOf(thing);
      const kept = readKept(join(folder, file), key);
      return thing.is(kept) ? kept : undefined;
    },
    keep(thing, value) {
      const { file, key } = placeOf(thing);
      write(folder, file, packKept(key, value));
    },
    async get(making) {
      const found = store.find(making);
      if (found !== undefined) return { ok: true, value: found };
      const made = await making.make();
      if (made.ok) store.keep(making, made.value);
      return made;
    },
  };
  return store;
}

function readKept(path: string, key: Buffer): unknown {
  try {
    return unpackKept(key, readFileSync(path));
  } catch {
    return undefined;
  }
}

/** A disk that cannot be written costs time at the next start and nothing else. */
function write(folder: string, file: string, bytes: Buffer): void {
  try {
    mkdirSync(folder, { recursive: true });
    const half = join(folder, `${file}.${process.pid}.part`);
    writeFileSync(half, bytes);
    renameSync(half, join(folder, file));
  } catch {
    // It was made all the same.
  }
}
