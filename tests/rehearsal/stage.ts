import { Api, Bot, GrammyError, HttpError } from "grammy";
import { afterEach } from "vitest";
import { LIMITS_WITHOUT_PAUSES } from "../../src/rehearsal/limits.ts";
import {
  createRehearsalServer,
  type RehearsalOptions,
  type RehearsalServer,
} from "../../src/rehearsal/server.ts";

function isRecord(value: unknown): value is {
  [field: string]: unknown;
  ok?: unknown;
  error_code?: unknown;
  description?: unknown;
} {
  return typeof value === "object" && value !== null;
}

/** A made-up token; the number before the colon becomes the bot's id. */
export const TOKEN = "1:rehearsal-token";

/** A running server and the unmodified grammY client that talks to it over HTTP. */
export interface Stage {
  server: RehearsalServer;
  api: Api;
  /** A bot on this server; stopped after the test. */
  bot(): Bot;
  /**
   * Makes a call that a typed client would not make.
   * @returns the refusal as "code description"; "ok" when there was none
   */
  ask(method: string, fields?: Record<string, string>): Promise<string>;
}

const running: (() => Promise<void>)[] = [];

afterEach(async () => {
  for (const end of running.splice(0).reverse()) await end();
});

/** Starts a server; it is stopped after the test. */
export async function openStage(options: Partial<RehearsalOptions> = {}): Promise<Stage> {
  const server = createRehearsalServer({
    token: TOKEN,
    ...options,
    limits: { ...LIMITS_WITHOUT_PAUSES, ...options.limits },
  });
  await server.start();
  running.push(() => server.stop());
  const client = { apiRoot: server.url };
  return {
    server,
    api: new Api(TOKEN, client),
    ask: async (method, fields = {}) => {
      const body = new URLSearchParams(fields);
      const answer = await fetch(`${server.url}/bot${TOKEN}/${method}`, { method: "POST", body });
      const json: unknown = await answer.json();
      return isRecord(json) && json.ok === false ? `${json.error_code} ${json.description}` : "ok";
    },
    bot: () => {
      const bot = new Bot(TOKEN, { client });
      running.push(() => bot.stop());
      return bot;
    },
  };
}

/** Starts a bot and waits until it polls. What goes wrong in it fails the test. */
export async function startBot(bot: Bot): Promise<void> {
  bot.catch((error) => {
    throw error;
  });
  await new Promise<void>((resolve, reject) => {
    bot.start({ onStart: () => resolve() }).catch(reject);
  });
}

/** How the server refused, as "code description"; fails when it did not refuse. */
export async function refusalOf(call: Promise<unknown>): Promise<string> {
  const error = await call.then(
    () => undefined,
    (reason: unknown) => reason,
  );
  if (error instanceof GrammyError) return `${error.error_code} ${error.description}`;
  throw error ?? new Error("The call was not refused.");
}

/** True when the client could not tell how the call ended. */
export async function failedOnTheWay(call: Promise<unknown>): Promise<boolean> {
  return await call.then(
    () => false,
    (reason: unknown) => reason instanceof HttpError,
  );
}
