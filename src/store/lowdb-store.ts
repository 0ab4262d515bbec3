import { basename, join } from "node:path";
import { Low } from "lowdb";
import type { DocumentKind, DocumentOf, DocumentStore } from "../cases/ports.ts";
import type { TurnrowDocument } from "../domain/documents.ts";
import type { FormatRules } from "./document-text.ts";
import { formatRules, writeDocument } from "./document-text.ts";
import { createDurableFile, type FileText, isLeftover } from "./durable-file.ts";
import { fileNameFor } from "./file-name.ts";
import type { FileOperations } from "./file-operations.ts";
import { disk } from "./file-operations.ts";
import { folders, isStored, readStored } from "./stored-file.ts";
import { createTurns } from "./turns.ts";

/** What lowdb holds where there is no file. */
const missing: FileText = { text: "" };

/** A stored file that could not be used and was set aside. */
export interface Damage {
  readonly kind: DocumentKind;
  /** Where the file now is. */
  readonly file: string;
  readonly why: string;
}

export interface LowdbStoreOptions {
  /** Milliseconds since 1970 UTC; names the files that are set aside. */
  readonly now: () => number;
  readonly onDamage: (damage: Damage) => void;
  readonly files?: FileOperations;
  readonly rules?: FormatRules;
}

/**
 * Keeps one small file per document under a folder. Only one process may use the folder.
 *
 * @throws whatever the disk says; NewerFormat where a newer version has written there
 */
export async function openLowdbStore(
  folder: string,
  options: LowdbStoreOptions,
): Promise<DocumentStore> {
  const { files = disk } = options;
  for (const name of Object.values(folders)) {
    const inner = join(folder, name);
    await files.makeFolder(inner);
    const leftovers = (await files.names(inner)).filter(isLeftover);
    for (const leftover of leftovers) await files.remove(join(inner, leftover));
  }
  await files.sync(folder);
  return new LowdbStore(folder, { ...options, files, rules: options.rules ?? formatRules });
}

class LowdbStore implements DocumentStore {
  readonly #folder: string;
  readonly #options: Required<LowdbStoreOptions>;
  /** All work on one file goes one after another: a version is compared and written as one. */
  readonly #inTurn = createTurns();

  constructor(folder: string, options: Required<LowdbStoreOptions>) {
    this.#folder = folder;
    this.#options = options;
  }

  load<K extends DocumentKind>(kind: K, id: string): Promise<DocumentOf<K> | null> {
    const path = this.#pathOf(kind, id);
    return this.#inTurn(path, () => this.#read(kind, path));
  }

  async save(document: TurnrowDocument, expected: number): Promise<"saved" | "conflict"> {
    const text = writeDocument(document);
    const path = this.#pathOf(document.kind, document.id);
    return this.#inTurn(path, async () => {
      const stored = await this.#read(document.kind, path);
      if ((stored?.version ?? 0) !== expected) return "conflict";
      const file = new Low(createDurableFile(path, this.#options.files), missing);
      file.data = { text };
      await file.write();
      return "saved";
    });
  }

  async *all<K extends DocumentKind>(kind: K): AsyncIterable<DocumentOf<K>> {
    const folder = this.#folderOf(kind);
    const names = await this.#options.files.names(folder);
    for (const name of names.filter(isStored)) {
      const path = join(folder, name);
      const document = await this.#inTurn(path, () => this.#read(kind, path));
      if (document !== null) yield document;
    }
  }

  remove(kind: DocumentKind, id: string): Promise<void> {
    const { files } = this.#options;
    const folder = this.#folderOf(kind);
    const path = this.#pathOf(kind, id);
    return this.#inTurn(path, async () => {
      const names = await files.names(folder);
      const aside = names.filter((name) => name.startsWith(`${basename(path)}.damaged-`));
      // What was set aside is about the same person, so it goes as well.
      for (const name of aside) await files.remove(join(folder, name));
      await files.remove(path);
      await files.sync(folder);
    });
  }

  #folderOf(kind: DocumentKind): string {
    return join(this.#folder, folders[kind]);
  }

  #pathOf(kind: DocumentKind, id: string): string {
    return join(this.#folderOf(kind), fileNameFor(id));
  }

  /** Reads a file in its turn; one that cannot be used is set aside and counts as missing. */
  async #read<K extends DocumentKind>(kind: K, path: string): Promise<DocumentOf<K> | null> {
    const stored = await readStored(kind, path, this.#options);
    return stored.ok ? stored.document : this.#setAside(kind, path, stored.why);
  }

  async #setAside(kind: DocumentKind, path: string, why: string): Promise<null> {
    const { files, now, onDamage } = this.#options;
    const folder = this.#folderOf(kind);
    const taken = new Set(await files.names(folder));
    const moment = new Date(now()).toISOString().replaceAll(/[:.]/g, "");
    let name = `${basename(path)}.damaged-${moment}`;
    while (taken.has(name)) name = `${name}x`;
    await files.rename(path, join(folder, name));
    await files.sync(folder);
    onDamage({ kind, file: join(folder, name), why });
    return null;
  }
}
