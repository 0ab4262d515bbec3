import { tooManyRequests } from "../refusal.ts";
import type { Clock } from "../time.ts";

/**
 * How often the bot may write. The platform does not publish its limits; these are the ones its
 * questions-and-answers page for bots names: about one message a second in a chat with short
 * bursts, 20 a minute in a group.
 */
export interface RateLimit {
  privatePerSecond: number;
  /** Messages a private chat takes at once before the rate counts. */
  privateBurst: number;
  groupPerMinute: number;
}

export const PUBLISHED_RATE: RateLimit = {
  privatePerSecond: 1,
  privateBurst: 3,
  groupPerMinute: 20,
};

interface Bucket {
  /** Messages that may be sent now; a fraction grows back with time. */
  level: number;
  at: number;
}

/** Refuses messages that come too fast. Off until it is switched on. */
export class RateLimiter {
  readonly #clock: Clock;
  readonly #buckets = new Map<number, Bucket>();
  #rate: RateLimit | undefined;

  constructor(clock: Clock) {
    this.#clock = clock;
  }

  on(rate: RateLimit = PUBLISHED_RATE): void {
    this.#rate = rate;
    this.#buckets.clear();
  }

  off(): void {
    this.#rate = undefined;
  }

  /**
   * Counts messages to a chat.
   * @throws ApiRefusal 429 with whole seconds until the next one is taken
   */
  count(chatId: number, messages = 1): void {
    if (this.#rate === undefined) return;
    const isGroup = chatId < 0;
    const capacity = isGroup ? this.#rate.groupPerMinute : this.#rate.privateBurst;
    const perSecond = isGroup ? this.#rate.groupPerMinute / 60 : this.#rate.privatePerSecond;
    const now = this.#clock();
    const bucket = this.#buckets.get(chatId) ?? { level: capacity, at: now };
    const level = Math.min(capacity, bucket.level + ((now - bucket.at) / 1000) * perSecond);
    if (level < 1) {
      this.#buckets.set(chatId, { level, at: now });
      throw tooManyRequests(Math.max(1, Math.ceil((1 - level) / perSecond)));
    }
    this.#buckets.set(chatId, { level: level - messages, at: now });
  }
}
