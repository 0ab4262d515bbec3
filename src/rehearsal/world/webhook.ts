import type { WebhookInfo } from "@grammyjs/types";
import { type TimeSource, unixSeconds } from "../time.ts";
import type { QueuedUpdate, UpdateQueue } from "./updates.ts";
import { postToWebhook, type WebhookReply } from "./webhook-request.ts";

/** Where and how updates are posted. */
export interface WebhookSettings {
  url: string;
  secret: string;
  /** How many updates are under way at once, 1 to 100. */
  maxConnections: number;
}

interface Lane {
  failures: number;
  delaySeconds: number;
}

interface WebhookParts {
  queue: UpdateQueue;
  time: TimeSource;
  /** Carries out a call that the bot sent as the body of its reply. */
  call: (body: string) => void;
}

/** Longest pause between tries, and longest `Retry-After` that is obeyed, in seconds (server). */
const LONGEST_PAUSE_SECONDS = 60;
const LONGEST_RETRY_AFTER_SECONDS = 3600;
/** A webhook that answers 410 for this long is closed (server). */
const GONE_SECONDS = 23 * 3600;

/**
 * Posts updates to the bot: each lane in order, different lanes side by side, the same update
 * again and again until it is taken (any 2xx status) or has expired.
 */
export class Webhook {
  /** The earliest time of the next setWebhook call, milliseconds since 1970. */
  nextSetAt = Number.NEGATIVE_INFINITY;
  readonly #parts: WebhookParts;
  #settings: WebhookSettings | undefined;
  readonly #busy = new Map<string, Lane>();
  #open = 0;
  #lastError: { at: number; text: string } | undefined;
  #goneSince: number | undefined;

  constructor(parts: WebhookParts) {
    this.#parts = parts;
    parts.queue.onArrival(() => this.#sendMore());
  }

  isSet(): boolean {
    return this.#settings !== undefined;
  }

  set(settings: WebhookSettings): void {
    this.#settings = settings;
    this.#lastError = undefined;
    this.#goneSince = undefined;
    this.#sendMore();
  }

  clear(): void {
    this.#settings = undefined;
    this.#lastError = undefined;
  }

  info(): WebhookInfo {
    const { queue } = this.#parts;
    const allowed = queue.allowed();
    return {
      url: this.#settings?.url ?? "",
      has_custom_certificate: false,
      pending_update_count: queue.waiting().length,
      ...(this.#settings === undefined ? {} : { max_connections: this.#settings.maxConnections }),
      ...(this.#lastError === undefined
        ? {}
        : { last_error_date: this.#lastError.at, last_error_message: this.#lastError.text }),
      ...(allowed === undefined ? {} : { allowed_updates: updateTypes(allowed) }),
    };
  }

  #sendMore(): void {
    const settings = this.#settings;
    if (settings === undefined) return;
    for (const entry of this.#parts.queue.waiting()) {
      if (this.#open >= settings.maxConnections) return;
      if (this.#busy.has(entry.lane)) continue;
      this.#busy.set(entry.lane, { failures: 0, delaySeconds: 1 });
      this.#send(entry, settings);
    }
  }

  #send(entry: QueuedUpdate, { url, secret }: WebhookSettings): void {
    this.#open += 1;
    const body = JSON.stringify(entry.update);
    void postToWebhook({ url, secret, body }).then((reply) => {
      this.#open -= 1;
      if (reply.status >= 200 && reply.status <= 299) this.#taken(entry, reply);
      else this.#failed(entry, reply);
      this.#sendMore();
    });
  }

  #taken(entry: QueuedUpdate, reply: WebhookReply): void {
    this.#goneSince = undefined;
    this.#parts.queue.remove(entry.update.update_id, "confirmed");
    this.#busy.delete(entry.lane);
    if (reply.body.trimStart().startsWith("{")) this.#parts.call(reply.body);
  }

  #failed(entry: QueuedUpdate, reply: WebhookReply): void {
    const { time } = this.#parts;
    const text =
      reply.status === 0
        ? "Connection refused"
        : `Wrong response from the webhook: ${reply.status} ${reply.statusText}`;
    this.#lastError = { at: unixSeconds(time.clock), text };
    if (this.#isGone(reply)) this.clear();
    const lane = this.#busy.get(entry.lane) ?? { failures: 0, delaySeconds: 1 };
    const pause = nextPause(lane, reply.retryAfterSeconds);
    if (time.clock() + pause * 1000 > entry.expiresAt) {
      this.#parts.queue.remove(entry.update.update_id, "expired");
      this.#busy.delete(entry.lane);
      return;
    }
    time.wait(pause * 1000, () => this.#again(entry));
  }

  #again(entry: QueuedUpdate): void {
    const settings = this.#settings;
    const isStillWaiting = this.#parts.queue.waiting().includes(entry);
    if (settings !== undefined && isStillWaiting) this.#send(entry, settings);
    else {
      this.#busy.delete(entry.lane);
      this.#sendMore();
    }
  }

  #isGone(reply: WebhookReply): boolean {
    const now = unixSeconds(this.#parts.time.clock);
    this.#goneSince = reply.status === 410 ? (this.#goneSince ?? now) : undefined;
    return this.#goneSince !== undefined && now > this.#goneSince + GONE_SECONDS;
  }
}

/** The first retry follows at once, then after 2, 4, 8 … seconds, unless the bot named a time. */
function nextPause(lane: Lane, retryAfterSeconds: number): number {
  lane.failures += 1;
  if (retryAfterSeconds > 0) return Math.min(retryAfterSeconds, LONGEST_RETRY_AFTER_SECONDS);
  if (lane.failures === 1) return 0;
  lane.delaySeconds = Math.min(lane.delaySeconds * 2, LONGEST_PAUSE_SECONDS);
  return lane.delaySeconds;
}

type UpdateTypes = NonNullable<WebhookInfo["allowed_updates"]>;

/** The names as the bot sent them; unknown ones are kept, as they would only never match. */
function updateTypes(names: readonly string[]): UpdateTypes {
  return names.filter((name): name is UpdateTypes[number] => name !== "");
}
