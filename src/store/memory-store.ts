import type { DocumentKind, DocumentOf, DocumentStore } from "../cases/ports.ts";
import type { TurnrowDocument } from "../domain/documents.ts";
import { provenDocument } from "./document-text.ts";

const isOf = <K extends DocumentKind>(kind: K, one: TurnrowDocument): one is DocumentOf<K> =>
  one.kind === kind;

/**
 * Keeps documents in memory, as they would be read back from a disk; for tests and for trying out.
 * What was proven when it was written is not proven again at each reading: everybody gets a copy.
 */
export function createMemoryStore(): DocumentStore {
  const kept = new Map<string, TurnrowDocument>();
  const keyOf = (kind: DocumentKind, id: string) => `${kind}/${id}`;

  function read<K extends DocumentKind>(kind: K, key: string): DocumentOf<K> | null {
    const found = kept.get(key);
    return found !== undefined && isOf(kind, found) ? structuredClone(found) : null;
  }

  return {
    async load(kind, id) {
      return read(kind, keyOf(kind, id));
    },
    async save(document, expected) {
      const proven = provenDocument(document);
      const key = keyOf(document.kind, document.id);
      if ((kept.get(key)?.version ?? 0) !== expected) return "conflict";
      kept.set(key, proven.document);
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
