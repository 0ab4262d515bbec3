import type { SentMessage, TurnrowDocument } from "../domain/documents.ts";
import type { Effect, Phrase } from "../domain/effects.ts";
import type { Incoming } from "../domain/incoming.ts";

export type DocumentKind = TurnrowDocument["kind"];
export type DocumentOf<K extends DocumentKind> = Extract<TurnrowDocument, { kind: K }>;

/** Names one document. */
export interface Target<K extends DocumentKind = DocumentKind> {
  readonly kind: K;
  readonly id: string;
}

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

/** A clock that can also wake somebody up; tests put their own in its place. */
export interface Timers extends Clock {
  /** Runs it once, that many milliseconds from now; the answer calls it off. */
  after(milliseconds: number, run: () => void): () => void;
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

/** An effect that goes out to a chat. */
export type Outgoing = Exclude<Effect, { do: "tell" }>;
/** An effect on another document of our own. */
export type Tell = Extract<Effect, { do: "tell" }>;

/** What came of one attempt to carry an effect out. */
export type Carried =
  /** `sent` is the message a later revision has to find; null where this attempt sent none. */
  | { readonly outcome: "done"; readonly sent: SentMessage | null }
  /** One message of several is out; the rest comes with the next `part`. */
  | { readonly outcome: "partly"; readonly sent: SentMessage | null }
  /**
   * Try again later. `busy`: we were told when, and nothing happened. `network`, `server`: it is
   * not known whether it happened.
   */
  | {
      readonly outcome: "wait";
      readonly milliseconds: number;
      readonly because: "busy" | "network" | "server";
    }
  /** The person has blocked the bot or is gone. */
  | { readonly outcome: "unreachable" }
  /** The group has another id now. */
  | { readonly outcome: "moved"; readonly to: string }
  /** It can never be carried out as it stands; reported and dropped. */
  | { readonly outcome: "refused"; readonly reason: string };

export interface CarryContext {
  /** The message last said in the effect's slot and chat. */
  readonly earlier: SentMessage | null;
  /** How many messages of this effect are out already. */
  readonly part: number;
}

/** At most `count` messages within any stretch of `milliseconds`. */
export interface RateLimit {
  readonly count: number;
  readonly milliseconds: number;
}

/** Carries effects out; the chat is one. */
export interface Carrier {
  /** Sends at most one message. Never rejects for what the other side answers. */
  carry(effect: Outgoing, context: CarryContext): Promise<Carried>;
  /** How fast messages may follow each other in a chat; all the limits hold at once. */
  limits(chat: string): readonly RateLimit[];
  /** The same over all chats together. */
  readonly overall: readonly RateLimit[];
}

/** What is shown at once to the person who pressed a button. */
export interface Received {
  readonly toast?: Phrase;
  readonly language?: string;
}

/** Takes in what comes from a chat. When it resolves, what was said is on disk. */
export interface Reception {
  receive(incoming: Incoming): Promise<Received>;
}

/** Keeps what could not be handled, so that somebody can look at it. */
export interface Quarantine {
  put(record: {
    readonly incoming: Incoming;
    readonly at: number;
    readonly error: string;
  }): Promise<void>;
}
