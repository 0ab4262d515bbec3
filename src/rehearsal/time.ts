/** Tells the time in milliseconds since 1970. */
export type Clock = () => number;

/** Calls something off. Calling it twice does no harm. */
export type Cancel = () => void;

/** Runs `then` after that many milliseconds, unless called off before. */
export type Wait = (milliseconds: number, then: () => void) => Cancel;

/** What the server needs of time. The two belong together: a test clock comes with its own wait. */
export interface TimeSource {
  clock: Clock;
  wait: Wait;
}

/** The computer's own clock and timers. */
export const REAL_TIME: TimeSource = {
  clock: () => Date.now(),
  wait: (milliseconds, then) => {
    // A forgotten retry must not keep the program from ending.
    const timer = setTimeout(then, milliseconds).unref();
    return () => clearTimeout(timer);
  },
};

/** Whole seconds since 1970, the unit of every date on the wire. */
export function unixSeconds(clock: Clock): number {
  return Math.floor(clock() / 1000);
}

/** A clock that moves only when told to. */
export interface TestTime extends TimeSource {
  /** Moves the clock on and runs what falls due, in order of its due time. */
  advance(milliseconds: number): void;
  /** How many things wait for their time. */
  scheduled(): number;
}

/**
 * Makes a clock for tests.
 * @param startMilliseconds the time it shows at first, milliseconds since 1970
 */
export function createTestTime(startMilliseconds: number): TestTime {
  let now = startMilliseconds;
  let order = 0;
  const due = new Map<number, { at: number; then: () => void }>();

  const nextDue = (until: number) => {
    let found: { key: number; at: number; then: () => void } | undefined;
    for (const [key, entry] of due) {
      if (entry.at <= until && (found === undefined || entry.at < found.at)) {
        found = { key, ...entry };
      }
    }
    return found;
  };

  return {
    clock: () => now,
    scheduled: () => due.size,
    wait: (milliseconds, then) => {
      order += 1;
      const key = order;
      due.set(key, { at: now + milliseconds, then });
      return () => due.delete(key);
    },
    advance: (milliseconds) => {
      const until = now + milliseconds;
      for (let entry = nextDue(until); entry !== undefined; entry = nextDue(until)) {
        due.delete(entry.key);
        now = entry.at;
        entry.then();
      }
      now = until;
    },
  };
}
