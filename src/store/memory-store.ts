import type { DocumentKind, DocumentOf, DocumentStore } from "../cases/ports.ts";
import { readDocument, writeDocument } from "./document-text.ts";

/** Keeps documents in memory, as the text a disk would hold; for tests and for trying out. */
export function createMemoryStore(): DocumentStore {
  const kept = new Map<string, string>();
  const keyOf = (kind: DocumentKind, id: string) => `${kind}/${id}`;

  function read<K extends DocumentKind>(kind: K, key: string): DocumentOf<K> | null {
    const text = kept.get(key);
    const found = text === undefined ? null : readDocument(kind, text);
    return found?.ok ? found.document : null;
  }

  return {
    async load(kind, id) {
      return read(kind, keyOf(kind, id));
    },
    async save(document, expected) {
      const text = writeDocument(document);
      const key = keyOf(document.kind, document.id);
      if ((read(document.kind, key)?.version ?? 0) !== expected) return "conflict";
      kept.set(key, text);
      return "saved";
    },
    async *all(kind) {
      for (const key of [...kept.keys()]) {
        const document = key.startsWith(`${kind}/`) ? read(kind, key) : null;
        if (document !== null) yield document;
      }
    },
    async remove(kind, id) {
      kept.delete(keyOf(kind, id));
    },
  };
}
