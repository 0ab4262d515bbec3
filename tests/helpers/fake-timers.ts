import type { Timers } from "../../src/cases/ports.ts";

export interface FakeTimers extends Timers {
  /** Lets that much time pass: runs what falls due, in order, and whatever follows from it. */
  advance(milliseconds: number): Promise<void>;
  /** Lets everything run that waits for nothing but its turn. */
  settled(): Promise<void>;
}

/** A clock that stands still until it is told to move. */
export function createFakeTimers(start = 1_000_000): FakeTimers {
  let now = start;
  const waiting = new Set<{ at: number; run: () => void }>();
  const settled = () => new Promise<void>((resolve) => setImmediate(resolve));
  return {
    now: () => now,
    after(milliseconds, run) {
      const timer = { at: now + milliseconds, run };
      waiting.add(timer);
      return () => void waiting.delete(timer);
    },
    settled,
    async advance(milliseconds) {
      const end = now + milliseconds;
      await settled();
      for (;;) {
        const [next] = [...waiting].filter(({ at }) => at <= end).sort((a, b) => a.at - b.at);
        if (next === undefined) break;
        waiting.delete(next);
        now = Math.max(now, next.at);
        next.run();
        await settled();
      }
      now = end;
    },
  };
}
