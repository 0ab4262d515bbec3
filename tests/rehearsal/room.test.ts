// Also covers room-acts.ts, room-feed.ts and room-route.ts, which are reached through the room only.
import { describe, expect, it } from "vitest";
import { samplePicture } from "../../src/rehearsal/people/sample-picture.ts";
import { openRoom } from "../../src/rehearsal/room.ts";
import { roomScenario } from "./room-scenario.ts";
import { openStage, startBot } from "./stage.ts";

async function openedRoom(play?: () => Promise<void>) {
  const stage = await openStage();
  openRoom(stage.server, { scenario: roomScenario(), ...(play && { play }) });
  const { url } = stage.server;
  const post = async (path: string, body: unknown = {}, headers: Record<string, string> = {}) => {
    const answer = await fetch(`${url}${path}`, {
      method: "POST",
      headers: { "content-type": "application/json", origin: url, ...headers },
      body: typeof body === "string" || Buffer.isBuffer(body) ? body : JSON.stringify(body),
    });
    return { status: answer.status, body: await answer.json() };
  };
  const act = (phone: string, name: string, wish: unknown = {}) =>
    post(`/room/phones/${phone}/${name}`, wish);
  const texts = (chatId: number) => stage.server.transcript(chatId).map(({ text }) => text);
  return { ...stage, url, post, act, texts };
}

/** Reads the page's events until one phone looks as wished. */
async function eventsUntil(url: string, fits: (view: { id: string; text: string }) => boolean) {
  const gone = new AbortController();
  const answer = await fetch(`${url}/room/events`, { signal: gone.signal });
  expect(answer.headers.get("content-type")).toContain("text/event-stream");
  let text = "";
  for await (const part of answer.body ?? []) {
    text += Buffer.from(part).toString("utf8");
    const views = text
      .split("\n\n")
      .slice(0, -1)
      .map((event) => event.replace(/^event: phone\ndata: /, ""))
      .map((data): { id: string; text: string } => ({ id: JSON.parse(data).id, text: data }));
    if (views.some(fits)) break;
  }
  gone.abort();
}

describe("the room's page", () => {
  it("is served with all it needs, and may load nothing from elsewhere", async () => {
    const { url } = await openedRoom();
    const page = await fetch(url);
    expect(page.headers.get("content-security-policy")).toContain("default-src 'none'");
    const html = await page.text();
    const needed = [...html.matchAll(/(?:src|href)="(\/[^"]+)"/g)].map(([, path]) => path ?? "");
    expect(needed).toContain("/room/page.js");
    for (const path of needed) {
      const file = await fetch(url + path);
      expect(file.status, path).toBe(200);
      const imports = [...(await file.text()).matchAll(/from "\.\/([^"]+)"/g)];
      for (const [, name] of imports) expect((await fetch(`${url}/room/${name}`)).status).toBe(200);
    }
    expect(html).not.toMatch(/https?:\/\//);
  });

  it("knows who plays, but not their numbers", async () => {
    const { url } = await openedRoom();
    const text = await (await fetch(`${url}/room/scenario`)).text();
    expect(JSON.parse(text)).toMatchObject({
      title: "Rehearsal",
      phones: [{ id: "operator", name: "Olga" }, { id: "dispatcher" }, { id: "technician" }],
      canPlay: false,
    });
    expect(text).not.toContain("555");
  });

  it("leaves every other address to others", async () => {
    const { url } = await openedRoom();
    for (const path of ["/elsewhere", "/room/nothing", "/room/__proto__", "/room/files/none"]) {
      expect((await fetch(url + path)).status, path).toBe(404);
    }
  });
});

describe("a phone in the room", () => {
  it("starts, writes, and presses the buttons of the bot", async () => {
    const { act, bot, texts, server } = await openedRoom();
    const answering = bot();
    answering.command("start", (context) => context.reply(`Started with ${context.match}`));
    answering.on("message:text", (context) =>
      context.reply("Sure?", {
        reply_markup: { inline_keyboard: [[{ text: "Yes", callback_data: "y" }]] },
      }),
    );
    answering.on("callback_query", async (context) => {
      await context.answerCallbackQuery("Noted");
      await context.editMessageText("Sure.");
    });
    await startBot(answering);
    expect(await act("operator", "start", { payload: "abc" })).toEqual({ status: 200, body: {} });
    await act("operator", "say", { text: "it clicks" });
    await server.waitFor(1001, (messages) => messages.some(({ buttons }) => buttons.length > 0));
    const asked = server.transcript(1001).at(-1);
    expect((await act("operator", "press", { message: asked?.id, row: 0, column: 0 })).status).toBe(
      200,
    );
    await server.waitFor(1001, (messages) => messages.at(-1)?.text === "Sure.");
    expect(texts(1001)).toEqual(["/start abc", "Started with abc", "it clicks", "Sure."]);
    expect(server.view(1001).toasts).toMatchObject([{ text: "Noted" }]);
  });

  it("answers a key that asks for the place, the number or neither", async () => {
    const { act, api, server } = await openedRoom();
    await act("operator", "start");
    const keyboard = [
      [{ text: "Share my place", request_location: true }],
      [{ text: "Share my number", request_contact: true }],
      [{ text: "Neither" }],
    ];
    await api.sendMessage(1001, "Where?", { reply_markup: { keyboard } });
    for (const label of ["Share my place", "Share my number", "Neither"]) {
      expect((await act("operator", "key", { label })).status).toBe(200);
    }
    const kinds = server.transcript(1001).map(({ kind, text }) => (kind === "text" ? text : kind));
    expect(kinds).toEqual(["/start", "Where?", "location", "contact", "Neither"]);
  });

  it("sends places, numbers, pictures of the room and pictures of one's own", async () => {
    const { act, post, server, url } = await openedRoom();
    await act("operator", "place");
    await act("operator", "number");
    await act("operator", "picture", { picture: "posts" });
    const own = { "content-type": "image/png" };
    await post("/room/phones/operator/photo", samplePicture({ width: 320, height: 200 }), own);
    const [place, card, posts, photo] = server.transcript(1001);
    expect(place?.place).toMatchObject({ latitude: 47.5, longitude: 9.25 });
    expect(card?.contact).toMatchObject({ phone: "+00 555 0101", userId: 1001 });
    expect(posts?.file).toMatchObject({ width: 640, height: 480 });
    const file = await fetch(`${url}/room/files/${photo?.file?.id}`);
    expect(file.headers.get("content-type")).toMatch(/^image\//);
    expect(Buffer.from(await file.arrayBuffer())).toEqual(
      samplePicture({ width: 320, height: 200 }),
    );
    expect((await fetch(`${url}/room/pictures/posts`)).headers.get("content-type")).toBe(
      "image/png",
    );
  });

  it("lets a browser save a file that is no picture, not open it", async () => {
    const { server, url } = await openedRoom();
    const page = Buffer.from("<script>alert(1)</script>");
    server.person(roomScenario().phones[0]?.person ?? { id: 1, name: "" }).sendDocument(page, {
      name: "page.html",
      mimeType: "text/html",
    });
    const id = server.transcript(1001).at(-1)?.file?.id;
    const answer = await fetch(`${url}/room/files/${id}`);
    expect(answer.headers.get("content-type")).toBe("application/octet-stream");
    expect(answer.headers.get("x-content-type-options")).toBe("nosniff");
  });

  it("tells the bot its language from the next message on", async () => {
    const { act, bot, server } = await openedRoom();
    const languages: (string | undefined)[] = [];
    const listening = bot();
    listening.on("message", (context) => void languages.push(context.from.language_code));
    await startBot(listening);
    await act("operator", "say", { text: "one" });
    await act("operator", "language", { tag: "de" });
    await act("operator", "say", { text: "two" });
    await server.until(() => languages.length === 2, "two messages");
    expect(languages).toEqual(["en", "de"]);
    expect((await act("operator", "language", { tag: "xx" })).status).toBe(400);
  });

  it("is shown to the page as it is and as it changes", async () => {
    const { act, api, url } = await openedRoom();
    await act("dispatcher", "start");
    const seen = eventsUntil(url, ({ id, text }) => id === "dispatcher" && text.includes("A call"));
    await api.sendMessage(1002, "A call");
    await seen;
  });
});

describe("what does not come from the page", () => {
  it("is refused when another page sends it", async () => {
    const { post, url, server } = await openedRoom();
    const path = "/room/phones/operator/say";
    for (const origin of ["http://elsewhere.example", "null", "http://127.0.0.1:1"]) {
      expect((await post(path, { text: "x" }, { origin })).status).toBe(403);
    }
    const bare = await fetch(url + path, { method: "POST", body: JSON.stringify({ text: "x" }) });
    expect(bare.status).toBe(403);
    expect(server.transcript(1001)).toEqual([]);
  });

  it("gets one plain sentence when it makes no sense", async () => {
    const { post, act, server } = await openedRoom();
    const problems = [
      await act("operator", "say", { text: " " }),
      await act("operator", "say", { text: 7 }),
      await act("operator", "say", "not json"),
      await act("operator", "say", []),
      await act("operator", "press", { message: 99, row: 0, column: 0 }),
      await act("operator", "press", { message: "x", row: 0, column: 0 }),
      await act("operator", "picture", { picture: "none" }),
      await act("operator", "start", { payload: "not a payload" }),
      await post("/room/phones/operator/photo", "no picture"),
    ];
    for (const { status, body } of problems) {
      expect(status).toBe(400);
      expect(body).toEqual({ problem: expect.stringMatching(/^[A-Z].*\.$/) });
    }
    for (const name of ["fly", "constructor", "toString"]) {
      expect((await act("operator", name)).status).toBe(404);
    }
    expect((await act("nobody", "say", { text: "x" })).status).toBe(404);
    expect((await act("operator", "say", { text: "x".repeat(70_000) })).status).toBe(413);
    expect(server.transcript(1001)).toEqual([]);
  });
});

describe("playing the demonstration call", () => {
  it("is done by whoever opened the room", async () => {
    let times = 0;
    const { post, url } = await openedRoom(async () => {
      times += 1;
    });
    expect((await post("/room/play", {}, { origin: "http://elsewhere.example" })).status).toBe(403);
    expect((await post("/room/play")).status).toBe(200);
    expect(times).toBe(1);
    expect(await (await fetch(`${url}/room/scenario`)).json()).toMatchObject({ canPlay: true });
  });

  it("is not offered where nobody can do it", async () => {
    const { post } = await openedRoom();
    expect((await post("/room/play")).status).toBe(404);
  });
});
