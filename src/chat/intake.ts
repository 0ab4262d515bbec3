import type { Update, UserFromGetMe } from "grammy/types";
import type { Reception } from "../cases/ports.ts";
import type { Wording } from "../domain/rendered.ts";
import { decodeUpdate } from "./decode.ts";
import type { Log } from "./log.ts";
import type { PressCodec } from "./press-codec.ts";

/** Bot API, answerCallbackQuery: 0-200 characters. */
const TOAST_LIMIT = 200;

export interface IntakeParts {
  readonly me: () => Pick<UserFromGetMe, "id" | "username">;
  readonly codec: PressCodec;
  readonly wording: Wording;
  readonly now: () => number;
  readonly log: Log;
  /** Stops a pressed button's spinning and shows a word; nobody waits for it. */
  readonly answer: (query: string, toast: string) => void;
}

/** Takes updates in one after another, and knows how far it has come. */
export class Intake {
  readonly #parts: IntakeParts;
  #reception: Reception | null = null;
  #busy: Promise<void> = Promise.resolve();
  #taken: number | null = null;
  #closed = false;

  constructor(parts: IntakeParts) {
    this.#parts = parts;
  }

  /** The newest update that is on disk; only it and those before it may be confirmed. */
  get taken(): number | null {
    return this.#taken;
  }

  get isClosed(): boolean {
    return this.#closed;
  }

  open(reception: Reception): void {
    this.#reception = reception;
  }

  /** Lets nothing more in and waits for the one under way. */
  async close(): Promise<void> {
    this.#closed = true;
    await this.#busy;
  }

  /** Never rejects: an update that cannot be read must not block those after it. */
  take(update: Update): Promise<void> {
    if (this.#closed) return Promise.resolve();
    this.#busy = this.#handle(update)
      .catch((error) => this.#parts.log("update-failed", { error, update: update.update_id }))
      .then(() => {
        this.#taken = update.update_id;
      });
    return this.#busy;
  }

  async #handle(update: Update): Promise<void> {
    const { codec, wording, now, answer } = this.#parts;
    const incoming = decodeUpdate(update, { bot: this.#parts.me(), codec, now });
    const received = incoming && (await this.#reception?.receive(incoming));
    const query = update.callback_query?.id;
    if (query === undefined) return;
    const language = received?.language ?? incoming?.from.language ?? "en";
    answer(query, shorten(received?.toast ? wording.phrase(received.toast, language) : ""));
  }
}

const shorten = (toast: string) =>
  toast.length > TOAST_LIMIT ? `${toast.slice(0, TOAST_LIMIT - 1)}…` : toast;
