import type { RateLimit } from "./ports.ts";

/** Remembers when messages went out and tells when the next one may. */
export interface Pace {
  /** The earliest moment, not before `now`, at which one more keeps all the limits. */
  next(now: number): number;
  note(now: number): void;
}

/** Sliding windows: any stretch of `milliseconds` holds at most `count` messages. */
export function createPace(limits: readonly RateLimit[]): Pace {
  const longest = Math.max(0, ...limits.map((limit) => limit.count));
  let sent: number[] = [];
  return {
    next(now) {
      const free = limits.map(({ count, milliseconds }) => {
        const oldest = sent.at(-count);
        return oldest === undefined ? now : oldest + milliseconds;
      });
      return Math.max(now, ...free);
    },
    note(now) {
      sent = [...sent, now].slice(-longest);
    },
  };
}
