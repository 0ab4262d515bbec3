import type { DocumentKind, DocumentOf, DocumentStore } from "../cases/ports.ts";
import type { TurnrowDocument } from "../domain/documents.ts";

/** Keeps documents in memory; for tests and for trying things out. */
export function createMemoryStore(): DocumentStore {
  const kept = new Map<string, TurnrowDocument>();
  const isOf = <K extends DocumentKind>(
    document: TurnrowDocument,
    kind: K,
  ): document is DocumentOf<K> => document.kind === kind;

  return {
    async load(kind, id) {
      const document = kept.get(`${kind}/${id}`);
      // A copy, as from a disk: nobody can change what is kept by changing what was handed out.
      return document && isOf(document, kind) ? structuredClone(document) : null;
    },
    async save(document, expected) {
      const key = `${document.kind}/${document.id}`;
      if ((kept.get(key)?.version ?? 0) !== expected) return "conflict";
      kept.set(key, structuredClone(document));
      return "saved";
    },
    async *all(kind) {
      for (const document of [...kept.values()]) {
        if (isOf(document, kind)) yield structuredClone(document);
      }
    },
    async remove(kind, id) {
      kept.delete(`${kind}/${id}`);
    },
  };
}
