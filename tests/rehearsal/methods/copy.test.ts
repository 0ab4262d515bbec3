import { InlineKeyboard, InputFile } from "grammy";
import { beforeEach, describe, expect, it } from "vitest";
import { samplePicture } from "../../../src/rehearsal/people/sample-picture.ts";
import { openStage, refusalOf, type Stage } from "../stage.ts";

const ANA = 7;
const BEN = 8;
let stage: Stage;

beforeEach(async () => {
  stage = await openStage();
  stage.server.person({ id: ANA, name: "Ana" }).start();
  stage.server.person({ id: BEN, name: "Ben" }).start();
});

describe("passing messages on", () => {
  it("a forwarded message names its writer, a copied one does not", async () => {
    const { api, server } = stage;
    const voice = server.person({ id: ANA, name: "Ana" }).sendVoice(Buffer.from("ogg"));
    const forwarded = await api.forwardMessage(BEN, ANA, voice.message_id);
    expect(forwarded).toMatchObject({
      forward_origin: { type: "user", sender_user: { id: ANA } },
      voice: { file_id: voice.voice?.file_id },
    });
    const copied = await api.copyMessage(BEN, ANA, voice.message_id);
    expect(Object.keys(copied)).toEqual(["message_id"]);
    expect(
      server
        .transcript(BEN)
        .slice(1)
        .map(({ kind, forwardedFrom }) => [kind, forwardedFrom]),
    ).toEqual([
      ["voice", "Ana"],
      ["voice", undefined],
    ]);
  });

  it("a forward of a forward still names the first writer", async () => {
    const { api } = stage;
    const first = await api.forwardMessage(BEN, ANA, 1);
    const second = await api.forwardMessage(ANA, BEN, first.message_id);
    expect(second.forward_origin).toMatchObject({ sender_user: { id: ANA } });
  });

  it("a copy may have another caption and a keyboard", async () => {
    const { api, server } = stage;
    const photo = await api.sendPhoto(ANA, new InputFile(samplePicture(), "p.png"), {
      caption: "old",
    });
    await api.copyMessage(BEN, ANA, photo.message_id, {
      caption: "new",
      reply_markup: new InlineKeyboard().text("Take", "t"),
    });
    await api.copyMessage(BEN, ANA, photo.message_id);
    const [, withCaption, asItWas] = server.transcript(BEN);
    expect(withCaption).toMatchObject({ text: "new", buttons: [[{ label: "Take", data: "t" }]] });
    expect(asItWas).toMatchObject({ text: "old", buttons: [] });
  });

  // First two wordings: Bot API server source, public repository tdlib/telegram-bot-api; the
  // others from memory.
  it("stops at what is not there or is protected", async () => {
    const { api } = stage;
    const kept = await api.sendMessage(ANA, "private", { protect_content: true });
    expect(await refusalOf(api.forwardMessage(BEN, ANA, 99))).toBe(
      "400 Bad Request: message to forward not found",
    );
    expect(await refusalOf(api.copyMessage(BEN, ANA, 99))).toBe(
      "400 Bad Request: message to copy not found",
    );
    expect(await refusalOf(api.forwardMessage(BEN, ANA, kept.message_id))).toBe(
      "400 Bad Request: message can't be forwarded",
    );
    expect(await refusalOf(api.copyMessage(BEN, ANA, kept.message_id))).toBe(
      "400 Bad Request: message can't be copied",
    );
  });
});
