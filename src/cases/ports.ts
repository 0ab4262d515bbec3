import type { SentMessage, TurnrowDocument } from "../domain/documents.ts";
import type { Effect } from "../domain/effects.ts";

export type DocumentKind = TurnrowDocument["kind"];
export type DocumentOf<K extends DocumentKind> = Extract<TurnrowDocument, { kind: K }>;

/**
 * Where documents live. One document is one commit: when `save` has answered `saved`, the document
 * survives a power cut, and either all of it does or nothing.
 */
export interface DocumentStore {
  /** The document, or null where there is none. A damaged one is set aside, reported, and null. */
  load<K extends DocumentKind>(kind: K, id: string): Promise<DocumentOf<K> | null>;
  /**
   * Writes the document if the stored version is still `expected` (0: there is none yet). The
   * document's own `version` must be `expected + 1`.
   */
  save(document: TurnrowDocument, expected: number): Promise<"saved" | "conflict">;
  /** Every stored document of a kind, in no particular order. */
  all<K extends DocumentKind>(kind: K): AsyncIterable<DocumentOf<K>>;
  /** Removes a document for good (a person asked to be forgotten). */
  remove(kind: DocumentKind, id: string): Promise<void>;
}

export interface Clock {
  /** Milliseconds since 1970 UTC. */
  now(): number;
}

/** Fresh names and chance, from outside the pure parts. */
export interface Chance {
  /** A short case number that people can say on the phone. */
  caseId(): string;
  /** An unguessable token, safe in a link. */
  token(): string;
  /** An integer in [0, 2^31). */
  seed(): number;
}

/** What came of carrying out an effect. */
export type Carried =
  | { readonly outcome: "done"; readonly sent: SentMessage | null }
  /** Try again later; nothing is known to have happened. */
  | { readonly outcome: "wait"; readonly milliseconds: number }
  /** The person has blocked the bot or is gone. */
  | { readonly outcome: "unreachable" }
  /** The group has another id now. */
  | { readonly outcome: "moved"; readonly to: string }
  /** It can never be carried out as it stands; reported and dropped. */
  | { readonly outcome: "refused"; readonly reason: string };

/** Carries effects out; the chat is one. */
export interface Carrier {
  carry(effect: Effect, earlier: SentMessage | null): Promise<Carried>;
}
