import type { Ledger, SentMessage } from "../domain/documents.ts";
import type { OutboxEntry } from "../domain/effects.ts";

/** Under which name the ledger keeps the message last said in a slot of a chat. */
export const sentKey = (slot: string, chat: string): string => `${slot}@${chat}`;

/** What an attempt to carry an entry out changes in the ledger it waits in. */
export interface Settlement {
  /** What becomes of the entry; null: it is done with. */
  readonly entry: OutboxEntry | null;
  /** The message that now stands in the entry's slot, if this attempt sent one. */
  readonly sent: SentMessage | null;
}

/**
 * The ledger after an attempt, or null where the entry is no longer in it. One write takes the
 * entry out and notes the message, so that neither can be true without the other.
 */
export function settle<D extends Ledger>(
  ledger: D | null,
  id: string,
  { entry, sent }: Settlement,
): D | null {
  const old = ledger?.outbox.find((waiting) => waiting.id === id);
  if (!ledger || !old) return null;
  const { effect } = old;
  const slot = effect.do === "tell" ? undefined : effect.slot;
  return {
    ...ledger,
    outbox: ledger.outbox.flatMap((waiting) => (waiting.id === id ? (entry ?? []) : waiting)),
    sent:
      sent === null || slot === undefined || effect.do === "tell"
        ? ledger.sent
        : { ...ledger.sent, [sentKey(slot, effect.to.chat)]: sent },
  };
}
