import type { Limits } from "../limits.ts";
import { type ApiRefusal, conflict } from "../refusal.ts";
import type { Cancel, TimeSource } from "../time.ts";
import type { UpdateQueue, WireUpdate } from "./updates.ts";

/** The arguments of getUpdates, brought into their ranges. */
export interface PollArguments {
  offset: number;
  /** 1 to 100. */
  limit: number;
  /** 0 to 50. */
  timeoutSeconds: number;
}

interface HeldPoll {
  args: PollArguments;
  resolve: (updates: WireUpdate[]) => void;
  reject: (refusal: ApiRefusal) => void;
  cancel: Cancel;
}

interface PollingParts {
  queue: UpdateQueue;
  time: TimeSource;
  limits: Limits;
}

const OTHER_POLLER =
  "terminated by other getUpdates request; make sure that only one bot instance is running";

/** Long polling: at most one request waits at a time. */
export class Polling {
  readonly #parts: PollingParts;
  #held: HeldPoll | undefined;
  #last = { offset: Number.NaN, at: Number.NEGATIVE_INFINITY };
  #nextConflictAt = Number.NEGATIVE_INFINITY;
  #isWaking = false;

  constructor(parts: PollingParts) {
    this.#parts = parts;
    parts.queue.onArrival(() => this.#wake());
  }

  /**
   * Answers with waiting updates, or waits for the first one.
   * @param gone aborts when the client has closed the connection
   * @throws ApiRefusal 409 when another poll takes its place
   */
  async poll(asked: PollArguments, gone: AbortSignal): Promise<WireUpdate[]> {
    const args = this.#slowed(asked);
    const updates = this.#parts.queue.fetch(args.offset, args.limit);
    if (updates.length > 0 || args.timeoutSeconds === 0) return updates;
    this.#refuseHeld(OTHER_POLLER);
    return await this.#hold(args, gone);
  }

  /** The real server's brake on a client that asks for the same updates again and again. */
  #slowed(args: PollArguments): PollArguments {
    const now = this.#parts.time.clock();
    const { repeatedPollSeconds, hastyPollSeconds } = this.#parts.limits;
    const passed = args.offset === this.#last.offset ? (now - this.#last.at) / 1000 : Infinity;
    this.#last = { offset: args.offset, at: now };
    const isRepeated = args.timeoutSeconds < repeatedPollSeconds && passed < repeatedPollSeconds;
    return {
      offset: args.offset,
      limit: passed < hastyPollSeconds ? 1 : args.limit,
      timeoutSeconds: isRepeated ? repeatedPollSeconds : args.timeoutSeconds,
    };
  }

  #hold(args: PollArguments, gone: AbortSignal): Promise<WireUpdate[]> {
    return new Promise((resolve, reject) => {
      const { queue, time } = this.#parts;
      const cancel = time.wait(args.timeoutSeconds * 1000, () => {
        this.#letGo(held)?.resolve(queue.fetch(args.offset, args.limit));
      });
      const held: HeldPoll = { args, resolve, reject, cancel };
      this.#held = held;
      gone.addEventListener("abort", () => this.#letGo(held)?.resolve([]), { once: true });
    });
  }

  /** Stops holding this poll; undefined when it is not the one held. */
  #letGo(held: HeldPoll | undefined): HeldPoll | undefined {
    if (held === undefined || this.#held !== held) return undefined;
    held.cancel();
    this.#held = undefined;
    return held;
  }

  /** Waits a moment, so that an album's updates leave together, as on the real server. */
  #wake(): void {
    if (this.#isWaking) return;
    this.#isWaking = true;
    setImmediate(() => {
      this.#isWaking = false;
      const held = this.#held;
      if (held === undefined) return;
      const updates = this.#parts.queue.fetch(held.args.offset, held.args.limit);
      if (updates.length > 0) this.#letGo(held)?.resolve(updates);
    });
  }

  /** Ends the held poll because a webhook takes over. */
  refuseForWebhook(): void {
    this.#refuseHeld("terminated by setWebhook request");
  }

  #refuseHeld(reason: string): void {
    const held = this.#letGo(this.#held);
    if (held === undefined) return;
    this.#inTurn(() => held.reject(conflict(reason)));
  }

  /**
   * The 409 for a poll that cannot even begin.
   * @throws ApiRefusal always
   */
  async refuse(reason: string): Promise<never> {
    await new Promise<void>((done) => this.#inTurn(done));
    throw conflict(reason);
  }

  /** The first 409 is given at once, those that follow within a pause only after it. */
  #inTurn(then: () => void): void {
    const { time, limits } = this.#parts;
    const pause = limits.conflictSeconds * 1000;
    const now = time.clock();
    if (now < this.#nextConflictAt) time.wait(pause, then);
    else {
      this.#nextConflictAt = now + pause;
      then();
    }
  }

  /** Lets the held poll go empty-handed: the server stops. */
  stop(): void {
    this.#letGo(this.#held)?.resolve([]);
  }
}
