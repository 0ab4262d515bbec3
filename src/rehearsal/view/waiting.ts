import type { FeedEvent } from "../world/feed.ts";
import type { World } from "../world/world.ts";
import { transcriptText, type Views } from "./chat-view.ts";
import type { SeenMessage } from "./seen-message.ts";

/** What a test waited for did not come. */
export class WaitingError extends Error {
  override readonly name = "WaitingError";
}

export interface WaitOptions {
  /** Milliseconds of real time; 5000 when missing. */
  timeoutMs?: number;
}

/** Ways for a test to wait until something has happened; all follow events, none polls. */
export interface Waiting {
  /**
   * Waits until the messages of a chat fit.
   * @returns the messages that fitted
   * @throws WaitingError with the transcript when the time is up
   */
  waitFor(
    chatId: number,
    fits: (messages: SeenMessage[]) => boolean,
    options?: WaitOptions,
  ): Promise<SeenMessage[]>;
  /**
   * Waits until the condition holds; it is looked at again after every event.
   * @param what the end of "Waited … ms for", for the error
   */
  until(condition: () => boolean, what: string, options?: WaitOptions): Promise<void>;
  /**
   * Waits until the bot has confirmed every update, no call is under way, and neither changes for
   * a moment.
   * @param options quietMs: how long that moment is, in milliseconds; 30 when missing
   */
  settled(options?: WaitOptions & { quietMs?: number }): Promise<void>;
}

const USUAL_TIMEOUT_MS = 5000;
const USUAL_QUIET_MS = 30;

/** Makes the waiting helpers. */
export function createWaiting(world: World, views: Views): Waiting {
  return {
    until: (condition, what, options = {}) =>
      follow(
        world,
        (_event, finish) => {
          if (condition()) finish();
        },
        { ...options, complaint: () => what },
      ),
    waitFor: async (chatId, fits, options = {}) => {
      const complaint = () =>
        `chat ${chatId} to fit. It shows:\n${transcriptText(views.transcript(chatId))}`;
      let fitted: SeenMessage[] = [];
      const attempt: Attempt = (_event, finish) => {
        fitted = views.transcript(chatId);
        if (fits(fitted)) finish();
      };
      await follow(world, attempt, { ...options, complaint });
      return fitted;
    },
    settled: (options = {}) => settle(world, options),
  };
}

/** Looks whether the wait is over, once at first and then after every event. */
type Attempt = (event: FeedEvent | undefined, finish: () => void) => void;

/** Waits until an attempt says that it is over; rejects with the complaint when time is up. */
function follow(
  world: World,
  attempt: Attempt,
  { timeoutMs = USUAL_TIMEOUT_MS, complaint }: WaitOptions & { complaint: () => string },
): Promise<void> {
  return new Promise((resolve, reject) => {
    const end = (conclude: () => void) => {
      clearTimeout(timer);
      unsubscribe();
      conclude();
    };
    const look = (event: FeedEvent | undefined) => {
      try {
        attempt(event, () => end(resolve));
      } catch (error) {
        end(() => reject(error));
      }
    };
    const timer = setTimeout(() => {
      const late = new WaitingError(`Waited ${timeoutMs} ms for ${complaint()}`);
      end(() => reject(late));
    }, timeoutMs);
    const unsubscribe = world.feed.subscribe(look);
    look(undefined);
  });
}

async function settle(
  world: World,
  { quietMs = USUAL_QUIET_MS, ...options }: WaitOptions & { quietMs?: number },
): Promise<void> {
  const updates = () => world.queue.waiting().length;
  const calls = () => world.calls.underWay();
  const complaint = () =>
    `the bot to settle; ${updates()} updates wait for it and ` +
    `${calls()} calls are under way. Is it running?`;
  let quiet: ReturnType<typeof setTimeout> | undefined;
  const attempt: Attempt = (event, finish) => {
    if (isPolling(event)) return;
    clearTimeout(quiet);
    if (updates() === 0 && calls() === 0) quiet = setTimeout(finish, quietMs);
  };
  try {
    await follow(world, attempt, { ...options, complaint });
  } finally {
    clearTimeout(quiet);
  }
}

/** Asking for updates goes on all the time and means nothing. */
function isPolling(event: FeedEvent | undefined): boolean {
  const isCall = event?.kind === "calling" || event?.kind === "called";
  return isCall && event.method === "getUpdates";
}
