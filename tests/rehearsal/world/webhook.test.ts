// Covers also: src/rehearsal/world/webhook-request.ts
import { createServer, type IncomingHttpHeaders, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { InlineKeyboard, webhookCallback } from "grammy";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Person } from "../../../src/rehearsal/people/person.ts";
import { createTestTime, type TestTime } from "../../../src/rehearsal/time.ts";
import { openStage, refusalOf, type Stage } from "../stage.ts";

interface Delivery {
  update: { update_id: number; message?: { text?: string }; callback_query?: { data?: string } };
  headers: IncomingHttpHeaders;
}

interface Answer {
  status: number;
  headers?: Record<string, string>;
  body?: string;
}

let stage: Stage;
let time: TestTime;
let ana: Person;
let ben: Person;
let receiver: Server;
let deliveries: Delivery[];
let answer: (delivery: Delivery) => Answer;
let url: string;

beforeEach(async () => {
  time = createTestTime(1_700_000_000_000);
  stage = await openStage({ ...time });
  ana = stage.server.person({ id: 7, name: "Ana" });
  ben = stage.server.person({ id: 8, name: "Ben" });
  deliveries = [];
  answer = () => ({ status: 200 });
  receiver = createServer((request, response) => {
    let text = "";
    request.on("data", (chunk) => {
      text += chunk;
    });
    request.on("end", () => {
      const delivery: Delivery = { update: JSON.parse(text), headers: request.headers };
      deliveries.push(delivery);
      const { status, headers = {}, body = "" } = answer(delivery);
      response.writeHead(status, headers).end(body);
    });
  });
  await new Promise<void>((done) => receiver.listen(0, "127.0.0.1", done));
  const address: AddressInfo | string | null = receiver.address();
  url = `http://127.0.0.1:${address !== null && typeof address === "object" ? address.port : 0}/hook`;
});

afterEach(async () => {
  receiver.closeAllConnections();
  await new Promise((done) => receiver.close(done));
});

const words = () =>
  deliveries.map(({ update }) => update.message?.text ?? update.callback_query?.data);
/** Lets what is under way on the loopback arrive. */
const until = (condition: () => boolean, what: string) =>
  new Promise<void>((resolve, reject) => {
    const end = Date.now() + 3000;
    const look = () => {
      if (condition()) resolve();
      else if (Date.now() > end) reject(new Error(`Waited in vain for ${what}; got ${words()}`));
      else setTimeout(look, 5);
    };
    look();
  });
const arrived = (count: number) => until(() => deliveries.length >= count, `${count} deliveries`);
const handled = () => until(() => stage.server.pendingUpdates() === 0, "an empty queue");
/** The bot's refusal has come back to the server, which has planned another try. */
const retryPlanned = () => until(() => time.scheduled() === 1, "a planned retry");
const errorShown = async () => (await stage.api.getWebhookInfo()).last_error_message !== undefined;

describe("webhooks", () => {
  it("get each update with the secret, and those that waited", async () => {
    const { api } = stage;
    ana.say("waited");
    await api.setWebhook(url, {
      secret_token: "s3cret_-",
      max_connections: 5,
      allowed_updates: ["message"],
    });
    await handled();
    ana.say("fresh");
    await handled();
    expect(words()).toEqual(["waited", "fresh"]);
    expect(deliveries[0]?.headers["x-telegram-bot-api-secret-token"]).toBe("s3cret_-");
    expect(await api.getWebhookInfo()).toEqual({
      url,
      has_custom_certificate: false,
      pending_update_count: 0,
      max_connections: 5,
      allowed_updates: ["message"],
    });
  });

  it("without a secret get no such header", async () => {
    await stage.api.setWebhook(url);
    ana.say("a");
    await handled();
    expect(Object.keys(deliveries[0]?.headers ?? {})).not.toContain(
      "x-telegram-bot-api-secret-token",
    );
  });

  // Schedule: Bot API server source, public repository tdlib/telegram-bot-api.
  it("get a refused update again at once, then after 2, 4, 8 seconds, in order per chat", async () => {
    const { api } = stage;
    answer = () => ({ status: 500 });
    await api.setWebhook(url);
    ana.say("a1");
    ana.say("a2");
    await arrived(1);
    for (const [index, pause] of [0, 2, 4, 8].entries()) {
      await retryPlanned();
      if (pause > 0) time.advance(pause * 1000 - 1);
      expect([deliveries.length, time.scheduled()]).toEqual([index + 1, 1]);
      time.advance(1);
      await arrived(index + 2);
    }
    await retryPlanned();
    expect(new Set(words())).toEqual(new Set(["a1"]));
    expect((await api.getWebhookInfo()).last_error_message).toBe(
      "Wrong response from the webhook: 500 Internal Server Error",
    );
    answer = () => ({ status: 204 });
    time.advance(16_000);
    await handled();
    expect(words().slice(-2)).toEqual(["a1", "a2"]);
  });

  it("obey Retry-After", async () => {
    answer = () => ({ status: 429, headers: { "retry-after": "30" } });
    await stage.api.setWebhook(url);
    ana.say("a");
    await retryPlanned();
    answer = () => ({ status: 200 });
    time.advance(29_999);
    expect([deliveries.length, time.scheduled()]).toEqual([1, 1]);
    time.advance(1);
    await handled();
    expect(deliveries).toHaveLength(2);
  });

  // Queues: Bot API server source, public repository tdlib/telegram-bot-api: messages by chat,
  // presses by user, so that a press can overtake a message of the same person.
  it("other chats and button presses overtake a chat that is stuck", async () => {
    const { api } = stage;
    ana.start();
    await api.sendMessage(7, "?", { reply_markup: new InlineKeyboard().text("Y", "pressed") });
    await api.getUpdates({ offset: -1 });
    answer = ({ update }) => ({ status: update.message?.text === "stuck" ? 500 : 200 });
    await api.setWebhook(url, { drop_pending_updates: true });
    ana.say("stuck");
    await arrived(1);
    ana.press("Y");
    ben.say("other chat");
    await until(() => words().includes("pressed") && words().includes("other chat"), "both");
    await until(() => stage.server.pendingUpdates() === 1, "only the stuck one");
  });

  it("lose an update that has expired", async () => {
    answer = () => ({ status: 500 });
    await stage.api.setWebhook(url);
    ana.say("old");
    await retryPlanned();
    time.advance(86_400_000);
    expect(stage.server.pendingUpdates()).toBe(0);
  });

  // 410 for 23 hours: Bot API server source, public repository tdlib/telegram-bot-api.
  it("are closed after a day of 410", async () => {
    const { api } = stage;
    answer = () => ({ status: 410, headers: { "retry-after": "3600" } });
    await api.setWebhook(url);
    ana.say("a");
    for (let hour = 0; hour < 26 && (await api.getWebhookInfo()).url !== ""; hour += 1) {
      await retryPlanned();
      if (hour % 20 === 0) ana.say(`${hour}`);
      time.advance(3_600_000);
    }
    expect((await api.getWebhookInfo()).url).toBe("");
  });

  it("may answer with a call, but not with one that asks something", async () => {
    ana.start();
    await stage.api.setWebhook(url, { drop_pending_updates: true });
    const bodies = [
      "not json",
      '{"method":"getMe"}',
      '{"method":"sendMessage","chat_id":7,"text":"by reply"}',
    ];
    answer = () => ({ status: 200, body: bodies.shift() ?? "" });
    for (const text of ["a", "b", "c"]) ana.say(text);
    await stage.server.waitFor(7, (messages) => messages.at(-1)?.text === "by reply");
    expect(stage.server.calls("getMe")).toEqual([]);
  });

  it("drive the unmodified client's own receiver, which checks the secret", async () => {
    const { api, server, bot: makeBot } = stage;
    const bot = makeBot();
    bot.on("message:text", (ctx) => ctx.reply(`heard ${ctx.message.text}`));
    receiver.removeAllListeners("request");
    receiver.on("request", webhookCallback(bot, "http", { secretToken: "right" }));
    ana.start();
    await api.setWebhook(url, { secret_token: "wrong" });
    await until(() => time.scheduled() === 1, "a refusal");
    expect((await api.getWebhookInfo()).last_error_message).toContain("401 Unauthorized");
    await api.setWebhook(url, { secret_token: "right" });
    time.advance(0);
    await server.waitFor(7, (messages) => messages.at(-1)?.text === "heard /start");
  });

  it("that cannot be reached are tried again", async () => {
    const { api } = stage;
    await api.setWebhook("http://127.0.0.1:9/hook");
    ana.say("a");
    for (let attempt = 0; attempt < 300 && !(await errorShown()); attempt += 1);
    expect((await api.getWebhookInfo()).last_error_message).toBe("Connection refused");
    expect(stage.server.pendingUpdates()).toBe(1);
  });
});

describe("setting a webhook", () => {
  // Wordings: Bot API server source, public repository tdlib/telegram-bot-api; the one about this
  // computer is ours.
  it("needs a fitting address and secret", async () => {
    const { api } = stage;
    const refused = (address: string, secret_token = "") =>
      refusalOf(api.setWebhook(address, { secret_token }));
    expect(await refused("nonsense")).toBe("400 Bad Request: invalid webhook URL specified");
    expect(await refused("http://farm.example/hook")).toBe(
      "400 Bad Request: bad webhook: An HTTPS URL must be provided for webhook",
    );
    expect(await refused("https://farm.example/hook")).toContain("posts to http://127.0.0.1 only");
    expect(await refused(url, "with blank")).toBe(
      "400 Bad Request: secret token contains unallowed characters",
    );
    expect(await refused(url, "x".repeat(257))).toBe("400 Bad Request: secret token is too long");
  });

  // Wordings: Bot API server source, public repository tdlib/telegram-bot-api.
  it("ends the poll under way, and polls are refused until it is deleted", async () => {
    const { api, server } = stage;
    const poll = refusalOf(api.getUpdates({ timeout: 30 }));
    await server.until(() => server.calls("getUpdates").length === 1, "a poll");
    await api.setWebhook(url);
    expect(await poll).toBe("409 Conflict: terminated by setWebhook request");
    expect(await refusalOf(api.getUpdates())).toBe(
      "409 Conflict: can't use getUpdates method while webhook is active; use deleteWebhook to " +
        "delete the webhook first",
    );
    await api.deleteWebhook();
    ana.say("a");
    expect(await api.getUpdates()).toHaveLength(1);
    await api.setWebhook("", { drop_pending_updates: true });
    expect(server.pendingUpdates()).toBe(0);
  });

  it("twice within a second is refused", async () => {
    const { api } = await openStage({ ...time, limits: { setWebhookSeconds: 1 } });
    await api.setWebhook(url);
    expect(await refusalOf(api.setWebhook(url))).toBe("429 Too Many Requests: retry after 1");
    time.advance(1000);
    await api.setWebhook(url);
  });
});
