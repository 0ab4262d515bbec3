import { basename, join } from "node:path";
import { Low } from "lowdb";
import type { DocumentKind, DocumentOf, DocumentStore } from "../cases/ports.ts";
import type { FormatRules } from "./document-text.ts";
import { formatRules, readDocument, writeDocument } from "./document-text.ts";
import type { FileText } from "./durable-file.ts";
import { createDurableFile, isLeftover } from "./durable-file.ts";
import { fileNameFor } from "./file-name.ts";
import type { FileOperations } from "./file-operations.ts";
import { disk } from "./file-operations.ts";
import { createTurns } from "./turns.ts";

const folders: Readonly<Record<DocumentKind, string>> = {
  case: "cases",
  person: "people",
  shop: "shop",
};

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
  { now, onDamage, files = disk, rules = formatRules }: LowdbStoreOptions,
): Promise<DocumentStore> {
  const inTurn = createTurns();
  const folderOf = (kind: DocumentKind) => join(folder, folders[kind]);
  const pathOf = (kind: DocumentKind, id: string) => join(folderOf(kind), fileNameFor(id));
  const fileAt = (path: string) => new Low(createDurableFile(path, files), missing);

  for (const kind of ["case", "person", "shop"] as const) {
    await files.makeFolder(folderOf(kind));
    const names = await files.names(folderOf(kind));
    for (const name of names.filter(isLeftover)) await files.remove(join(folderOf(kind), name));
  }
  await files.sync(folder);

  async function setAside(kind: DocumentKind, path: string, why: string): Promise<null> {
    const taken = new Set(await files.names(folderOf(kind)));
    const moment = new Date(now()).toISOString().replaceAll(/[:.]/g, "");
    let name = `${basename(path)}.damaged-${moment}`;
    while (taken.has(name)) name = `${name}x`;
    const aside = join(folderOf(kind), name);
    await files.rename(path, aside);
    await files.sync(folderOf(kind));
    onDamage({ kind, file: aside, why });
    return null;
  }

  /** Reads a file in its turn. */
  async function read<K extends DocumentKind>(
    kind: K,
    path: string,
  ): Promise<DocumentOf<K> | null> {
    const file = fileAt(path);
    await file.read();
    if (file.data === missing) return null;
    const found = readDocument(kind, file.data.text, rules);
    if (!found.ok) return setAside(kind, path, found.why);
    const { id } = found.document;
    if (fileNameFor(id) === basename(path)) return found.document;
    return setAside(kind, path, `it belongs to ${fileNameFor(id)}`);
  }

  return {
    load(kind, id) {
      const path = pathOf(kind, id);
      return inTurn(path, () => read(kind, path));
    },
    async save(document, expected) {
      const text = writeDocument(document);
      const path = pathOf(document.kind, document.id);
      return inTurn(path, async () => {
        const stored = await read(document.kind, path);
        if ((stored?.version ?? 0) !== expected) return "conflict";
        const file = fileAt(path);
        file.data = { text };
        await file.write();
        return "saved";
      });
    },
    async *all(kind) {
      const names = await files.names(folderOf(kind));
      for (const name of names.filter((one) => one.endsWith(".json") && !one.startsWith("."))) {
        const path = join(folderOf(kind), name);
        const document = await inTurn(path, () => read(kind, path));
        if (document !== null) yield document;
      }
    },
    remove(kind, id) {
      const path = pathOf(kind, id);
      return inTurn(path, async () => {
        const names = await files.names(folderOf(kind));
        const aside = names.filter((name) => name.startsWith(`${basename(path)}.damaged-`));
        // What was set aside is about the same person, so it goes as well.
        for (const name of aside) await files.remove(join(folderOf(kind), name));
        await files.remove(path);
        await files.sync(folderOf(kind));
      });
    },
  };
}
