import type { Ledger, TurnrowDocument } from "../domain/documents.ts";
import type { OutboxEntry } from "../domain/effects.ts";
import type { ChangeDocument } from "./change-document.ts";
import type { DocumentStore, Target } from "./ports.ts";

/** Carries a chat's new id into every document that names the old one. */
export type MoveChat = (from: string, to: string) => Promise<void>;

export function createMoveChat(store: DocumentStore, change: ChangeDocument): MoveChat {
  return async (from, to) => {
    const named: Target[] = [];
    for (const kind of ["shop", "person", "case"] as const) {
      for await (const document of store.all(kind)) {
        if (moved(document, from, to) !== null) named.push({ kind, id: document.id });
      }
    }
    for (const target of named) {
      await change(target, (document) => document && moved(document, from, to));
    }
  };
}

/** The document with the chat's new id, or null where it does not name the old one. */
function moved<D extends TurnrowDocument>(document: D, from: string, to: string): D | null {
  const ledger = movedLedger(document, from, to);
  const counter = document.kind === "shop" && document.counter?.chat === from;
  const own = document.kind === "person" && document.chat === from;
  if (ledger === null && !counter && !own) return null;
  return {
    ...document,
    ...ledger,
    ...(counter ? { counter: { chat: to } } : {}),
    ...(own ? { chat: to } : {}),
  };
}

function movedLedger(ledger: Ledger, from: string, to: string) {
  const names = (entry: OutboxEntry) => entry.effect.do !== "tell" && entry.effect.to.chat === from;
  const slots = Object.entries(ledger.sent);
  if (!ledger.outbox.some(names) && !slots.some(([, sent]) => sent.chat === from)) return null;
  return {
    // The old group had no topics that the new one would know.
    outbox: ledger.outbox.map((entry) =>
      entry.effect.do !== "tell" && entry.effect.to.chat === from
        ? { ...entry, effect: { ...entry.effect, to: { chat: to } } }
        : entry,
    ),
    // Messages of the old group cannot be changed any more; what revises them says them anew.
    sent: Object.fromEntries(slots.filter(([, sent]) => sent.chat !== from)),
  };
}
