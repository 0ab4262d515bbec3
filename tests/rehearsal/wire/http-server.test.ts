// Covers also: src/rehearsal/wire/carry-out.ts, src/rehearsal/refusal.ts, src/rehearsal/world/calls.ts
import { request } from "node:http";
import { InputFile } from "grammy";
import { describe, expect, it } from "vitest";
import { failedOnTheWay, openStage, refusalOf, TOKEN } from "../stage.ts";

interface Reply {
  status: number;
  body: unknown;
}

async function get(url: string, init?: RequestInit): Promise<Reply> {
  const response = await fetch(url, init);
  return { status: response.status, body: await response.json() };
}

/** Sends a request with a host name of choice, which fetch does not allow. */
function statusFor(port: number, host: string): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    request({ port, host: "127.0.0.1", path: `/bot${TOKEN}/getMe`, headers: { host } })
      .on("response", (response) => resolve(response.resume().statusCode))
      .on("error", reject)
      .end();
  });
}

describe("the wire", () => {
  it("answers in the shape of the Bot API with the error code as HTTP status", async () => {
    const { server } = await openStage();
    expect(await get(`${server.url}/bot${TOKEN}/getMe`)).toMatchObject({
      status: 200,
      body: { ok: true, result: { id: 1, is_bot: true, username: "rehearsal_bot" } },
    });
    expect(await get(`${server.url}/bot${TOKEN}/sendMessage?chat_id=5&text=x`)).toEqual({
      status: 400,
      body: { ok: false, error_code: 400, description: "Bad Request: chat not found" },
    });
  });

  // Wordings: Bot API server source, public repository tdlib/telegram-bot-api.
  it("refuses a wrong token with 401 and an unknown method with 404", async () => {
    const { server } = await openStage();
    expect(await get(`${server.url}/bot1:other/getMe`)).toEqual({
      status: 401,
      body: { ok: false, error_code: 401, description: "Unauthorized" },
    });
    expect(await get(`${server.url}/bot${TOKEN}/getEverything`)).toEqual({
      status: 404,
      body: { ok: false, error_code: 404, description: "Not Found: method not found" },
    });
  });

  it("takes method names in any case and passes over unknown fields", async () => {
    const { server } = await openStage();
    server.person({ id: 7, name: "Ana" }).start();
    const url = `${server.url}/bot${TOKEN}/SENDMESSAGE`;
    const body = JSON.stringify({ chat_id: "7", text: "hello", has_handler: true });
    const headers = { "content-type": "application/json" };
    expect(await get(url, { method: "POST", body, headers })).toMatchObject({ status: 200 });
    const form = new URLSearchParams({ chat_id: "7", text: "as a form" });
    expect(await get(url, { method: "POST", body: form })).toMatchObject({ status: 200 });
    expect(server.transcript(7).map(({ text }) => text)).toEqual(["/start", "hello", "as a form"]);
  });

  it("keeps an uploaded file name with umlauts and blanks", async () => {
    const { server, api } = await openStage();
    server.person({ id: 7, name: "Ana" }).start();
    const name = "Prüfbericht Mähdrescher 2.pdf";
    const sent = await api.sendDocument(7, new InputFile(Buffer.from("%PDF"), name), {
      caption: "für Sie",
    });
    expect(sent.document).toMatchObject({
      file_name: name,
      mime_type: "application/pdf",
      file_size: 4,
    });
    expect(sent.caption).toBe("für Sie");
    expect(server.file(sent.document.file_id)?.bytes.toString()).toBe("%PDF");
  });

  it("serves this computer only, under its own names", async () => {
    const { server } = await openStage();
    expect(server.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/);
    expect(await statusFor(server.port, `localhost:${server.port}`)).toBe(200);
    expect(await statusFor(server.port, "farm.example")).toBe(403);
  });

  it("refuses a body above the limit with 413", async () => {
    const { api } = await openStage({ limits: { uploadBytes: 1000 } });
    const large = new InputFile(Buffer.alloc(2_000_000), "large.bin");
    // Wording: Bot API server source, public repository tdlib/telegram-bot-api (from memory).
    expect(await refusalOf(api.sendDocument(7, large))).toBe("413 Request Entity Too Large");
  });

  it("asks extra routes for everything else, in the order they were added", async () => {
    const { server } = await openStage();
    server.handle(() => false);
    server.handle((asked, response) => {
      if (asked.url !== "/page") return false;
      response.end('{"page":true}');
      return true;
    });
    expect(await get(`${server.url}/page`)).toEqual({ status: 200, body: { page: true } });
    expect(await get(`${server.url}/nothing`)).toMatchObject({ status: 404 });
  });
});

describe("faults on demand", () => {
  it("429 names the seconds to wait and does nothing", async () => {
    const { server, api } = await openStage();
    server.person({ id: 7, name: "Ana" }).start();
    server.faults.add({ kind: "tooManyRequests", retryAfterSeconds: 9 }, { chatId: 7 });
    const error = await api.sendMessage(7, "x").catch((reason: unknown) => reason);
    // Wording: Bot API server source, public repository tdlib/telegram-bot-api.
    expect(error).toMatchObject({
      error_code: 429,
      description: "Too Many Requests: retry after 9",
      parameters: { retry_after: 9 },
    });
    await api.sendMessage(7, "again");
    expect(server.transcript(7).map(({ text }) => text)).toEqual(["/start", "again"]);
  });

  it("403, 400 with a new chat id, and any other refusal", async () => {
    const { server, api } = await openStage();
    server.person({ id: 7, name: "Ana" }).start();
    server.faults.add({ kind: "blocked" });
    server.faults.add({ kind: "migrated", toChatId: -1_000_000_000_009 });
    server.faults.add({ kind: "refusal", errorCode: 500, description: "Internal Server Error" });
    expect(await refusalOf(api.sendMessage(7, "a"))).toBe(
      "403 Forbidden: bot was blocked by the user",
    );
    const moved = await api.sendMessage(7, "b").catch((reason: unknown) => reason);
    expect(moved).toMatchObject({ parameters: { migrate_to_chat_id: -1_000_000_000_009 } });
    expect(await refusalOf(api.sendMessage(7, "c"))).toBe("500 Internal Server Error");
  });

  it("a web page instead of JSON leaves the client without an error code", async () => {
    const { server, api } = await openStage();
    server.person({ id: 7, name: "Ana" }).start();
    server.faults.add({ kind: "webPage", status: 502 }, { method: "sendMessage" });
    expect(await failedOnTheWay(api.sendMessage(7, "x"))).toBe(true);
    expect(server.transcript(7)).toHaveLength(1);
  });

  it("a connection that breaks before the call leaves nothing, after it the message", async () => {
    const { server, api } = await openStage();
    server.person({ id: 7, name: "Ana" }).start();
    server.faults.add({ kind: "resetBefore" });
    expect(await failedOnTheWay(api.sendMessage(7, "lost"))).toBe(true);
    server.faults.add({ kind: "resetAfter" });
    expect(await failedOnTheWay(api.sendMessage(7, "arrived"))).toBe(true);
    expect(server.transcript(7).map(({ text }) => text)).toEqual(["/start", "arrived"]);
    expect(server.calls("sendMessage").map(({ outcome }) => outcome)).toEqual([
      { kind: "reset" },
      { kind: "reset" },
    ]);
  });

  it("a slow answer carries the call out at once", async () => {
    const pauses: number[] = [];
    const { server, api } = await openStage({
      wait: (milliseconds, then) => {
        pauses.push(milliseconds);
        setImmediate(then);
        return () => {};
      },
    });
    server.person({ id: 7, name: "Ana" }).start();
    server.faults.add({ kind: "slow", milliseconds: 3000 });
    const sent = api.sendMessage(7, "slow");
    await server.waitFor(7, (messages) => messages.length === 2);
    expect((await sent).text).toBe("slow");
    expect(pauses).toEqual([3000]);
  });

  it("strikes only the calls it is meant for", async () => {
    const { server, api } = await openStage();
    for (const id of [7, 8]) server.person({ id, name: `P${id}` }).start();
    server.faults.add(
      { kind: "blocked" },
      { method: "SENDMESSAGE", chatId: 8, after: 1, times: 2 },
    );
    await api.sendMessage(7, "other chat");
    await api.sendChatAction(8, "typing");
    await api.sendMessage(8, "passes");
    expect(await refusalOf(api.sendMessage(8, "x"))).toContain("403");
    expect(await refusalOf(api.sendMessage(8, "x"))).toContain("403");
    await api.sendMessage(8, "passes again");
    server.faults.add({ kind: "blocked" });
    server.faults.clear();
    await api.sendMessage(8, "cleared");
  });
});

it("the record of calls tells what was asked and how it ended", async () => {
  const { server, api } = await openStage({ clock: () => 1_700_000_000_500 });
  await refusalOf(api.sendMessage(9, "x"));
  await api.getMe();
  expect(server.calls()).toEqual([
    {
      method: "sendMessage",
      at: 1_700_000_000_500,
      chatId: 9,
      params: { chat_id: 9, text: "x" },
      outcome: { kind: "refused", errorCode: 400, description: "Bad Request: chat not found" },
    },
    { method: "getMe", at: 1_700_000_000_500, params: {}, outcome: { kind: "done" } },
  ]);
});

it("the record of calls forgets the oldest when it is full", async () => {
  const { server, api } = await openStage({ limits: { recordedCalls: 4 } });
  for (let count = 0; count < 5; count += 1) await api.getMe();
  expect(server.calls().length).toBeLessThanOrEqual(4);
});
