import type { SentMessage, TurnrowDocument } from "../domain/documents.ts";
import type { OutboxEntry } from "../domain/effects.ts";
import { isCancelled } from "./cancelled.ts";
import type { ChangeDocument } from "./change-document.ts";
import type { Directory } from "./directory.ts";
import type { Pending } from "./lanes.ts";
import { laneOf } from "./lanes.ts";
import type { MoveChat } from "./move-chat.ts";
import type { Carried, Carrier, Clock, DocumentStore, Target, Tell } from "./ports.ts";
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

/** Waits 1 s, 2 s, 4 s … up to a minute. */
export const backoff = (failures: number): number =>
  Math.min(FIRST_BACKOFF_MILLISECONDS * 2 ** (failures - 1), LONGEST_BACKOFF_MILLISECONDS);

/** Tries one entry; answers for how many milliseconds its lane must rest, mostly 0. */
export type Deliver = (pending: Pending) => Promise<number>;

export function createDelivery(parts: DeliveryParts): Deliver {
  const { store, change, directory, carrier, clock } = parts;
  /** Network failures in a row, by lane. */
  const failures = new Map<string, number>();

  const tellSomebody = (notice: Notice) => parts.notify(notice).catch(() => undefined);
  const conclude = ({ source, entry }: Pending, settlement: Settlement) =>
    parts.insist(() => change(source, (document) => settle(document, entry.id, settlement)));

  async function refuse(pending: Pending, reason: string): Promise<number> {
    await tellSomebody({ what: "refused", reason, pending });
    await conclude(pending, { entry: null, sent: null });
    return 0;
  }

  /** The other side failed on it: keep the order for a while, then let others pass. */
  async function failed(pending: Pending, reason: string): Promise<number> {
    const attempts = pending.entry.attempts + 1;
    if (attempts > LAST_ATTEMPT) return refuse(pending, reason);
    const parked = attempts > PATIENCE;
    const notBefore = parked ? clock.now() + PARKED_MILLISECONDS : pending.entry.notBefore;
    await conclude(pending, { entry: { ...pending.entry, attempts, notBefore }, sent: null });
    return parked ? 0 : backoff(attempts);
  }

  async function unreachable(pending: Pending, chat: string): Promise<number> {
    await tellSomebody({ what: "unreachable", chat, pending });
    for (const { id } of directory.peopleAt(chat)) await parts.insist(() => markUnreachable(id));
    await conclude(pending, { entry: null, sent: null });
    return 0;
  }

  const markUnreachable = (id: string) =>
    change({ kind: "person", id }, (person) =>
      person?.reachable ? { ...person, reachable: false } : null,
    );

  async function offline(lane: string, carried: Extract<Carried, { outcome: "wait" }>) {
    const count = (failures.get(lane) ?? 0) + 1;
    failures.set(lane, count);
    await tellSomebody({ what: "trouble", lane, reason: carried.because });
    return Math.max(carried.milliseconds, backoff(count));
  }

  async function weigh(pending: Pending, chat: string, carried: Carried): Promise<number> {
    const { entry } = pending;
    if (carried.outcome !== "wait") failures.delete(laneOf(entry.effect));
    switch (carried.outcome) {
      case "done":
        await conclude(pending, { entry: null, sent: carried.sent });
        return 0;
      case "partly": {
        const progress: OutboxEntry = { ...entry, part: (entry.part ?? 0) + 1 };
        await conclude(pending, { entry: progress, sent: carried.sent });
        return 0;
      }
      case "wait":
        if (carried.because === "busy") return carried.milliseconds;
        if (carried.because === "network") return offline(laneOf(entry.effect), carried);
        return Math.max(carried.milliseconds, await failed(pending, "the chat service failed"));
      case "unreachable":
        return unreachable(pending, chat);
      case "moved":
        await parts.insist(() => parts.moveChat(chat, carried.to));
        await tellSomebody({ what: "moved", from: chat, to: carried.to });
        return backoff(1);
      case "refused":
        return refuse(pending, carried.reason);
    }
  }

  async function attempt(pending: Pending, document: TurnrowDocument): Promise<number> {
    const { entry } = pending;
    const { effect } = entry;
    if (isCancelled(entry.cancelIf, document) || isSuperseded(pending, directory, clock)) {
      await conclude(pending, { entry: null, sent: null });
      return 0;
    }
    if (effect.do === "tell") {
      try {
        await parts.follow(effect, entry.id);
      } catch (error) {
        return failed(pending, nameOf(error));
      }
      await conclude(pending, { entry: null, sent: null });
      return 0;
    }
    const earlier: SentMessage | null =
      effect.slot === undefined
        ? null
        : (document.sent[sentKey(effect.slot, effect.to.chat)] ?? null);
    let carried: Carried;
    try {
      carried = await carrier.carry(effect, { earlier, part: entry.part ?? 0 });
    } catch (error) {
      carried = { outcome: "refused", reason: nameOf(error) };
    }
    return weigh(pending, effect.to.chat, carried);
  }

  return async ({ source, entry: { id } }) => {
    const document = await store.load<Target["kind"]>(source.kind, source.id);
    const entry = document?.outbox.find((waiting) => waiting.id === id);
    if (document && entry) return attempt({ source, entry }, document);
    if (document) directory.take(document);
    else directory.forget(source);
    return 0;
  };
}

const nameOf = (error: unknown): string => (error instanceof Error ? error.name : "unknown error");

/** A revision is pointless when a newer one of the same message is due already. */
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
        later.entry.effect.slot === effect.slot,
    );
}
