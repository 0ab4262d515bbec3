import { Bot, GrammyError } from "grammy";
import type { Update } from "grammy/types";
import type { Carrier, Reception, Timers } from "../cases/ports.ts";
import type { Wording } from "../domain/rendered.ts";
import { createCarrier, PLATFORM_PACE } from "./carrier.ts";
import { decodeUpdate, UPDATE_KINDS } from "./decode.ts";
import type { Download } from "./download.ts";
import { createDownload } from "./download.ts";
import type { Introduction } from "./introduce.ts";
import { introduce } from "./introduce.ts";
import type { Log } from "./log.ts";
import { BadToken, createPolling } from "./polling.ts";
import type { PressCodec } from "./press-codec.ts";

/** The client's own default is 500 s, over which a dead connection goes unnoticed. */
const TIMEOUT_SECONDS = 60;
/** Bot API, answerCallbackQuery: 0-200 characters. */
const TOAST_LIMIT = 200;

export interface BotOptions {
  readonly token: string;
  /** Another Bot API server than the public one, without a slash at the end. */
  readonly apiRoot?: string;
  readonly wording: Wording;
  readonly codec: PressCodec;
  readonly timers: Timers;
  readonly log: Log;
  /** How fast messages may follow each other; default: what the platform asks for. */
  readonly pace?: Pick<Carrier, "limits" | "overall">;
}

/** The chat service: people's messages in, effects out. */
export interface Chat {
  readonly carrier: Carrier;
  readonly download: Download;
  /** Asks who the bot is, as long as it takes. @throws BadToken */
  identify(): Promise<{ readonly id: number; readonly username: string }>;
  /** Sets the menus of commands and the texts that strangers see; failures are only logged. */
  introduce(introduction: Introduction): Promise<void>;
  /**
   * Receives until `stop`. Rejects with BadToken, TakenElsewhere or PollingStalled, all of which
   * say in a sentence what to do.
   */
  run(reception: Reception): Promise<void>;
  /**
   * Takes nothing new and waits for what is being taken in. What was not taken in comes again at
   * the next start. Effects may still be carried out afterwards.
   */
  stop(): Promise<void>;
}

const isUnknownToken = (error: unknown) =>
  error instanceof GrammyError && (error.error_code === 401 || error.error_code === 404);
/** Doubles from a second up to half a minute, so that a line that comes back is noticed soon. */
const pauseAfter = (failures: number) => Math.min(1_000 * 2 ** (failures - 1), 30_000);

export function createChat(options: BotOptions): Chat {
  const { token, wording, codec, timers, log } = options;
  const apiRoot = options.apiRoot ?? "https://api.telegram.org";
  const bot = new Bot(token, { client: { apiRoot, timeoutSeconds: TIMEOUT_SECONDS } });
  let reception: Reception | null = null;
  let stopping = false;
  let pollFailures = 0;
  /** The newest update that is on disk; only what is below it may be confirmed. */
  let taken: number | null = null;
  let busy: Promise<void> = Promise.resolve();
  let running: Promise<void> | null = null;

  const polling = createPolling({
    timers,
    loop: () => bot.start({ allowed_updates: UPDATE_KINDS }),
    judge: (error) => {
      if (isUnknownToken(error)) return "bad-token";
      return error instanceof GrammyError && error.error_code === 409 ? "conflict" : "other";
    },
  });

  bot.api.config.use(async (call, method, payload, signal) => {
    if (method !== "getUpdates") return call(method, payload, signal);
    polling.watch.begun();
    // The client's own goodbye would confirm an update whose handling was cut short.
    const goodbye = stopping ? { offset: taken === null ? 0 : taken + 1, timeout: 0 } : {};
    try {
      const answer = await call(method, { ...payload, ...goodbye }, signal);
      polling.watch.ended(answer.ok ? "updates" : "error");
      if (answer.ok) pollFailures = 0;
      return answer;
    } catch (error) {
      polling.watch.ended("error");
      pollFailures++;
      // The first, second, fourth, eighth …: an outage of hours is no thousand lines.
      const isPowerOfTwo = (pollFailures & (pollFailures - 1)) === 0;
      if (!stopping && isPowerOfTwo) log("poll-failed", { error, method, count: pollFailures });
      throw error;
    }
  });

  async function takeIn(update: Update): Promise<void> {
    const { id, username } = bot.botInfo;
    const incoming = decodeUpdate(update, { bot: { id, username }, codec, now: timers.now });
    const received = incoming && (await reception?.receive(incoming));
    const query = update.callback_query?.id;
    if (query === undefined) return;
    const language = received?.language ?? incoming?.from.language ?? "en";
    const toast = received?.toast && wording.phrase(received.toast, language);
    answer(query, toast ?? "");
  }

  /** Stops the button's spinning. Nobody waits for it, and when it comes too late nothing is lost. */
  function answer(query: string, toast: string): void {
    const text = toast.length > TOAST_LIMIT ? `${toast.slice(0, TOAST_LIMIT - 1)}…` : toast;
    bot.api
      .answerCallbackQuery(query, text === "" ? {} : { text })
      .catch((error) => log("press-not-answered", { error }));
  }

  bot.use(({ update }) => {
    if (stopping) return undefined;
    busy = takeIn(update)
      .catch((error) => log("update-failed", { error, update: update.update_id }))
      .then(() => {
        taken = update.update_id;
      });
    return busy;
  });
  bot.catch(({ error }) => log("handler-failed", { error }));

  return {
    carrier: createCarrier({
      ...{ api: bot.api, wording, codec },
      report: (what) => log(what),
      pace: options.pace ?? PLATFORM_PACE,
    }),
    download: createDownload({
      locate: async (fileId) => {
        const { file_path: path, file_size: bytes } = await bot.api.getFile(fileId);
        return {
          ...(path === undefined ? {} : { path }),
          ...(bytes === undefined ? {} : { bytes }),
        };
      },
      address: (path) => `${apiRoot}/file/bot${token}/${path}`,
    }),
    async identify() {
      for (let failures = 1; ; failures++) {
        try {
          bot.botInfo = await bot.api.getMe();
          return { id: bot.botInfo.id, username: bot.botInfo.username };
        } catch (error) {
          if (isUnknownToken(error)) throw new BadToken();
          log("not-reachable", { error, count: failures });
          await new Promise<void>((resolve) => timers.after(pauseAfter(failures), resolve));
        }
      }
    },
    introduce: (introduction) => introduce(bot.api, introduction, log),
    run(receiver) {
      reception = receiver;
      running = polling.run();
      return running;
    },
    async stop() {
      stopping = true;
      await busy;
      await bot.stop().catch((error) => log("stop-failed", { error }));
      await running?.catch(() => undefined);
    },
  };
}
