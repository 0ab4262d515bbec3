import type { CallbackQuery, ChatMemberUpdated } from "@grammyjs/types";
import type { Limits } from "../limits.ts";
import type { Clock } from "../time.ts";
import type { Feed } from "./feed.ts";
import type { Post } from "./messages.ts";

/** A button press. Its message may be gone: then only chat and id are left of it, with date 0. */
export type PressQuery = Omit<CallbackQuery, "message"> & {
  message: Post | (Pick<Post, "chat" | "message_id"> & { date: 0 });
};

/** The one field of an update besides its id. */
export type UpdatePayload =
  | { message: Post }
  | { edited_message: Post & { edit_date: number } }
  | { callback_query: PressQuery }
  | { my_chat_member: ChatMemberUpdated };

/** An update as it goes over the wire. */
export type WireUpdate = UpdatePayload & { update_id: number };

/** An update that waits for the bot. */
export interface QueuedUpdate {
  update: WireUpdate;
  /** Milliseconds since 1970; after that it is thrown away. */
  expiresAt: number;
  /** Updates of one lane reach a webhook one after another, different lanes side by side. */
  lane: string;
}

/** Left out unless the bot asks for them by name (Bot API reference, getUpdates). */
const OFF_BY_DEFAULT: readonly string[] = [
  "chat_member",
  "message_reaction",
  "message_reaction_count",
];

/** An offset further ahead than this is taken for a mistake and forgets nothing (server). */
const FURTHEST_OFFSET = 10;

/** How far back `repeat` reaches. Ours. */
const REMEMBERED_UPDATES = 200;

const FIRST_UPDATE_ID = 500_000_001;

/** Updates held back by a test; see `UpdateQueue.hold`. */
export interface HeldUpdates {
  /** How many wait. */
  count(): number;
  /** Lets the oldest ones go, all of them unless told how many. */
  release(count?: number): void;
  /** Loses the oldest ones. */
  drop(count: number): void;
  /** Lets everything go and stops holding. */
  end(): void;
}

interface QueueParts {
  clock: Clock;
  limits: Limits;
  feed: Feed;
}

/** Keeps updates until the bot confirms them or they expire. */
export class UpdateQueue {
  readonly #parts: QueueParts;
  readonly #queue = new Map<number, QueuedUpdate>();
  #nextId = FIRST_UPDATE_ID;
  /** The types the bot asked for; undefined for the default. Remembered until changed. */
  #allowed: readonly string[] | undefined;
  #held: (() => void)[] | undefined;
  /** The updates handed out last, so that one can be repeated. */
  #given: WireUpdate[] = [];
  readonly #repeats: WireUpdate[] = [];
  readonly #arrival = new Set<() => void>();

  constructor(parts: QueueParts) {
    this.#parts = parts;
  }

  /** @param types what the bot asked for; an empty list means the default */
  allow(types: readonly string[]): void {
    this.#allowed = types.length === 0 ? undefined : types;
  }

  allowed(): readonly string[] | undefined {
    return this.#allowed;
  }

  /** Runs the listener whenever an update has come in. */
  onArrival(listener: () => void): void {
    this.#arrival.add(listener);
  }

  /**
   * Queues an update, unless the bot did not ask for its type. The choice is made now, not when
   * the update is fetched.
   * @param lane see `QueuedUpdate.lane`
   */
  push(payload: UpdatePayload, lane: string): void {
    const type = Object.keys(payload)[0] ?? "";
    const wanted = this.#allowed?.includes(type) ?? !OFF_BY_DEFAULT.includes(type);
    if (!wanted) return;
    const { clock, limits } = this.#parts;
    const seconds = type === "callback_query" ? limits.pressSeconds : limits.updateSeconds;
    const expiresAt = clock() + seconds * 1000;
    if (this.#held === undefined) this.#enter(payload, { expiresAt, lane });
    else this.#held.push(() => this.#enter(payload, { expiresAt, lane }));
  }

  #enter(payload: UpdatePayload, rest: Omit<QueuedUpdate, "update">): void {
    const update = { update_id: this.#nextId, ...payload };
    this.#nextId += 1;
    this.#queue.set(update.update_id, { update, ...rest });
    this.#parts.feed.emit({ kind: "queued", updateId: update.update_id });
    this.#arrived();
  }

  #arrived(): void {
    for (const listener of this.#arrival) listener();
  }

  /** What waits now, oldest first. */
  waiting(): QueuedUpdate[] {
    const now = this.#parts.clock();
    for (const [id, { expiresAt }] of this.#queue) if (expiresAt <= now) this.remove(id, "expired");
    return [...this.#queue.values()];
  }

  /**
   * Confirms everything below the offset and returns what comes next.
   * @param offset 0 for the oldest; negative keeps only that many of the newest
   * @param limit 1 to 100
   */
  fetch(offset: number, limit: number): WireUpdate[] {
    const before = this.waiting();
    const isInRange = offset <= this.#nextId + FURTHEST_OFFSET;
    before.forEach(({ update: { update_id: id } }, index) => {
      const isOld = offset < 0 ? index < before.length + offset : isInRange && id < offset;
      if (isOld) this.remove(id, "confirmed");
    });
    const repeats = this.#repeats.splice(0, limit);
    const updates = [...this.#queue.values()]
      .slice(0, limit - repeats.length)
      .map((entry) => entry.update);
    this.#given = [...this.#given, ...updates].slice(-REMEMBERED_UPDATES);
    return [...repeats, ...updates];
  }

  /** Takes one out: the bot has it, or nobody will. */
  remove(updateId: number, kind: "confirmed" | "expired"): void {
    if (this.#queue.delete(updateId)) this.#parts.feed.emit({ kind, updateId });
  }

  /** Takes all out. */
  clear(): void {
    for (const id of [...this.#queue.keys()]) this.remove(id, "confirmed");
  }

  /** The next update gets this id, as after a week of silence on the real server. */
  jumpTo(updateId: number): void {
    this.#nextId = updateId;
  }

  /**
   * Sends an update again under its old id, although it was confirmed.
   * @param updateId the last one handed out when missing
   */
  repeat(updateId?: number): void {
    const update = this.#given.findLast(
      ({ update_id: id }) => updateId === undefined || id === updateId,
    );
    if (update === undefined) throw new RangeError("No such update was handed out lately.");
    this.#repeats.push(update);
    this.#arrived();
  }

  /** Holds new updates back, so that a test can lose or delay single ones. */
  hold(): HeldUpdates {
    const held: (() => void)[] = [];
    this.#held = held;
    const release = (count = held.length) => {
      for (const enter of held.splice(0, count)) enter();
    };
    return {
      count: () => held.length,
      release,
      drop: (count) => {
        held.splice(0, count);
      },
      end: () => {
        if (this.#held === held) this.#held = undefined;
        release();
      },
    };
  }
}
