import type { Timers } from "../cases/ports.ts";
import { TurnrowError } from "../domain/result.ts";

/** Two programs with one token: during an update of ours the old one may still be ending. */
const CONFLICT_PATIENCE_MILLISECONDS = 60_000;
const CONFLICT_PAUSE_MILLISECONDS = 3_000;
/** Longer than a poll (30 s) and the client's own limit (60 s) together: the line is dead. */
const STALL_MILLISECONDS = 100_000;
const WATCH_MILLISECONDS = 15_000;

/** The token is not one that the chat service knows. */
export class BadToken extends TurnrowError {
  override readonly name = "BadToken";
  constructor() {
    super("Telegram does not know this bot token; ask @BotFather for it and set it again.");
  }
}

/** Another program takes this bot's messages. */
export class TakenElsewhere extends TurnrowError {
  override readonly name = "TakenElsewhere";
  constructor() {
    super(
      "Another program has been receiving this bot's messages for a minute. Stop that one, or " +
        "give each its own bot.",
    );
  }
}

/** Nothing came back for so long that the connection must be dead without anybody telling. */
export class PollingStalled extends TurnrowError {
  override readonly name = "PollingStalled";
  constructor() {
    super("The connection to Telegram has gone silent; start the program again.");
  }
}

/** Watches over requests for updates. */
export interface PollWatch {
  /** A request has begun. */
  begun(): void;
  /** It has come back, with whatever result. */
  ended(outcome: "updates" | "error"): void;
}

export interface PollingParts {
  readonly timers: Timers;
  /** Runs the receiving loop until it is stopped; rejects where it cannot go on by itself. */
  readonly loop: () => Promise<void>;
  /** What a rejection of the loop means. */
  readonly judge: (error: unknown) => "bad-token" | "conflict" | "other";
}

/**
 * Keeps the receiving loop running: waits out a short conflict, and gives up loudly where going on
 * makes no sense.
 *
 * @returns `run` resolves when the loop was stopped, and rejects with BadToken, TakenElsewhere,
 * PollingStalled, or what the loop itself was rejected with
 */
export function createPolling({ timers, loop, judge }: PollingParts): {
  readonly watch: PollWatch;
  run(): Promise<void>;
} {
  let waitingSince: number | null = null;
  let conflictSince: number | null = null;

  async function keepLooping(): Promise<void> {
    for (;;) {
      try {
        return await loop();
      } catch (error) {
        const meaning = judge(error);
        if (meaning === "bad-token") throw new BadToken();
        if (meaning === "other") throw error;
        conflictSince ??= timers.now();
        if (timers.now() - conflictSince >= CONFLICT_PATIENCE_MILLISECONDS) {
          throw new TakenElsewhere();
        }
        await new Promise<void>((resolve) => timers.after(CONFLICT_PAUSE_MILLISECONDS, resolve));
      }
    }
  }

  return {
    watch: {
      begun: () => {
        waitingSince = timers.now();
      },
      ended: (outcome) => {
        waitingSince = null;
        if (outcome === "updates") conflictSince = null;
      },
    },
    run() {
      let callOff = (): void => undefined;
      const stalled = new Promise<never>((_, reject) => {
        const look = () => {
          if (waitingSince !== null && timers.now() - waitingSince > STALL_MILLISECONDS) {
            reject(new PollingStalled());
          } else callOff = timers.after(WATCH_MILLISECONDS, look);
        };
        look();
      });
      return Promise.race([keepLooping(), stalled]).finally(() => callOff());
    },
  };
}
