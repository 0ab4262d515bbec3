// Covers also: src/rehearsal/world/world.ts, src/rehearsal/world/faults.ts
import { type Bot, InlineKeyboard, InputFile } from "grammy";
import { beforeEach, describe, expect, it } from "vitest";
import type { Person } from "../../src/rehearsal/people/person.ts";
import { samplePicture } from "../../src/rehearsal/people/sample-picture.ts";
import {
  createRehearsalServer,
  PortTakenError,
  RealTokenError,
} from "../../src/rehearsal/server.ts";
import { openStage, type Stage, startBot, TOKEN } from "./stage.ts";

describe("the server", () => {
  it("refuses a token that looks like a real one, without repeating it", () => {
    const token = `123456789:${"a".repeat(35)}`;
    const make = () => createRehearsalServer({ token });
    expect(make).toThrow(RealTokenError);
    expect(make).not.toThrow(token);
    expect(make).toThrow("looks like one of a real bot");
  });

  it("says that its port is taken", async () => {
    const { server } = await openStage();
    const second = createRehearsalServer({ token: TOKEN, port: server.port });
    const error = await second.start().catch((reason: unknown) => reason);
    expect(error).toBeInstanceOf(PortTakenError);
    expect(error).toMatchObject({
      port: server.port,
      message: expect.stringContaining("is taken"),
    });
  });

  it("has no address before it starts and after it stops, and can start again", async () => {
    const server = createRehearsalServer({ token: TOKEN });
    expect(() => server.url).toThrow("no address before start()");
    await server.start();
    expect(server.port).toBeGreaterThan(0);
    await server.stop();
    expect(() => server.port).toThrow("no address before start()");
    await server.start();
    await server.stop();
  });

  it("takes the bot's id from the token and its names from the options", async () => {
    const server = createRehearsalServer({
      token: "42:rehearsal-x",
      botName: "Turnrow",
      botUsername: "turnrow_bot",
    });
    expect(server.bot).toMatchObject({ id: 42, first_name: "Turnrow", username: "turnrow_bot" });
  });
});

describe("a bot on the unmodified client", () => {
  let stage: Stage;
  let bot: Bot;
  let ana: Person;

  beforeEach(async () => {
    stage = await openStage();
    bot = stage.bot();
    ana = stage.server.person({ id: 7, name: "Ana", language: "de" });
  });

  it("talks with a person: deep link, buttons, an edit in place, a photo, a document", async () => {
    const { server } = stage;
    bot.command("start", (ctx) =>
      ctx.reply(`from ${ctx.match}`, { reply_markup: new InlineKeyboard().text("Yes", "y") }),
    );
    bot.on("callback_query:data", async (ctx) => {
      await ctx.answerCallbackQuery("noted");
      await ctx.editMessageText(`answered ${ctx.callbackQuery.data}`);
    });
    bot.on("message:photo", (ctx) =>
      ctx.replyWithDocument(new InputFile(Buffer.from("%PDF"), "Bericht für Ana.pdf")),
    );
    await startBot(bot);
    ana.start("abc");
    await server.settled();
    ana.press("Yes");
    await server.settled();
    ana.sendPhoto(samplePicture());
    await server.settled();
    expect(server.transcript(7).map(({ kind, text, file }) => [kind, text, file?.name])).toEqual([
      ["text", "/start abc", undefined],
      ["text", "answered y", undefined],
      ["photo", "", "photo.jpg"],
      ["document", "", "Bericht für Ana.pdf"],
    ]);
    expect(server.view(7).toasts).toEqual([{ userId: 7, text: "noted", alert: false }]);
    expect(ana.waitingButtons()).toEqual([]);
  });

  it("gets again what it had not confirmed when it died in the middle of a batch", async () => {
    const { server } = stage;
    for (const text of ["one", "two", "three"]) ana.say(text);
    const seen: string[] = [];
    await new Promise<void>((died) => {
      bot.on("message:text", (ctx) => {
        seen.push(ctx.message.text);
        if (seen.length < 2) return undefined;
        died();
        // The process ends here: nothing after this line happens.
        return new Promise<void>(() => {});
      });
      void bot.start().catch(() => undefined);
    });
    expect(seen).toEqual(["one", "two"]);
    expect(server.pendingUpdates()).toBe(3);

    const second = stage.bot();
    second.on("message:text", (ctx) => void seen.push(`again ${ctx.message.text}`));
    await startBot(second);
    await server.settled();
    expect(seen.slice(2)).toEqual(["again one", "again two", "again three"]);
  });

  it("is stopped by a second one that polls", async () => {
    const first = bot.start().catch((reason: unknown) => reason);
    await stage.server.until(() => stage.server.calls("getUpdates").length > 0, "a poll");
    await startBot(stage.bot());
    expect(await first).toMatchObject({ error_code: 409 });
  });

  it("sees the same album whole, with a gap, and late", async () => {
    const { server } = stage;
    const got: (number | string)[] = [];
    bot.on("message:photo", (ctx) => void got.push(ctx.message.message_id));
    bot.on("message:text", (ctx) => void got.push(ctx.message.text));
    await startBot(bot);
    const held = server.holdUpdates();
    const photos = [1, 2, 3].map((shade) => ({ photo: samplePicture({ shade }) }));
    ana.sendAlbum(photos);
    held.release(1);
    held.drop(1);
    await server.settled();
    ana.say("in between");
    held.end();
    await server.settled();
    expect(got).toEqual([1, 3, "in between"]);
  });
});
