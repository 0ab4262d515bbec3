// Covers also: src/rehearsal/people/attachments.ts, src/rehearsal/people/speaker.ts,
// src/rehearsal/people/pressing.ts
import { InlineKeyboard, Keyboard } from "grammy";
import { beforeEach, describe, expect, it } from "vitest";
import type { Person } from "../../../src/rehearsal/people/person.ts";
import { samplePicture } from "../../../src/rehearsal/people/sample-picture.ts";
import { RehearsalError } from "../../../src/rehearsal/people/speaker.ts";
import { openStage, type Stage } from "../stage.ts";

let stage: Stage;
let ana: Person;

beforeEach(async () => {
  stage = await openStage({ clock: () => 1_700_000_000_000 });
  ana = stage.server.person({ id: 7, name: "Ana", language: "de" });
  ana.start();
  await fresh();
});

/** The updates since the last time. */
async function fresh() {
  const updates = await stage.api.getUpdates();
  const last = updates.at(-1)?.update_id ?? 0;
  if (updates.length > 0) await stage.api.getUpdates({ offset: last + 1 });
  return updates;
}

const ask = async (...labels: string[]) => {
  const keyboard = labels.map((label) => InlineKeyboard.text(label, label.toLowerCase()));
  return await stage.api.sendMessage(7, "?", { reply_markup: InlineKeyboard.from([keyboard]) });
};

describe("what a person sends reaches the bot", () => {
  it("text, as a message of the person in their chat", async () => {
    ana.say("12,6 V /stop");
    expect(await fresh()).toMatchObject([
      {
        message: {
          message_id: 2,
          from: { id: 7, is_bot: false, first_name: "Ana", language_code: "de" },
          chat: { id: 7, type: "private", first_name: "Ana" },
          date: 1_700_000_000,
          text: "12,6 V /stop",
          entities: [{ type: "bot_command", offset: 7, length: 5 }],
        },
      },
    ]);
  });

  it("photos in several sizes, voices, videos, documents, stickers, each to be fetched", async () => {
    ana.sendPhoto(samplePicture({ width: 2000, height: 1000 }), { caption: "see /x" });
    ana.sendVoice(Buffer.from("ogg"), { durationSeconds: 3 });
    ana.sendVideo(Buffer.from("mp4"), { name: "start.mp4", caption: "c" });
    ana.sendDocument(Buffer.from("pdf"), { name: "Handbuch über alles.pdf", mimeType: "a/b" });
    ana.sendSticker("🚜");
    const messages = (await fresh()).map(({ message }) => message);
    expect(messages).toMatchObject([
      { caption: "see /x", caption_entities: [{ type: "bot_command" }] },
      { voice: { duration: 3, mime_type: "audio/ogg" } },
      { video: { file_name: "start.mp4" }, caption: "c" },
      { document: { file_name: "Handbuch über alles.pdf", mime_type: "a/b", file_size: 3 } },
      { sticker: { emoji: "🚜" } },
    ]);
    expect(messages[0]?.photo?.map(({ width }) => width)).toEqual([90, 320, 800, 1280, 2000]);
    const file = await stage.api.getFile(messages[1]?.voice?.file_id ?? "");
    const { url, token } = stage.server;
    const bytes = await fetch(`${url}/file/bot${token}/${file.file_path}`);
    expect(await bytes.text()).toBe("ogg");
  });

  it("an album as several messages with one id and the caption on the first", async () => {
    const [one, two] = [samplePicture({ shade: 1 }), samplePicture({ shade: 2 })];
    ana.sendAlbum([{ photo: one }, { photo: two }, { video: Buffer.from("v") }], {
      caption: "both sides",
    });
    ana.sendAlbum([{ document: Buffer.from("a"), name: "a.pdf" }, { document: Buffer.from("b") }]);
    const messages = (await fresh()).map(({ message }) => message);
    expect(messages.map((message) => message?.caption)).toEqual([
      "both sides",
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
    const ids = messages.map((message) => message?.media_group_id);
    expect(new Set(ids.slice(0, 3)).size).toBe(1);
    expect(new Set(ids).size).toBe(2);
  });

  it("places, live places and venues", async () => {
    ana.sendLocation({ latitude: 1, longitude: 2 });
    ana.sendLocation({ latitude: 1, longitude: 2, livePeriod: 900 });
    ana.sendVenue({ latitude: 1, longitude: 2, title: "Mill", address: "Mill Lane" });
    expect((await fresh()).map(({ message }) => message)).toMatchObject([
      { location: { latitude: 1, longitude: 2 } },
      { location: { live_period: 900 } },
      { location: { latitude: 1 }, venue: { title: "Mill", address: "Mill Lane" } },
    ]);
  });

  it("the own number with the own user id, other cards without", async () => {
    ana.sendOwnContact("+491");
    ana.sendContact({ phone: "+492", firstName: "Ben", lastName: "K" });
    ana.sendContact({ phone: "+493", firstName: "Cy", userId: 99 });
    expect((await fresh()).map(({ message }) => message?.contact)).toEqual([
      { phone_number: "+491", first_name: "Ana", user_id: 7 },
      { phone_number: "+492", first_name: "Ben", last_name: "K" },
      { phone_number: "+493", first_name: "Cy", user_id: 99 },
    ]);
  });

  it("edits as edited messages, in place", async () => {
    const text = ana.say("12 V");
    const photo = ana.sendPhoto(samplePicture(), { caption: "left" });
    await fresh();
    ana.edit(text.message_id, "11 V");
    ana.edit(photo.message_id, "right");
    expect(await fresh()).toMatchObject([
      { edited_message: { message_id: text.message_id, text: "11 V", edit_date: 1_700_000_000 } },
      { edited_message: { message_id: photo.message_id, caption: "right", photo: photo.photo } },
    ]);
    expect(stage.server.transcript(7).map(({ text: shown }) => shown)).toEqual([
      "/start",
      "11 V",
      "right",
    ]);
  });

  it("replies and forwarded messages", async () => {
    const sent = await stage.api.sendMessage(7, "which?");
    ana.say("this", { replyTo: sent.message_id });
    const ben = stage.server.person({ id: 8, name: "Ben" });
    const said = ben.say("from Ben");
    await fresh();
    ana.forward(said.message_id, ben.chatId);
    ana.say("this one", { replyTo: sent.message_id });
    expect((await fresh()).map(({ message }) => message)).toMatchObject([
      { text: "from Ben", forward_origin: { type: "user", sender_user: { id: 8 } } },
      { reply_to_message: { message_id: sent.message_id, text: "which?" } },
    ]);
  });
});

describe("pressing buttons", () => {
  it("sends the data with the message as it stands now", async () => {
    const asked = await ask("Yes", "No");
    ana.press("No");
    expect(await fresh()).toMatchObject([
      {
        callback_query: {
          from: { id: 7 },
          data: "no",
          message: { message_id: asked.message_id, text: "?", reply_markup: {} },
        },
      },
    ]);
  });

  it("takes the newest message that shows the label, or a place in the newest keyboard", async () => {
    const older = await ask("Yes", "Perhaps");
    await ask("Yes", "No");
    ana.press("Perhaps");
    ana.press("Yes");
    ana.press({ row: 0, column: 1 });
    ana.press("Yes", { messageId: older.message_id });
    const presses = (await fresh()).map(({ callback_query: query }) => [
      query?.data,
      query?.message?.message_id,
    ]);
    expect(presses).toEqual([
      ["perhaps", 2],
      ["yes", 3],
      ["no", 3],
      ["yes", 2],
    ]);
  });

  it("fails with the list of buttons when there is none of that label", async () => {
    expect(() => ana.press("Yes")).toThrow(
      new RehearsalError('Ana sees no button "Yes" in chat 7. There are none.'),
    );
    await ask("Yes", "No");
    await stage.api.sendMessage(7, "or", { reply_markup: new Keyboard().text("Later") });
    expect(() => ana.press("Perhaps")).toThrow(
      'Ana sees no button "Perhaps" in chat 7. There are: message 2: "Yes", "No"; keyboard: "Later".',
    );
    expect(() => ana.press({ row: 4, column: 0 })).toThrow("no button at row 4, column 0");
    await stage.api.editMessageReplyMarkup(7, 2);
    expect(() => ana.press("Yes")).toThrow('There are: keyboard: "Later"');
  });

  it("tells the bot nothing when it is a link", async () => {
    await stage.api.sendMessage(7, "x", {
      reply_markup: new InlineKeyboard().url("Map", "https://farm.example"),
    });
    expect(() => ana.press("Map")).toThrow("tells the bot nothing");
  });

  it("is repeated under a new update id and a new query id", async () => {
    expect(() => ana.pressAgain()).toThrow("Ana has pressed nothing yet");
    await ask("Yes");
    ana.press("Yes");
    await stage.api.editMessageText(7, 2, "answered");
    ana.pressAgain();
    const updates = await fresh();
    const queries = updates.map(({ callback_query: query }) => query);
    expect(queries.map((query) => query?.data)).toEqual(["yes", "yes"]);
    expect(new Set(queries.map((query) => query?.id)).size).toBe(2);
    expect(new Set(updates.map(({ update_id: id }) => id)).size).toBe(2);
    expect(new Set(queries.map((query) => query?.chat_instance)).size).toBe(1);
    expect(queries[1]?.message).toMatchObject({ text: "answered" });
  });

  // Bot API reference text in @grammyjs/types, InaccessibleMessage: date always 0.
  it("on a message that is gone or too old comes with its id only", async () => {
    const asked = await ask("Yes");
    ana.press("Yes", { isInaccessible: true });
    await stage.api.deleteMessage(7, asked.message_id);
    ana.forge("yes", asked.message_id);
    const gone = { chat: { id: 7, type: "private", first_name: "Ana" }, message_id: 2, date: 0 };
    const updates = await fresh();
    expect(updates.map(({ callback_query: query }) => query?.message)).toEqual([gone, gone]);
  });

  it("can be forged with any data on any message that ever was", async () => {
    const said = ana.say("mine");
    expect(() => ana.forge("x")).toThrow("The bot has written nothing here yet.");
    const asked = await ask("Yes");
    await fresh();
    ana.forge("v1:admin");
    ana.forge("", said.message_id);
    expect(
      (await fresh()).map(({ callback_query: query }) => [query?.data, query?.message?.message_id]),
    ).toEqual([
      ["v1:admin", asked.message_id],
      ["", said.message_id],
    ]);
    expect(() => ana.forge("x", 99)).toThrow("There never was a message 99 in chat 7.");
  });

  it("on a reply keyboard sends its words, or the number it asks for", async () => {
    const keyboard = new Keyboard()
      .text("Later")
      .requestContact("My number")
      .requestLocation("Here");
    await stage.api.sendMessage(7, "?", { reply_markup: keyboard });
    ana.press("Later");
    ana.press("My number");
    expect((await fresh()).map(({ message }) => message)).toMatchObject([
      { text: "Later" },
      { contact: { user_id: 7 } },
    ]);
    expect(() => ana.press("Here")).toThrow('"Here" asks for a place; call sendLocation().');
  });
});

describe("what the app would not allow fails with a plain sentence", () => {
  it.each([
    [
      "a reply to nothing",
      () => ana.say("x", { replyTo: 99 }),
      "There is no message 99 in chat 7; there are 1.",
    ],
    ["an edit of nothing", () => ana.edit(99, "x"), "There is no message 99"],
    [
      "bytes that are no photo",
      () => ana.sendPhoto(Buffer.from("x")),
      "are no JPEG, PNG, GIF or WebP picture",
    ],
    ["a forward from nowhere", () => ana.forward(1, 404), "There is no chat 404."],
  ])("%s", (_case, act, sentence) => {
    expect(act).toThrow(sentence);
  });

  it("an edit of somebody else's message", async () => {
    const { message_id } = await stage.api.sendMessage(7, "x");
    expect(() => ana.edit(message_id, "y")).toThrow(`Message ${message_id} is not by Ana.`);
  });
});
