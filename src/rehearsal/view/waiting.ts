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
  /** Resolves when `isDone` says so after an event, rejects with `complaint` when time is up. */
  const follow = (
    isDone: (event: FeedEvent | undefined, finish: () => void) => void,
    { timeoutMs = USUAL_TIMEOUT_MS, complaint }: WaitOptions & { complaint: () => string },
  ) =>
    new Promise<void>((resolve, reject) => {
      const end = () => {
        clearTimeout(timer);
        unsubscribe();
      };
      const finish = () => {
        end();
        resolve();
      };
      const timer = setTimeout(() => {
        end();
        reject(new WaitingError(`Waited ${timeoutMs} ms for ${complaint()}`));
      }, timeoutMs);
      const attempt = (event: FeedEvent | undefined) => {
        try {
          isDone(event, finish);
        } catch (error) {
          end();
          reject(error);
        }
      };
      const unsubscribe = world.feed.subscribe(attempt);
      attempt(undefined);
    });

  const until: Waiting["until"] = (condition, what, options = {}) =>
    follow(
      (_event, finish) => {
        if (condition()) finish();
      },
      { ...options, complaint: () => what },
    );

  return {
    until,
    waitFor: async (chatId, fits, options = {}) => {
      const complaint = () =>
        `chat ${chatId} to fit. It shows:\n${transcriptText(views.transcript(chatId))}`;
      let fitted: SeenMessage[] = [];
      await follow(
        (_event, finish) => {
          fitted = views.transcript(chatId);
          if (fits(fitted)) finish();
        },
        { ...options, complaint },
      );
      return fitted;
    },
    settled: async ({ quietMs = USUAL_QUIET_MS, ...options } = {}) => {
      let quiet: ReturnType<typeof setTimeout> | undefined;
      const isIdle = () => world.queue.waiting().length === 0 && world.calls.underWay() === 0;
      const complaint = () =>
        `the bot to settle; ${world.queue.waiting().length} updates wait for it and ` +
        `${world.calls.underWay()} calls are under way. Is it running?`;
      try {
        await follow(
          (event, finish) => {
            if (isPolling(event)) return;
            clearTimeout(quiet);
            if (isIdle()) quiet = setTimeout(finish, quietMs);
          },
          { ...options, complaint },
        );
      } finally {
        clearTimeout(quiet);
      }
    },
  };
}

/** Asking for updates goes on all the time and means nothing. */
function isPolling(event: FeedEvent | undefined): boolean {
  const isCall = event?.kind === "calling" || event?.kind === "called";
  return isCall && event.method === "getUpdates";
}
