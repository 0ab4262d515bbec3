import { beforeEach, describe, expect, it } from "vitest";
import type { Person } from "../../../src/rehearsal/people/person.ts";
import { WaitingError } from "../../../src/rehearsal/view/waiting.ts";
import { openStage, type Stage, startBot } from "../stage.ts";

let stage: Stage;
let ana: Person;

beforeEach(async () => {
  stage = await openStage();
  ana = stage.server.person({ id: 7, name: "Ana" });
  ana.start();
});

describe("waiting", () => {
  it("ends at once when the chat fits already, else with the event that makes it fit", async () => {
    const { server, api } = stage;
    expect(await server.waitFor(7, (messages) => messages.length === 1)).toHaveLength(1);
    const waited = server.waitFor(7, (messages) => messages.at(-1)?.text === "hello");
    await api.sendMessage(7, "hello");
    expect((await waited).map(({ text }) => text)).toEqual(["/start", "hello"]);
  });

  it("in vain fails with what the chat shows", async () => {
    const waited = stage.server.waitFor(7, () => false, { timeoutMs: 5 });
    await expect(waited).rejects.toThrow(
      new WaitingError("Waited 5 ms for chat 7 to fit. It shows:\n#1 Ana: /start"),
    );
  });

  it("passes on what goes wrong in the condition", async () => {
    const waited = stage.server.waitFor(7, () => {
      throw new Error("wrong condition");
    });
    await expect(waited).rejects.toThrow("wrong condition");
  });

  it("for any condition looks again after every event", async () => {
    const { server, api } = stage;
    const waited = server.until(() => server.calls("getMe").length === 2, "two calls");
    await api.getMe();
    await api.getMe();
    await waited;
    const vain = server.until(() => false, "the moon", { timeoutMs: 5 });
    await expect(vain).rejects.toThrow("Waited 5 ms for the moon");
  });

  it("until the bot has settled lasts through all its answers", async () => {
    const { server, bot: makeBot } = stage;
    const bot = makeBot();
    bot.on("message", async (ctx) => {
      for (const text of ["one", "two", "three"]) await ctx.reply(text);
    });
    await startBot(bot);
    ana.say("go");
    await server.settled();
    expect(
      server
        .transcript(7)
        .map(({ text }) => text)
        .slice(-3),
    ).toEqual(["one", "two", "three"]);
    expect(server.pendingUpdates()).toBe(0);
    await server.settled();
  });

  it("until the bot has settled is not put off by polling", async () => {
    const { server, api } = stage;
    const [first] = await api.getUpdates();
    const offset = (first?.update_id ?? 0) + 1;
    let isOver = false;
    const polling = (async () => {
      while (!isOver) await api.getUpdates({ offset });
    })();
    await server.settled({ timeoutMs: 2000, quietMs: 50 });
    isOver = true;
    await polling;
    expect(server.calls("getUpdates").length).toBeGreaterThan(3);
  });

  it("for a bot that does not run fails and says so", async () => {
    const waited = stage.server.settled({ timeoutMs: 5 });
    await expect(waited).rejects.toThrow(
      "Waited 5 ms for the bot to settle; 1 updates wait for it and 0 calls are under way. Is it running?",
    );
  });
});
