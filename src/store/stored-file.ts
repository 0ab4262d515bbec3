import { basename } from "node:path";
import type { DocumentKind, DocumentOf } from "../cases/ports.ts";
import { type FormatRules, readDocument } from "./document-text.ts";
import { fileNameFor } from "./file-name.ts";
import type { FileOperations } from "./file-operations.ts";

/** The folder of each kind of document, under the folder of the data. */
export const folders: Readonly<Record<DocumentKind, string>> = {
  case: "cases",
  person: "people",
  shop: "shop",
};

/** Names of files that hold documents; drafts begin with a dot. */
export const isStored = (name: string): boolean => name.endsWith(".json") && !name.startsWith(".");

export type Stored<K extends DocumentKind> =
  | { readonly ok: true; readonly document: DocumentOf<K> | null }
  | { readonly ok: false; readonly why: string };

/**
 * Reads one file and changes nothing.
 * @returns the document, null where there is no file, or why the file cannot be used
 * @throws NewerFormat where a newer version has written it
 */
export async function readStored<K extends DocumentKind>(
  kind: K,
  path: string,
  { files, rules }: { readonly files: Pick<FileOperations, "read">; readonly rules: FormatRules },
): Promise<Stored<K>> {
  const text = await files.read(path);
  if (text === null) return { ok: true, document: null };
  const found = readDocument(kind, text, rules);
  if (!found.ok) return found;
  const rightful = fileNameFor(found.document.id);
  if (rightful === basename(path)) return found;
  return { ok: false, why: `it belongs to ${rightful}` };
}
