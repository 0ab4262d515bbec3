// Covers also: src/rehearsal/methods/destination.ts, src/rehearsal/methods/text-arguments.ts,
// src/rehearsal/methods/media-arguments.ts, src/rehearsal/methods/call.ts,
// src/rehearsal/methods/method-table.ts, src/rehearsal/world/media-body.ts,
// src/rehearsal/world/photo-sizes.ts
import { InlineKeyboard, InputFile, InputMediaBuilder, Keyboard } from "grammy";
import { beforeEach, describe, expect, it } from "vitest";
import { samplePicture } from "../../../src/rehearsal/people/sample-picture.ts";
import { openStage, refusalOf, type Stage } from "../stage.ts";

const ANA = 7;
let stage: Stage;

beforeEach(async () => {
  stage = await openStage({ clock: () => 1_700_000_000_900 });
  stage.server.person({ id: ANA, name: "Ana" }).start();
});

const picture = (width = 640, height = 480) =>
  new InputFile(samplePicture({ width, height }), "p.png");

describe("sendMessage", () => {
  it("answers with the message, dated in seconds", async () => {
    const sent = await stage.api.sendMessage(ANA, "see /help", {
      reply_markup: new InlineKeyboard().text("Yes", "y"),
    });
    expect(sent).toEqual({
      message_id: 2,
      from: { id: 1, is_bot: true, first_name: "Rehearsal", username: "rehearsal_bot" },
      chat: { id: ANA, type: "private", first_name: "Ana" },
      date: 1_700_000_000,
      text: "see /help",
      entities: [{ type: "bot_command", offset: 4, length: 5 }],
      reply_markup: { inline_keyboard: [[{ text: "Yes", callback_data: "y" }]] },
    });
  });

  // Limit: Bot API reference text in @grammyjs/types, "1-4096 characters after entities parsing".
  // Wordings: Bot API server source, public repository tdlib/telegram-bot-api.
  it("takes 1 to 4096 characters", async () => {
    const { api } = stage;
    expect((await api.sendMessage(ANA, "x".repeat(4096))).text).toHaveLength(4096);
    expect(await refusalOf(api.sendMessage(ANA, "x".repeat(4097)))).toBe(
      "400 Bad Request: message is too long",
    );
    expect(await refusalOf(api.sendMessage(ANA, ""))).toBe(
      "400 Bad Request: message text is empty",
    );
  });

  it("refuses broken HTML and takes entities", async () => {
    const { api } = stage;
    expect(await refusalOf(api.sendMessage(ANA, "5 < 6", { parse_mode: "HTML" }))).toBe(
      '400 Bad Request: can\'t parse entities: Unsupported start tag "" at byte offset 2',
    );
    const sent = await api.sendMessage(ANA, "5 < 6", {
      entities: [{ type: "bold", offset: 0, length: 5 }],
    });
    expect(sent.entities).toEqual([{ type: "bold", offset: 0, length: 5 }]);
  });

  it("refuses data above 64 bytes and text buttons", async () => {
    const { api } = stage;
    const keyboard = (data: string) => ({ reply_markup: new InlineKeyboard().text("a", data) });
    expect(await refusalOf(api.sendMessage(ANA, "x", keyboard("d".repeat(65))))).toBe(
      "400 Bad Request: BUTTON_DATA_INVALID",
    );
    expect(await refusalOf(api.sendMessage(ANA, "x", keyboard("")))).toContain(
      "Text buttons are unallowed in the inline keyboard",
    );
    expect(await stage.ask("sendMessage", { chat_id: "7", text: "x", reply_markup: "{" })).toBe(
      "400 Bad Request: can't parse reply keyboard markup JSON object",
    );
  });

  // Wordings: Bot API server source, public repository tdlib/telegram-bot-api.
  it("replies to messages that are there", async () => {
    const { api } = stage;
    const reply = (message_id: number, allow_sending_without_reply = false) =>
      api.sendMessage(ANA, "x", { reply_parameters: { message_id, allow_sending_without_reply } });
    expect((await reply(1)).reply_to_message).toMatchObject({ message_id: 1, text: "/start" });
    expect(await refusalOf(reply(99))).toBe("400 Bad Request: message to be replied not found");
    expect((await reply(99, true)).reply_to_message).toBeUndefined();
  });

  it("shows and takes away a reply keyboard", async () => {
    const { api, server } = stage;
    await api.sendMessage(ANA, "pick", { reply_markup: new Keyboard().text("A").row().text("B") });
    expect(server.view(ANA).keyboard).toEqual([["A"], ["B"]]);
    await api.sendMessage(ANA, "done", { reply_markup: { remove_keyboard: true } });
    expect(server.view(ANA).keyboard).toEqual([]);
  });

  it("refuses a chat it was given no id for", async () => {
    expect(await refusalOf(stage.api.sendMessage("", "x"))).toBe(
      "400 Bad Request: chat_id is empty",
    );
    expect(await refusalOf(stage.api.sendMessage("@nobody", "x"))).toBe(
      "400 Bad Request: chat not found",
    );
  });
});

describe("sendPhoto", () => {
  it("offers a photo in several sizes, the largest last, and sends it again by any id", async () => {
    const { api, server } = stage;
    const sent = await api.sendPhoto(ANA, picture(1600, 1200), {
      caption: "<b>c</b>",
      parse_mode: "HTML",
    });
    expect(sent.photo.map(({ width, height }) => [width, height])).toEqual([
      [90, 68],
      [320, 240],
      [800, 600],
      [1280, 960],
      [1600, 1200],
    ]);
    expect(sent).toMatchObject({ caption: "c", caption_entities: [{ type: "bold" }] });
    const again = await api.sendPhoto(ANA, sent.photo[0]?.file_id ?? "");
    expect(again.photo).toEqual(sent.photo);
    expect(server.transcript(ANA).at(-1)?.file).toMatchObject({ width: 1600, height: 1200 });
  });

  // Limits: Bot API reference text in @grammyjs/types, sendPhoto: 10 MB, sides 10000 together,
  // ratio 20. Wordings from memory.
  it.each([
    [6000, 4001, "PHOTO_INVALID_DIMENSIONS"],
    [2100, 100, "PHOTO_INVALID_DIMENSIONS"],
  ])("refuses %i × %i pixels", async (width, height, reason) => {
    expect(await refusalOf(stage.api.sendPhoto(ANA, picture(width, height)))).toBe(
      `400 Bad Request: ${reason}`,
    );
  });

  it("refuses what is no picture, is empty or too large", async () => {
    const { api } = await openStage({ limits: { photoBytes: 500 } });
    const upload = (bytes: Buffer) => refusalOf(api.sendPhoto(ANA, new InputFile(bytes, "p.png")));
    expect(await upload(Buffer.from("<svg/>"))).toBe("400 Bad Request: IMAGE_PROCESS_FAILED");
    expect(await upload(Buffer.alloc(0))).toBe("400 Bad Request: file must be non-empty");
    expect(await upload(Buffer.alloc(501))).toBe("400 Bad Request: file is too big for a photo");
  });

  // Limit: Bot API reference text in @grammyjs/types, "0-1024 characters". Wording from memory.
  it("takes a caption of 1024 characters", async () => {
    const { api } = stage;
    const captioned = (count: number) =>
      api.sendPhoto(ANA, picture(), { caption: "x".repeat(count) });
    expect((await captioned(1024)).caption).toHaveLength(1024);
    expect(await refusalOf(captioned(1025))).toBe("400 Bad Request: message caption is too long");
  });

  // First and last wording: Bot API server source, public repository tdlib/telegram-bot-api; the
  // others from memory.
  it("needs a file, and one that was a photo before", async () => {
    const { api } = stage;
    const document = await api.sendDocument(ANA, new InputFile(Buffer.from("x"), "x.pdf"));
    expect(await refusalOf(api.sendPhoto(ANA, ""))).toBe(
      "400 Bad Request: there is no photo in the request",
    );
    expect(await refusalOf(api.sendPhoto(ANA, "AgACunknown"))).toBe(
      "400 Bad Request: wrong file identifier/HTTP URL specified",
    );
    expect(await refusalOf(api.sendPhoto(ANA, document.document.file_id))).toBe(
      "400 Bad Request: can't use file of type Document as Photo",
    );
    expect(await refusalOf(api.sendPhoto(ANA, "https://farm.example/p.jpg"))).toBe(
      "400 Bad Request: failed to get HTTP URL content",
    );
  });
});

describe("other content", () => {
  it("documents, voices, videos, audio and stickers carry what is known of them", async () => {
    const { api } = stage;
    const file = (name: string) => new InputFile(Buffer.from(name), name);
    expect((await api.sendDocument(ANA, file("visit.ics"))).document.mime_type).toBe(
      "text/calendar",
    );
    const voice = await api.sendVoice(ANA, file("v.ogg"), { duration: 4 });
    expect(voice.voice).toMatchObject({ duration: 4, mime_type: "audio/ogg" });
    const video = await api.sendVideo(ANA, file("v.mp4"), { width: 10, height: 20 });
    expect(video.video).toMatchObject({ width: 10, height: 20, file_name: "v.mp4" });
    expect((await api.sendAudio(ANA, file("a.mp3"))).audio.file_name).toBe("a.mp3");
    expect((await api.sendSticker(ANA, file("s.webp"))).sticker.type).toBe("regular");
    expect((await api.sendVoice(ANA, voice.voice.file_id)).voice.file_id).toBe(voice.voice.file_id);
  });

  it("a document above the limit is refused", async () => {
    const { api, server } = await openStage({ limits: { uploadBytes: 100 } });
    server.person({ id: ANA, name: "Ana" }).start();
    const file = new InputFile(Buffer.alloc(101), "a.bin");
    expect(await refusalOf(api.sendDocument(ANA, file))).toBe("400 Bad Request: file is too big");
  });

  it("places, venues and contacts", async () => {
    const { api, server } = stage;
    await api.sendLocation(ANA, 52.5, 13.4);
    await api.sendVenue(ANA, 52.5, 13.4, "North field", "by the old barn");
    await api.sendContact(ANA, "+49301234", "Yusuf", { last_name: "K" });
    const [, location, venue, contact] = server.transcript(ANA);
    expect(location).toMatchObject({
      kind: "location",
      place: { latitude: 52.5, longitude: 13.4 },
    });
    expect(venue).toMatchObject({ kind: "venue", place: { title: "North field" } });
    expect(contact).toMatchObject({
      kind: "contact",
      contact: { phone: "+49301234", name: "Yusuf K" },
    });
  });

  // Wordings: Bot API server source, public repository tdlib/telegram-bot-api; "wrong location"
  // from memory.
  it("a place needs both numbers, a contact its phone number", async () => {
    expect(await stage.ask("sendLocation", { chat_id: "7", latitude: "1" })).toBe(
      "400 Bad Request: longitude is empty",
    );
    expect(await refusalOf(stage.api.sendLocation(ANA, 91, 0))).toBe(
      "400 Bad Request: wrong location specified",
    );
    expect(await refusalOf(stage.api.sendContact(ANA, "", "Yusuf"))).toBe(
      '400 Bad Request: parameter "phone_number" is required',
    );
  });
});

describe("albums", () => {
  it("are several messages with one id and their own captions", async () => {
    const { api, server } = stage;
    const sent = await api.sendMediaGroup(ANA, [
      InputMediaBuilder.photo(picture(), { caption: "left" }),
      InputMediaBuilder.photo(picture(300, 200)),
    ]);
    expect(
      new Set(
        server
          .transcript(ANA)
          .slice(1)
          .map(({ albumId }) => albumId),
      ).size,
    ).toBe(1);
    expect(sent).toHaveLength(2);
    expect(
      server
        .transcript(ANA)
        .slice(1)
        .map(({ kind, text }) => [kind, text]),
    ).toEqual([
      ["photo", "left"],
      ["photo", ""],
    ]);
  });

  // Rules: Bot API reference text in @grammyjs/types, sendMediaGroup: 2-10 items, documents only
  // with documents. Wordings from memory.
  it("have 2 to 10 items, and documents only with documents", async () => {
    const { api } = stage;
    const album = (count: number) =>
      api.sendMediaGroup(
        ANA,
        Array.from({ length: count }, () => InputMediaBuilder.photo(picture())),
      );
    expect(await refusalOf(album(1))).toBe("400 Bad Request: too few messages to send as an album");
    expect(await refusalOf(album(11))).toBe(
      "400 Bad Request: too many messages to send as an album",
    );
    const { document } = await api.sendDocument(ANA, new InputFile(Buffer.from("x"), "x.pdf"));
    const { photo } = await api.sendPhoto(ANA, picture());
    const media = JSON.stringify([
      { type: "document", media: document.file_id },
      { type: "photo", media: photo[0]?.file_id },
    ]);
    expect(await stage.ask("sendMediaGroup", { chat_id: "7", media })).toBe(
      "400 Bad Request: document can't be mixed with other media types",
    );
  });

  // Wordings: Bot API server source, public repository tdlib/telegram-bot-api.
  it.each([
    ["{}", "expected an Array of InputMedia"],
    ["[1]", "can't parse InputMedia: expected an Object"],
    ['[{"type":"photo"}]', "can't parse InputMedia: media not found"],
    ['[{"type":"dance","media":"x"}]', 'can\'t parse InputMedia: type "dance" is unsupported'],
    ["[", "can't parse media JSON object"],
    ["", 'parameter "media" is required'],
  ])("are refused with %s", async (media, reason) => {
    expect(await stage.ask("sendMediaGroup", { chat_id: "7", media })).toBe(
      `400 Bad Request: ${reason}`,
    );
  });
});
