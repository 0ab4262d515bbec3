// Covers also: src/rehearsal/methods/updates.ts
import { beforeEach, describe, expect, it } from "vitest";
import { PLATFORM_LIMITS } from "../../../src/rehearsal/limits.ts";
import type { Person } from "../../../src/rehearsal/people/person.ts";
import { createTestTime, type TestTime } from "../../../src/rehearsal/time.ts";
import { openStage, refusalOf, type Stage } from "../stage.ts";

let stage: Stage;
let time: TestTime;
let ana: Person;

/** A stage with the platform's pauses, on a clock that stands still. */
beforeEach(async () => {
  time = createTestTime(1_700_000_000_000);
  stage = await openStage({ ...time, limits: PLATFORM_LIMITS });
  ana = stage.server.person({ id: 7, name: "Ana" });
});

const ids = (updates: { update_id: number }[]) => updates.map(({ update_id: id }) => id);
const texts = (updates: { message?: { text?: string } }[]) =>
  updates.map(({ message }) => message?.text);

/** Waits until the server has received that many polls. */
const polls = (count: number) =>
  stage.server.until(() => stage.server.calls("getUpdates").length >= count, `${count} polls`);

describe("fetching updates", () => {
  it("gives the oldest first, as many as asked for, and again until confirmed", async () => {
    const { api } = stage;
    for (const text of ["a", "b", "c"]) ana.say(text);
    const first = await api.getUpdates({ limit: 2 });
    expect(texts(first)).toEqual(["a", "b"]);
    time.advance(1000);
    expect(texts(await api.getUpdates())).toEqual(["a", "b", "c"]);
    const [, second] = ids(first);
    expect(texts(await api.getUpdates({ offset: second ?? 0 }))).toEqual(["b", "c"]);
    expect(texts(await api.getUpdates({ offset: (second ?? 0) + 1 }))).toEqual(["c"]);
    expect(stage.server.pendingUpdates()).toBe(1);
  });

  it("counts update ids up by one", async () => {
    for (const text of ["a", "b", "c"]) ana.say(text);
    const [first = 0, ...others] = ids(await stage.api.getUpdates());
    expect(others).toEqual([first + 1, first + 2]);
  });

  it("a negative offset keeps only the newest", async () => {
    for (const text of ["a", "b", "c"]) ana.say(text);
    expect(texts(await stage.api.getUpdates({ offset: -1 }))).toEqual(["c"]);
    expect(stage.server.pendingUpdates()).toBe(1);
  });

  // Behaviour of the queue under the Bot API server, from memory.
  it("an offset far ahead confirms nothing", async () => {
    ana.say("a");
    expect(texts(await stage.api.getUpdates({ offset: 2_000_000_000 }))).toEqual(["a"]);
  });
});

describe("long polls", () => {
  it("wait for the first update", async () => {
    const { api } = stage;
    const poll = api.getUpdates({ timeout: 30 });
    await polls(1);
    ana.say("here");
    expect(texts(await poll)).toEqual(["here"]);
  });

  it("take an album in one go", async () => {
    const poll = stage.api.getUpdates({ timeout: 30 });
    await polls(1);
    for (const text of ["1", "2", "3"]) ana.say(text);
    expect(texts(await poll)).toEqual(["1", "2", "3"]);
  });

  // Cap of 50 s: Bot API server source, public repository tdlib/telegram-bot-api.
  it("end empty when the time is up, after 50 seconds at most", async () => {
    const poll = stage.api.getUpdates({ timeout: 1000 });
    await polls(1);
    time.advance(49_999);
    let isOver = false;
    void poll.then(() => {
      isOver = true;
    });
    await new Promise((done) => setTimeout(done, 20));
    expect(isOver).toBe(false);
    time.advance(1);
    expect(await poll).toEqual([]);
  });

  it("that the client gave up do not swallow updates", async () => {
    const given = new AbortController();
    const { url, token } = stage.server;
    const poll = fetch(`${url}/bot${token}/getUpdates?timeout=30`, { signal: given.signal });
    await polls(1);
    given.abort();
    await expect(poll).rejects.toThrow();
    await stage.server.until(
      () => stage.server.calls("getUpdates").every(({ outcome }) => outcome !== undefined),
      "the server to notice",
    );
    ana.say("kept");
    expect(texts(await stage.api.getUpdates({ offset: 1 }))).toEqual(["kept"]);
  });

  // Wording and the pause of 3 s: Bot API server source, public repository
  // tdlib/telegram-bot-api.
  it("end with 409 when a second poller comes, the next times after a pause", async () => {
    const { api } = stage;
    const conflict =
      "409 Conflict: terminated by other getUpdates request; make sure that only one bot " +
      "instance is running";
    const first = refusalOf(api.getUpdates({ timeout: 30, offset: 1 }));
    await polls(1);
    const second = refusalOf(api.getUpdates({ timeout: 30, offset: 2 }));
    expect(await first).toBe(conflict);
    const third = api.getUpdates({ timeout: 30, offset: 3 });
    await polls(3);
    let isRefused = false;
    void second.then(() => {
      isRefused = true;
    });
    await new Promise((done) => setTimeout(done, 20));
    expect(isRefused).toBe(false);
    time.advance(3000);
    expect(await second).toBe(conflict);
    ana.say("for the last one");
    expect(texts(await third)).toEqual(["for the last one"]);
  });

  // Numbers: Bot API server source, public repository tdlib/telegram-bot-api.
  it("slow down a client that repeats its question in haste", async () => {
    const { api } = stage;
    for (const text of ["a", "b"]) ana.say(text);
    await api.getUpdates({ offset: 6 });
    expect(texts(await api.getUpdates({ offset: 6 }))).toEqual(["a"]);
    time.advance(500);
    expect(texts(await api.getUpdates({ offset: 6 }))).toEqual(["a", "b"]);
  });

  it("a repeated question without an answer is held for 3 seconds", async () => {
    const { api } = stage;
    expect(await api.getUpdates()).toEqual([]);
    const again = api.getUpdates();
    await polls(2);
    expect(stage.server.calls("getUpdates")[1]?.outcome).toBeUndefined();
    time.advance(3000);
    expect(await again).toEqual([]);
  });
});

describe("which updates are made", () => {
  it("is decided when they are made, and remembered", async () => {
    const { api } = stage;
    await api.getUpdates({ allowed_updates: ["message"] });
    ana.start();
    ana.block();
    ana.unblock();
    await api.getUpdates({ offset: 1, allowed_updates: [] });
    ana.block();
    const updates = await api.getUpdates({ offset: 2 });
    expect(updates.map((update) => Object.keys(update)[1])).toEqual(["message", "my_chat_member"]);
  });

  it("a list that cannot be read changes nothing", async () => {
    expect(await stage.ask("getUpdates", { allowed_updates: "[" })).toBe("ok");
    ana.start();
    expect(stage.server.pendingUpdates()).toBe(1);
  });
});

describe("expiry", () => {
  // 24 h for messages, 150 s for presses: Bot API server source, public repository
  // tdlib/telegram-bot-api.
  it("a message waits 24 hours, a button press 150 seconds", async () => {
    const { api } = stage;
    ana.start();
    await api.sendMessage(7, "?", {
      reply_markup: { inline_keyboard: [[{ text: "Y", callback_data: "y" }]] },
    });
    ana.press("Y");
    time.advance(149_999);
    expect(stage.server.pendingUpdates()).toBe(2);
    time.advance(1);
    expect((await api.getUpdates()).map((update) => Object.keys(update)[1])).toEqual(["message"]);
    time.advance(86_400_000 - 150_000 - 1);
    expect(stage.server.pendingUpdates()).toBe(1);
    time.advance(1);
    expect(stage.server.pendingUpdates()).toBe(0);
  });
});
