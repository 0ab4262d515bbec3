import type { DeliveryParts } from "./delivery.ts";
import { backoff, Delivery } from "./delivery.ts";
import type { Pending } from "./lanes.ts";
import type { Pace } from "./pace.ts";
import { createPace } from "./pace.ts";
import type { Timers } from "./ports.ts";

/** Timers cannot count further than 24.8 days; an hourly look costs nothing. */
const LONGEST_SLEEP_MILLISECONDS = 3_600_000;
/** How long a lane is left alone whose document could not be read. */
const UNREADABLE_REST_MILLISECONDS = 4_000;

/**
 * Carries decided effects out: one lane per chat, each in its order, lanes side by side. What was
 * carried out is written down before the next one of its lane begins, so that after a kill at most
 * one message per chat is sent again.
 */
export interface Postman {
  /** Looks through all lanes again; called by itself whenever a document is written. */
  wake(): void;
  /** Waits until nothing is due any more, at most that long; answers how many still are. */
  drain(milliseconds: number): Promise<number>;
  /** Begins nothing more and waits for what is under way. */
  stop(): Promise<void>;
}

export interface PostmanParts extends Omit<DeliveryParts, "insist" | "clock"> {
  readonly timers: Timers;
}

/** Starts with everything that waits in the directory. */
export function startPostman(parts: PostmanParts): Postman {
  const rounds = new Rounds(parts);
  parts.directory.onPending((lanes) => rounds.look(lanes));
  rounds.wake();
  return rounds;
}

class Rounds implements Postman {
  readonly #parts: PostmanParts;
  readonly #delivery: Delivery;
  readonly #overall: Pace;
  readonly #paces = new Map<string, Pace>();
  /** Until when a lane must rest, milliseconds since 1970 UTC. */
  readonly #rests = new Map<string, number>();
  readonly #alarms = new Map<string, () => void>();
  readonly #running = new Map<string, Promise<void>>();
  readonly #missed = new Set<string>();
  readonly #idle: (() => void)[] = [];
  #stopping = false;

  constructor(parts: PostmanParts) {
    this.#parts = parts;
    const insist = (write: () => Promise<unknown>) => this.#insist(write);
    this.#delivery = new Delivery({ ...parts, clock: parts.timers, insist });
    this.#overall = createPace(parts.carrier.overall);
  }

  wake(): void {
    this.look(this.#parts.directory.lanes());
  }

  look(lanes: readonly string[]): void {
    for (const lane of lanes) this.#lookAt(lane);
  }

  async drain(milliseconds: number): Promise<number> {
    let late = false;
    const callOff = this.#parts.timers.after(milliseconds, () => {
      late = true;
      this.#tellIdle();
    });
    while (!late && this.#due() > 0) {
      await new Promise<void>((resolve) => this.#idle.push(resolve));
    }
    callOff();
    return this.#due();
  }

  async stop(): Promise<void> {
    this.#stopping = true;
    for (const callOff of this.#alarms.values()) callOff();
    await Promise.allSettled(this.#running.values());
  }

  #due(): number {
    const { directory, timers } = this.#parts;
    const now = timers.now();
    const waiting = directory.lanes().flatMap((lane) => directory.pending(lane));
    return waiting.filter(({ entry }) => entry.notBefore <= now).length;
  }

  #lookAt(lane: string): void {
    if (this.#stopping) return;
    if (this.#running.has(lane)) {
      // It may be past its last look already, so it looks once more when it ends.
      this.#missed.add(lane);
      return;
    }
    this.#alarms.get(lane)?.();
    this.#alarms.delete(lane);
    this.#running.set(
      lane,
      this.#run(lane).finally(() => {
        this.#running.delete(lane);
        if (this.#missed.delete(lane)) this.#lookAt(lane);
        if (this.#running.size === 0) this.#tellIdle();
      }),
    );
  }

  async #run(lane: string): Promise<void> {
    const { timers } = this.#parts;
    while (!this.#stopping) {
      const found = this.#next(lane);
      if (found === null) return;
      const now = timers.now();
      if (found.at > now) {
        const sleep = Math.min(found.at - now, LONGEST_SLEEP_MILLISECONDS);
        this.#alarms.set(
          lane,
          timers.after(sleep, () => this.#lookAt(lane)),
        );
        return;
      }
      for (const pace of this.#pacesFor(found.pending)) pace.note(now);
      const rest = await this.#deliver(lane, found.pending);
      if (rest > 0) this.#rests.set(lane, timers.now() + rest);
      else this.#rests.delete(lane);
    }
  }

  async #deliver(lane: string, pending: Pending): Promise<number> {
    try {
      return await this.#delivery.deliver(pending);
    } catch (error) {
      await this.#trouble(lane, error);
      return UNREADABLE_REST_MILLISECONDS;
    }
  }

  /** The first entry of a lane that is due, or the one that will be next, and when. */
  #next(lane: string): { pending: Pending; at: number } | null {
    const waiting = this.#parts.directory.pending(lane);
    const now = this.#parts.timers.now();
    const due = waiting.find(({ entry }) => entry.notBefore <= now);
    if (due) {
      const paced = this.#pacesFor(due).map((pace) => pace.next(now));
      return { pending: due, at: Math.max(now, this.#rests.get(lane) ?? 0, ...paced) };
    }
    const [first] = [...waiting].sort((a, b) => a.entry.notBefore - b.entry.notBefore);
    return first === undefined ? null : { pending: first, at: first.entry.notBefore };
  }

  /** The paces that one entry must keep; follow-ups to our own documents keep none. */
  #pacesFor({ entry: { effect } }: Pending): readonly Pace[] {
    if (effect.do === "tell") return [];
    const { chat } = effect.to;
    const pace = this.#paces.get(chat) ?? createPace(this.#parts.carrier.limits(chat));
    this.#paces.set(chat, pace);
    return [pace, this.#overall];
  }

  async #insist(write: () => Promise<unknown>): Promise<void> {
    for (let failures = 1; ; failures++) {
      try {
        await write();
        return;
      } catch (error) {
        await this.#trouble("storage", error);
        if (this.#stopping) return;
        await new Promise<void>((resolve) => {
          this.#parts.timers.after(backoff(failures), resolve);
        });
      }
    }
  }

  #trouble(lane: string, error: unknown): Promise<void> {
    const reason = error instanceof Error ? error.name : "unknown error";
    return this.#parts.notify({ what: "trouble", lane, reason }).catch(() => undefined);
  }

  #tellIdle(): void {
    for (const resolve of this.#idle.splice(0)) resolve();
  }
}
