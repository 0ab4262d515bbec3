import { InlineKeyboard, InputFile, InputMediaBuilder, Keyboard } from "grammy";
import { beforeEach, describe, expect, it } from "vitest";
import { samplePicture } from "../../../src/rehearsal/people/sample-picture.ts";
import { openStage, refusalOf, type Stage } from "../stage.ts";

const ANA = 7;
const NOT_MODIFIED =
  "400 Bad Request: message is not modified: specified new message content and reply markup are " +
  "exactly the same as a current content and reply markup of the message";
let stage: Stage;
let now = 1_700_000_000_000;

beforeEach(async () => {
  now = 1_700_000_000_000;
  stage = await openStage({ clock: () => now });
  stage.server.person({ id: ANA, name: "Ana" }).start();
});

const yes = () => new InlineKeyboard().text("Yes", "y");
const picture = (shade: number) => new InputFile(samplePicture({ shade }), "p.png");

describe("editing", () => {
  it("changes the message in place and dates the change", async () => {
    const { api, server } = stage;
    const { message_id } = await api.sendMessage(ANA, "question", { reply_markup: yes() });
    now += 5000;
    const edited = await api.editMessageText(ANA, message_id, "answered");
    expect(edited).toMatchObject({
      message_id,
      text: "answered",
      date: 1_700_000_000,
      edit_date: 1_700_000_005,
    });
    expect(server.transcript(ANA)).toHaveLength(2);
    expect(server.transcript(ANA).at(-1)).toMatchObject({
      text: "answered",
      buttons: [],
      editedAt: 1_700_000_005,
    });
  });

  // Wordings: Bot API server source, public repository tdlib/telegram-bot-api.
  it("refuses what changes nothing: neither text nor marks nor keyboard", async () => {
    const { api } = stage;
    const { message_id } = await api.sendMessage(ANA, "same", { reply_markup: yes() });
    const edit = (text: string, reply_markup?: InlineKeyboard) =>
      api.editMessageText(
        ANA,
        message_id,
        text,
        reply_markup === undefined ? {} : { reply_markup },
      );
    expect(await refusalOf(edit("same", yes()))).toBe(NOT_MODIFIED);
    const editKeyboard = (reply_markup: InlineKeyboard) =>
      api.editMessageReplyMarkup(ANA, message_id, { reply_markup });
    expect(await refusalOf(editKeyboard(yes()))).toBe(NOT_MODIFIED);
    await editKeyboard(new InlineKeyboard().text("No", "n"));
    await edit("same");
    expect(await refusalOf(edit("same"))).toBe(NOT_MODIFIED);
  });

  it("refuses messages that are gone or never were", async () => {
    const { api } = stage;
    const { message_id } = await api.sendMessage(ANA, "x");
    await api.deleteMessage(ANA, message_id);
    for (const id of [message_id, 99]) {
      expect(await refusalOf(api.editMessageText(ANA, id, "y"))).toBe(
        "400 Bad Request: message to edit not found",
      );
    }
    expect(await stage.ask("editMessageText", { text: "x" })).toBe(
      "400 Bad Request: message identifier is not specified",
    );
  });

  it("refuses messages of people, forwarded ones, and those with a reply keyboard", async () => {
    const { api } = stage;
    const forwarded = await api.forwardMessage(ANA, ANA, 1);
    const keyed = await api.sendMessage(ANA, "x", { reply_markup: new Keyboard().text("A") });
    const bare = await api.sendMessage(ANA, "x", { reply_markup: { remove_keyboard: true } });
    for (const id of [1, forwarded.message_id, keyed.message_id, bare.message_id]) {
      expect(await refusalOf(api.editMessageText(ANA, id, "y"))).toBe(
        "400 Bad Request: message can't be edited",
      );
    }
  });

  // Wordings from field reports on public issue trackers; "inline keyboard expected" from memory.
  it("changes a text as text, a caption as caption, with an inline keyboard only", async () => {
    const { api } = stage;
    const photo = await api.sendPhoto(ANA, picture(1), { caption: "a" });
    const text = await api.sendMessage(ANA, "a");
    expect(await refusalOf(api.editMessageText(ANA, photo.message_id, "b"))).toBe(
      "400 Bad Request: there is no text in the message to edit",
    );
    const caption = { caption: "b" };
    expect(await refusalOf(api.editMessageCaption(ANA, text.message_id, caption))).toBe(
      "400 Bad Request: there is no caption in the message to edit",
    );
    const edited = await api.editMessageCaption(ANA, photo.message_id, caption);
    expect(edited).toMatchObject({ caption: "b", photo: photo.photo });
    expect(await refusalOf(api.editMessageCaption(ANA, photo.message_id, caption))).toBe(
      NOT_MODIFIED,
    );
    const keyed = { chat_id: "7", message_id: String(text.message_id), text: "b" };
    expect(
      await stage.ask("editMessageText", { ...keyed, reply_markup: '{"keyboard":[["A"]]}' }),
    ).toBe("400 Bad Request: inline keyboard expected");
  });

  it("replaces a photo, and puts one into a text message", async () => {
    const { api, server } = stage;
    const photo = await api.sendPhoto(ANA, picture(1));
    const text = await api.sendMessage(ANA, "soon a picture");
    const media = () => InputMediaBuilder.photo(picture(2), { caption: "new" });
    await api.editMessageMedia(ANA, photo.message_id, media());
    await api.editMessageMedia(ANA, text.message_id, media());
    const [, first, second] = server.transcript(ANA);
    expect(first).toMatchObject({ kind: "photo", text: "new" });
    expect(second).toMatchObject({ kind: "photo", text: "new" });
    expect(server.file(first?.file?.id ?? "")?.bytes).toEqual(samplePicture({ shade: 2 }));
  });
});
