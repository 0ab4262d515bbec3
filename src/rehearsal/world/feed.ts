/** What changed, as plain data. */
export type FeedEvent =
  /** A message appeared, changed or vanished. */
  | {
      kind: "posted" | "edited" | "deleted" | "reacted" | "pinned";
      chatId: number;
      messageId: number;
    }
  /** A chat came to be, or its members, topics or reply keyboard changed. */
  | { kind: "chat"; chatId: number }
  /** The bot answered a button press; text "" only ends the waiting. */
  | { kind: "toast"; chatId: number; userId: number; text: string; alert: boolean }
  /** The bot shows that it is busy, for example "typing". */
  | { kind: "action"; chatId: number; action: string }
  /** A call began or ended. */
  | { kind: "calling" | "called"; method: string; chatId?: number }
  /** An update was queued, or left the queue: confirmed by the bot, or expired. */
  | { kind: "queued" | "confirmed" | "expired"; updateId: number };

export type FeedListener = (event: FeedEvent) => void;

/** Tells listeners what happens, in order, while it happens. */
export class Feed {
  readonly #listeners = new Set<FeedListener>();

  /** @returns a function that ends the subscription */
  subscribe(listener: FeedListener): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  emit(event: FeedEvent): void {
    for (const listener of [...this.#listeners]) listener(event);
  }
}
