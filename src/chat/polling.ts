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

export interface Polling {
  readonly watch: PollWatch;
  /**
   * Resolves when the loop was stopped; rejects with BadToken, TakenElsewhere, PollingStalled, or
   * what the loop itself was rejected with.
   */
  run(): Promise<void>;
}

/**
 * Keeps the receiving loop running: waits out a short conflict, and gives up loudly where going on
 * makes no sense.
 */
export function createPolling(parts: PollingParts): Polling {
  return new PatientPolling(parts);
}

class PatientPolling implements Polling {
  readonly watch: PollWatch;
  readonly #parts: PollingParts;
  #waitingSince: number | null = null;
  #conflictSince: number | null = null;

  constructor(parts: PollingParts) {
    this.#parts = parts;
    this.watch = {
      begun: () => {
        this.#waitingSince = parts.timers.now();
      },
      ended: (outcome) => {
        this.#waitingSince = null;
        if (outcome === "updates") this.#conflictSince = null;
      },
    };
  }

  run(): Promise<void> {
    const { timers } = this.#parts;
    let callOff = (): void => undefined;
    const stalled = new Promise<never>((_, reject) => {
      const look = () => {
        if (this.#isStalled()) reject(new PollingStalled());
        else callOff = timers.after(WATCH_MILLISECONDS, look);
      };
      look();
    });
    return Promise.race([this.#keepLooping(), stalled]).finally(() => callOff());
  }

  #isStalled(): boolean {
    const since = this.#waitingSince;
    return since !== null && this.#parts.timers.now() - since > STALL_MILLISECONDS;
  }

  async #keepLooping(): Promise<void> {
    const { timers, loop, judge } = this.#parts;
    for (;;) {
      try {
        return await loop();
      } catch (error) {
        const meaning = judge(error);
        if (meaning === "bad-token") throw new BadToken();
        if (meaning === "other") throw error;
        this.#conflictSince ??= timers.now();
        if (timers.now() - this.#conflictSince >= CONFLICT_PATIENCE_MILLISECONDS) {
          throw new TakenElsewhere();
        }
        await new Promise<void>((resolve) => timers.after(CONFLICT_PAUSE_MILLISECONDS, resolve));
      }
    }
  }
}
