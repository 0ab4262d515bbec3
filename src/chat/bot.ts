import { Bot, GrammyError } from "grammy";
import type { Carrier, Reception, Timers } from "../cases/ports.ts";
import type { Wording } from "../domain/rendered.ts";
import { createPrinter, type PrintPaper } from "../paper/print-paper.ts";
import { createCarrier, PLATFORM_PACE } from "./carrier.ts";
import { UPDATE_KINDS } from "./decode.ts";
import type { Download } from "./download.ts";
import { createDownload } from "./download.ts";
import { Intake } from "./intake.ts";
import type { Introduction } from "./introduce.ts";
import { introduce } from "./introduce.ts";
import type { Log } from "./log.ts";
import type { Polling } from "./polling.ts";
import { BadToken, createPolling } from "./polling.ts";
import type { PressCodec } from "./press-codec.ts";

/** The client's own default is 500 s, over which a dead connection goes unnoticed. */
const TIMEOUT_SECONDS = 60;
/** What a request for updates asks for when it is the last one. */
interface Goodbye {
  readonly offset?: number;
  readonly timeout?: number;
}

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
  /** Draws up papers of our own; default: job sheets have no picture of the circuit. */
  readonly print?: PrintPaper;
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
/** The first, second, fourth, eighth …: an outage of hours is no thousand lines. */
const isWorthALine = (failures: number) => (failures & (failures - 1)) === 0;

/** Makes the chat service of one bot; nothing is sent or asked before it is told to. */
export function createChat(options: BotOptions): Chat {
  return new TelegramChat(options);
}

class TelegramChat implements Chat {
  readonly carrier: Carrier;
  readonly download: Download;
  readonly #options: BotOptions;
  readonly #bot: Bot;
  readonly #intake: Intake;
  readonly #polling: Polling;
  #running: Promise<void> | null = null;
  #pollFailures = 0;

  constructor(options: BotOptions) {
    const { token, wording, codec, timers, log } = options;
    const apiRoot = options.apiRoot ?? "https://api.telegram.org";
    const bot = new Bot(token, { client: { apiRoot, timeoutSeconds: TIMEOUT_SECONDS } });
    this.#options = options;
    this.#bot = bot;
    this.#intake = new Intake({
      ...{ codec, wording, log, now: timers.now },
      me: () => bot.botInfo,
      answer: (query, text) => this.#answer(query, text),
    });
    this.#polling = createPolling({
      timers,
      loop: () => this.#receive(),
      judge: meaningOf,
    });
    this.carrier = createCarrier({
      ...{ api: bot.api, wording, codec },
      report: (what) => log(what),
      pace: options.pace ?? PLATFORM_PACE,
      print: options.print ?? createPrinter(),
    });
    this.download = createDownload({
      locate: (fileId) => this.#locate(fileId),
      address: (path) => `${apiRoot}/file/bot${token}/${path}`,
    });
    bot.api.config.use((call, method, payload, signal) =>
      method === "getUpdates"
        ? this.#poll((rest) => call(method, { ...payload, ...rest }, signal))
        : call(method, payload, signal),
    );
    bot.use(({ update }) => this.#intake.take(update));
    bot.catch(({ error }) => log("handler-failed", { error }));
  }

  async identify() {
    const { log, timers } = this.#options;
    for (let failures = 1; ; failures++) {
      try {
        this.#bot.botInfo = await this.#bot.api.getMe();
        const { id, username } = this.#bot.botInfo;
        return { id, username };
      } catch (error) {
        if (isUnknownToken(error)) throw new BadToken();
        if (isWorthALine(failures)) log("not-reachable", { error, count: failures });
        await new Promise<void>((resolve) => timers.after(pauseAfter(failures), resolve));
      }
    }
  }

  introduce(introduction: Introduction): Promise<void> {
    return introduce(this.#bot.api, introduction, this.#options.log);
  }

  run(reception: Reception): Promise<void> {
    this.#intake.open(reception);
    this.#running = this.#polling.run();
    return this.#running;
  }

  async stop(): Promise<void> {
    const { log } = this.#options;
    await this.#intake.close();
    await this.#bot.stop().catch((error) => log("stop-failed", { error }));
    await this.#running?.catch(() => undefined);
  }

  /** Whatever happens after `stop` is part of stopping. */
  async #receive(): Promise<void> {
    if (this.#intake.isClosed) return;
    try {
      await this.#bot.start({ allowed_updates: UPDATE_KINDS });
    } catch (error) {
      if (!this.#intake.isClosed) throw error;
    }
  }

  /** Watches a request for updates, and keeps the client's goodbye from confirming too much. */
  async #poll<T extends { ok: boolean }>(call: (rest: Goodbye) => Promise<T>): Promise<T> {
    const { taken, isClosed } = this.#intake;
    // The client's own goodbye would confirm an update whose handling was cut short.
    const goodbye = isClosed ? { offset: taken === null ? 0 : taken + 1, timeout: 0 } : {};
    this.#polling.watch.begun();
    try {
      const answer = await call(goodbye);
      this.#polling.watch.ended(answer.ok ? "updates" : "error");
      if (answer.ok) this.#pollFailures = 0;
      return answer;
    } catch (error) {
      this.#polling.watch.ended("error");
      const count = ++this.#pollFailures;
      const wanted = !this.#intake.isClosed && isWorthALine(count);
      if (wanted) this.#options.log("poll-failed", { error, method: "getUpdates", count });
      throw error;
    }
  }

  async #locate(fileId: string) {
    const { file_path: path, file_size: bytes } = await this.#bot.api.getFile(fileId);
    return {
      ...(path === undefined ? {} : { path }),
      ...(bytes === undefined ? {} : { bytes }),
    };
  }

  /** Nobody waits for it, and when it comes too late nothing is lost. */
  #answer(query: string, text: string): void {
    this.#bot.api
      .answerCallbackQuery(query, text === "" ? {} : { text })
      .catch((error) => this.#options.log("press-not-answered", { error }));
  }
}

function meaningOf(error: unknown): "bad-token" | "conflict" | "other" {
  if (isUnknownToken(error)) return "bad-token";
  return error instanceof GrammyError && error.error_code === 409 ? "conflict" : "other";
}
