import type { DeliveryParts } from "./delivery.ts";
import { backoff, createDelivery } from "./delivery.ts";
import type { Pending } from "./lanes.ts";
import type { Pace } from "./pace.ts";
import { createPace } from "./pace.ts";
import type { Timers } from "./ports.ts";

/** Timers cannot count further than 24.8 days; an hourly look costs nothing. */
const LONGEST_SLEEP_MILLISECONDS = 3_600_000;

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
  const { directory, carrier, timers } = parts;
  const deliver = createDelivery({ ...parts, clock: timers, insist });
  const overall = createPace(carrier.overall);
  const paces = new Map<string, Pace>();
  const rests = new Map<string, number>();
  const alarms = new Map<string, () => void>();
  const running = new Map<string, Promise<void>>();
  const missed = new Set<string>();
  const idle: (() => void)[] = [];
  let stopping = false;

  const sleep = (milliseconds: number) =>
    new Promise<void>((resolve) => void timers.after(milliseconds, resolve));

  async function insist(write: () => Promise<unknown>): Promise<void> {
    for (let failures = 1; ; failures++) {
      try {
        await write();
        return;
      } catch (error) {
        const reason = error instanceof Error ? error.name : "unknown error";
        await parts.notify({ what: "trouble", lane: "storage", reason }).catch(() => undefined);
        if (stopping) return;
        await sleep(backoff(failures));
      }
    }
  }

  /** The paces that one entry must keep; follow-ups to our own documents keep none. */
  function pacesFor(pending: Pending): readonly Pace[] {
    const { effect } = pending.entry;
    if (effect.do === "tell") return [];
    const { chat } = effect.to;
    const pace = paces.get(chat) ?? createPace(carrier.limits(chat));
    paces.set(chat, pace);
    return [pace, overall];
  }

  /** The first entry of a lane that is due, or when the next one will be. */
  function next(lane: string): { pending: Pending; at: number } | null {
    const waiting = directory.pending(lane);
    const now = timers.now();
    const due = waiting.find(({ entry }) => entry.notBefore <= now);
    if (due) {
      const paced = pacesFor(due).map((pace) => pace.next(now));
      return { pending: due, at: Math.max(now, rests.get(lane) ?? 0, ...paced) };
    }
    const [first, ...others] = waiting;
    if (first === undefined) return null;
    const pending = others.reduce(
      (sooner, other) => (other.entry.notBefore < sooner.entry.notBefore ? other : sooner),
      first,
    );
    return { pending, at: pending.entry.notBefore };
  }

  async function run(lane: string): Promise<void> {
    while (!stopping) {
      const found = next(lane);
      if (found === null) return;
      const now = timers.now();
      if (found.at > now) {
        const sleepFor = Math.min(found.at - now, LONGEST_SLEEP_MILLISECONDS);
        alarms.set(
          lane,
          timers.after(sleepFor, () => look(lane)),
        );
        return;
      }
      for (const pace of pacesFor(found.pending)) pace.note(now);
      const rest = await deliver(found.pending).catch(async (error) => {
        const reason = error instanceof Error ? error.name : "unknown error";
        await parts.notify({ what: "trouble", lane, reason }).catch(() => undefined);
        return backoff(3);
      });
      if (rest > 0) rests.set(lane, timers.now() + rest);
      else rests.delete(lane);
    }
  }

  function look(lane: string): void {
    if (stopping) return;
    if (running.has(lane)) {
      // It may be past its last look already, so it looks once more when it ends.
      missed.add(lane);
      return;
    }
    alarms.get(lane)?.();
    alarms.delete(lane);
    running.set(
      lane,
      run(lane).finally(() => {
        running.delete(lane);
        if (missed.delete(lane)) look(lane);
        if (running.size === 0) for (const resolve of idle.splice(0)) resolve();
      }),
    );
  }

  const due = () => {
    const now = timers.now();
    const waiting = directory.lanes().flatMap((lane) => directory.pending(lane));
    return waiting.filter(({ entry }) => entry.notBefore <= now).length;
  };

  directory.onPending((lanes) => lanes.forEach(look));
  directory.lanes().forEach(look);
  return {
    wake: () => directory.lanes().forEach(look),
    async drain(milliseconds) {
      let late = false;
      const callOff = timers.after(milliseconds, () => {
        late = true;
        for (const resolve of idle.splice(0)) resolve();
      });
      while (!late && due() > 0) await new Promise<void>((resolve) => idle.push(resolve));
      callOff();
      return due();
    },
    async stop() {
      stopping = true;
      for (const callOff of alarms.values()) callOff();
      await Promise.allSettled(running.values());
    },
  };
}
