import type { SentMessage, TurnrowDocument } from "../domain/documents.ts";
import type { OutboxEntry } from "../domain/effects.ts";
import { isCancelled } from "./cancelled.ts";
import type { ChangeDocument } from "./change-document.ts";
import type { Directory } from "./directory.ts";
import type { Pending } from "./lanes.ts";
import { laneOf } from "./lanes.ts";
import type { MoveChat } from "./move-chat.ts";
import type { Carried, Carrier, Clock, DocumentStore, Outgoing, Target, Tell } from "./ports.ts";
import type { Settlement } from "./settle.ts";
import { sentKey, settle } from "./settle.ts";

/** Failures during which an entry holds up its lane, so that order is kept. */
const PATIENCE = 12;
/** After that others pass, and it is tried again this often … */
const PARKED_MILLISECONDS = 10 * 60_000;
/** … for a day; then it is given up and reported. */
const LAST_ATTEMPT = PATIENCE + 24 * 6;
const FIRST_BACKOFF_MILLISECONDS = 1_000;
const LONGEST_BACKOFF_MILLISECONDS = 60_000;

/** Something about a delivery that somebody should know. */
export type Notice =
  | { readonly what: "unreachable"; readonly chat: string; readonly pending: Pending }
  | { readonly what: "refused"; readonly reason: string; readonly pending: Pending }
  | { readonly what: "moved"; readonly from: string; readonly to: string }
  /** Storage or network trouble; nothing is lost, it goes on trying. */
  | { readonly what: "trouble"; readonly lane: string; readonly reason: string };

export interface DeliveryParts {
  readonly store: DocumentStore;
  readonly change: ChangeDocument;
  readonly directory: Directory;
  readonly carrier: Carrier;
  readonly moveChat: MoveChat;
  readonly clock: Clock;
  /** Applies a follow-up to its document, under the given update id; twice does nothing. */
  readonly follow: (tell: Tell, update: string) => Promise<void>;
  /** Told of a loss before the entry is dropped; a failure of its own is ignored. */
  readonly notify: (notice: Notice) => Promise<void>;
  /** Repeats a write until it succeeds: what was sent must not be sent again. */
  readonly insist: (write: () => Promise<unknown>) => Promise<void>;
}

type Wait = Extract<Carried, { outcome: "wait" }>;

/** Waits 1 s, 2 s, 4 s … up to a minute. */
export const backoff = (failures: number): number =>
  Math.min(FIRST_BACKOFF_MILLISECONDS * 2 ** (failures - 1), LONGEST_BACKOFF_MILLISECONDS);

/** Carries single entries out and writes down what came of it. */
export class Delivery {
  readonly #parts: DeliveryParts;
  /** Network failures in a row, by lane. */
  readonly #failures = new Map<string, number>();

  constructor(parts: DeliveryParts) {
    this.#parts = parts;
  }

  /** Tries one entry; answers for how many milliseconds its lane must rest, mostly 0. */
  async deliver({ source, entry: { id } }: Pending): Promise<number> {
    const { store, directory } = this.#parts;
    const document = await store.load<Target["kind"]>(source.kind, source.id);
    const entry = document?.outbox.find((waiting) => waiting.id === id);
    if (document && entry) return this.#attempt({ source, entry }, document);
    if (document) directory.take(document);
    else directory.forget(source);
    return 0;
  }

  async #attempt(pending: Pending, document: TurnrowDocument): Promise<number> {
    const { directory, clock } = this.#parts;
    const { effect, cancelIf } = pending.entry;
    if (isCancelled(cancelIf, document) || isSuperseded(pending, directory, clock)) {
      return this.#conclude(pending, { entry: null, sent: null });
    }
    if (effect.do === "tell") return this.#tell(pending, effect);
    const key = effect.slot === undefined ? null : sentKey(effect.slot, effect.to.chat);
    const earlier = key === null ? null : (document.sent[key] ?? null);
    return this.#weigh(pending, effect.to.chat, await this.#carry(pending, effect, earlier));
  }

  async #tell(pending: Pending, effect: Tell): Promise<number> {
    try {
      await this.#parts.follow(effect, pending.entry.id);
    } catch (error) {
      return this.#failed(pending, nameOf(error));
    }
    return this.#conclude(pending, { entry: null, sent: null });
  }

  async #carry({ entry }: Pending, effect: Outgoing, earlier: SentMessage | null) {
    try {
      return await this.#parts.carrier.carry(effect, { earlier, part: entry.part ?? 0 });
    } catch (error) {
      return { outcome: "refused", reason: nameOf(error) } as const;
    }
  }

  async #weigh(pending: Pending, chat: string, carried: Carried): Promise<number> {
    const { entry } = pending;
    if (carried.outcome !== "wait") this.#failures.delete(laneOf(entry.effect));
    switch (carried.outcome) {
      case "done":
        return this.#conclude(pending, { entry: null, sent: carried.sent });
      case "partly": {
        const progress: OutboxEntry = { ...entry, part: (entry.part ?? 0) + 1 };
        return this.#conclude(pending, { entry: progress, sent: carried.sent });
      }
      case "wait":
        return this.#wait(pending, carried);
      case "unreachable":
        return this.#unreachable(pending, chat);
      case "moved":
        await this.#parts.insist(() => this.#parts.moveChat(chat, carried.to));
        await this.#notify({ what: "moved", from: chat, to: carried.to });
        return backoff(1);
      case "refused":
        return this.#refuse(pending, carried.reason);
    }
  }

  async #wait(pending: Pending, { because, milliseconds }: Wait): Promise<number> {
    if (because === "busy") return milliseconds;
    if (because === "server") {
      return Math.max(milliseconds, await this.#failed(pending, "the chat service failed"));
    }
    const lane = laneOf(pending.entry.effect);
    const count = (this.#failures.get(lane) ?? 0) + 1;
    this.#failures.set(lane, count);
    await this.#notify({ what: "trouble", lane, reason: because });
    return Math.max(milliseconds, backoff(count));
  }

  /** The other side failed on it: keep the order for a while, then let others pass. */
  async #failed(pending: Pending, reason: string): Promise<number> {
    const attempts = pending.entry.attempts + 1;
    if (attempts > LAST_ATTEMPT) return this.#refuse(pending, reason);
    const parked = attempts > PATIENCE;
    const notBefore = parked
      ? this.#parts.clock.now() + PARKED_MILLISECONDS
      : pending.entry.notBefore;
    await this.#conclude(pending, { entry: { ...pending.entry, attempts, notBefore }, sent: null });
    return parked ? 0 : backoff(attempts);
  }

  async #refuse(pending: Pending, reason: string): Promise<number> {
    await this.#notify({ what: "refused", reason, pending });
    return this.#conclude(pending, { entry: null, sent: null });
  }

  async #unreachable(pending: Pending, chat: string): Promise<number> {
    const { change, directory, insist } = this.#parts;
    await this.#notify({ what: "unreachable", chat, pending });
    for (const { id } of directory.peopleAt(chat)) {
      await insist(() =>
        change({ kind: "person", id }, (person) =>
          person?.reachable ? { ...person, reachable: false } : null,
        ),
      );
    }
    return this.#conclude(pending, { entry: null, sent: null });
  }

  async #conclude({ source, entry }: Pending, settlement: Settlement): Promise<0> {
    const { change, insist } = this.#parts;
    await insist(() => change(source, (document) => settle(document, entry.id, settlement)));
    return 0;
  }

  #notify(notice: Notice): Promise<void> {
    return this.#parts.notify(notice).catch(() => undefined);
  }
}

const nameOf = (error: unknown): string => (error instanceof Error ? error.name : "unknown error");

/** A revision is pointless when a newer one of the same words is due already. */
function isSuperseded({ source, entry }: Pending, directory: Directory, clock: Clock): boolean {
  const { effect } = entry;
  if (effect.do !== "revise" || entry.part !== undefined) return false;
  return directory
    .pending(laneOf(effect))
    .some(
      (later) =>
        later.source.kind === source.kind &&
        later.source.id === source.id &&
        later.entry.sequence > entry.sequence &&
        later.entry.notBefore <= clock.now() &&
        later.entry.effect.do === "revise" &&
        later.entry.effect.message.lines.length > 0 &&
        later.entry.effect.slot === effect.slot,
    );
}
