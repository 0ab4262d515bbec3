import { describe, expect, it, vi } from "vitest";
import type { Outgoing, Timers } from "../../src/cases/ports.ts";
import { createChat } from "../../src/chat/bot.ts";
import { createLog } from "../../src/chat/log.ts";
import type { Incoming } from "../../src/domain/incoming.ts";
import { TOKEN } from "../rehearsal/stage.ts";
import { codec, openChat, plainWording, realTimers } from "./chat-stage.ts";

const texts = (got: readonly Incoming[]) =>
  got.flatMap(({ what }) => (what.kind === "text" ? [what.text] : []));

const asking: Outgoing = {
  do: "say",
  to: { chat: "11" },
  language: "en",
  message: {
    lines: [{ say: { raw: "?" } }],
    buttons: [[{ label: { raw: "Go" }, press: { revision: 1, act: "go" } }]],
  },
};

/** A promise to keep somebody waiting with. */
function gate() {
  let open = (): void => undefined;
  const passed = new Promise<void>((resolve) => {
    open = resolve;
  });
  return { passed, open };
}

describe("receiving", () => {
  it("asks for every kind of update that is understood", async () => {
    const { server, run } = await openChat();
    await run();
    await server.until(() => server.calls("getUpdates").length > 0, "a poll");
    expect(server.calls("getUpdates")[0]?.params).toMatchObject({
      allowed_updates: ["message", "edited_message", "callback_query", "my_chat_member"],
    });
  });

  it("answers a pressed button, with a word where there is one to say", async () => {
    const { server, run, carrier } = await openChat({
      receive: async ({ what }) =>
        what.kind === "press" && what.press?.act === "go"
          ? { toast: { key: "noted" }, language: "de" }
          : { toast: { raw: "x".repeat(300) } },
    });
    await run();
    const ann = server.person({ id: 11, name: "Ann" });
    ann.start();
    await carrier.carry(asking, { earlier: null, part: 0 });
    ann.press("Go");
    await server.settled();
    expect(ann.waitingButtons()).toEqual([]);
    ann.forge("rubbish");
    await server.settled();
    const toasts = server.view(11).toasts.map(({ text }) => text);
    expect(toasts[0]).toBe("noted/de");
    expect(toasts[1]).toHaveLength(200);
  });

  it("waits for no answer to a press, and minds none that came too late", async () => {
    const { server, run, got, carrier, log } = await openChat();
    await run();
    const ann = server.person({ id: 11, name: "Ann" });
    ann.start();
    await carrier.carry(asking, { earlier: null, part: 0 });
    server.faults.add({ kind: "slow", milliseconds: 9_000 }, { method: "answerCallbackQuery" });
    ann.press("Go");
    ann.say("typed");
    await vi.waitFor(() => expect(texts(got)).toContain("typed"));
    const description = "Bad Request: query is too old";
    const late = { kind: "refusal", errorCode: 400, description } as const;
    server.faults.add(late, { method: "answerCallbackQuery" });
    ann.press("Go");
    ann.say("more");
    await vi.waitFor(() => expect(texts(got)).toEqual(["typed", "more"]));
    await vi.waitFor(() => expect(log.join()).toContain("press-not-answered"));
  });

  it("goes on when taking one in fails, and says nothing of its words in the log", async () => {
    const { server, run, got, log } = await openChat({
      receive: async ({ what }) => {
        if (what.kind === "text" && what.text === "poison") throw new Error("about poison");
        return {};
      },
    });
    await run();
    const ann = server.person({ id: 11, name: "Ann" });
    ann.start();
    ann.say("poison");
    ann.say("fine");
    await server.settled();
    expect(texts(got)).toEqual(["poison", "fine"]);
    expect(log.join("\n")).toContain("update-failed");
    expect(log.join("\n")).not.toContain("poison");
  });

  it("confirms nothing before it is taken in", async () => {
    const door = gate();
    const { server, run, got } = await openChat({ receive: () => door.passed.then(() => ({})) });
    await run();
    const ann = server.person({ id: 11, name: "Ann" });
    ann.start();
    ann.say("a");
    await vi.waitFor(() => expect(got).toHaveLength(1));
    expect(server.pendingUpdates()).toBe(2);
    door.open();
    await server.settled();
    expect(server.pendingUpdates()).toBe(0);
  });
});

describe("stopping", () => {
  it("lets the one under way finish, and leaves the rest for the next start", async () => {
    const door = gate();
    const { server, run, got, chat, open } = await openChat({
      receive: ({ what }) =>
        what.kind === "text" && what.text === "b"
          ? door.passed.then(() => ({}))
          : Promise.resolve({}),
    });
    const ann = server.person({ id: 11, name: "Ann" });
    ann.start();
    for (const text of ["a", "b", "c", "d"]) ann.say(text);
    const { ended } = await run();
    await vi.waitFor(() => expect(texts(got)).toContain("b"));
    const stopped = chat.stop();
    door.open();
    await stopped;
    expect(await ended).toBeNull();
    expect(texts(got)).toEqual(["a", "b"]);
    expect(server.pendingUpdates()).toBe(2);
    await run(open());
    await server.settled();
    expect(texts(got)).toEqual(["a", "b", "c", "d"]);
  });

  it("confirms nothing when nothing was taken in", async () => {
    const { server, run, chat } = await openChat();
    const { ended } = await run();
    await server.until(() => server.calls("getUpdates").length > 0, "a poll");
    await chat.stop();
    expect(await ended).toBeNull();
  });

  it("can still carry effects out, so that the last replies go out", async () => {
    const { server, run, chat } = await openChat();
    await run();
    server.person({ id: 11, name: "Ann" }).start();
    await server.settled();
    await chat.stop();
    const carried = await chat.carrier.carry(asking, { earlier: null, part: 0 });
    expect(carried.outcome).toBe("done");
  });

  it("works before anything was started", async () => {
    const { chat } = await openChat();
    await chat.stop();
  });
});

describe("what makes no sense to go on with", () => {
  it("is a token that is not known, in one plain sentence without the token", async () => {
    const { server, log } = await openChat();
    const token = "7:another-made-up-token";
    const chat = createChat({
      token,
      apiRoot: server.url,
      wording: plainWording,
      codec,
      timers: realTimers,
      log: createLog((line) => log.push(line), Date.now, [token]),
    });
    const error = await chat.identify().catch((reason: unknown) => reason);
    expect(error).toMatchObject({ name: "BadToken" });
    expect(String(error)).not.toContain(token);
    expect(log).toEqual([]);
  });

  it("is not a network that is away for a moment", async () => {
    const { server, chat, log } = await openChat({
      timers: { ...realTimers, after: (_, run) => realTimers.after(1, run) },
    });
    server.faults.add({ kind: "resetBefore" }, { method: "getMe", times: 2 });
    expect(await chat.identify()).toEqual({ id: 1, username: "rehearsal_bot" });
    expect(log.filter((line) => line.includes("not-reachable"))).toHaveLength(2);
    expect(log.join()).not.toContain(TOKEN);
  });

  it("is another program with the same token, but only after a minute", async () => {
    const { server, run } = await openChat({ timers: hurriedTimers() });
    server.faults.add(conflict, { method: "getUpdates", times: 1000 });
    const { ended } = await run();
    expect(await ended).toMatchObject({ name: "TakenElsewhere" });
  });

  it("does not keep it from being stopped meanwhile", async () => {
    const { server, run, chat } = await openChat();
    server.faults.add(conflict, { method: "getUpdates", times: 1000 });
    server.faults.add({ kind: "webPage", status: 502 }, { method: "deleteWebhook", times: 1 });
    const { ended } = await run();
    await server.until(() => server.calls("getUpdates").length > 0, "a poll");
    await chat.stop();
    expect(await ended).toBeNull();
  });
});

const conflict = {
  kind: "refusal",
  errorCode: 409,
  description: "Conflict: terminated by other getUpdates request",
} as const;

/** Time goes on by the pauses between attempts alone, and these are over at once. */
function hurriedTimers(): Timers {
  let now = 0;
  return {
    now: () => now,
    after: (milliseconds, run) =>
      realTimers.after(1, () => {
        if (milliseconds === 3000) now += milliseconds;
        run();
      }),
  };
}
