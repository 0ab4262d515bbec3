import { beforeEach, describe, expect, it } from "vitest";
import { samplePicture } from "../../src/rehearsal/people/sample-picture.ts";
import {
  fits,
  newsKey,
  openMessage,
  playOnce,
  type ScriptLine,
} from "../../src/rehearsal/player.ts";
import { openStage, type Stage } from "./stage.ts";

let stage: Stage;
beforeEach(async () => {
  stage = await openStage();
  stage.server.person({ id: 7, name: "Ana" }).start();
});

const ana = () => stage.server.person({ id: 7, name: "Ana" });
const transcript = () => stage.server.transcript(7);
const ask = (text: string, ...labels: string[]) =>
  stage.api.sendMessage(7, text, {
    reply_markup: {
      inline_keyboard: labels.map((label) => [{ text: label, callback_data: label }]),
    },
  });
const play = (lines: readonly ScriptLine[], fallback: readonly string[] = []) =>
  playOnce(ana(), transcript(), {
    lines,
    fallback: { labels: fallback },
    picture: samplePicture({ width: 8, height: 8 }),
  });

describe("a played person", () => {
  it("answers the newest message that has buttons", async () => {
    await ask("First?", "Yes");
    await ask("Second?", "No");
    await stage.api.sendMessage(7, "By the way");
    expect(openMessage(transcript())?.text).toBe("Second?");
    expect(play([{ press: "Yes" }])).toBeNull();
    expect(play([{ press: "No" }])).toBe("No");
    const [update] = (await stage.api.getUpdates({ offset: -1 })).slice(-1);
    expect(update?.callback_query?.data).toBe("No");
  });

  it("takes the first line that fits: its words stand there and its button is there", async () => {
    await ask("How many VOLTS at the post?", "I don't know");
    const lines = [{ when: "amps", say: "3 A" }, { when: "volts", say: "12.4 V" }, { say: "?" }];
    expect(play(lines)).toBe("12.4 V");
    expect(transcript().at(-1)?.text).toBe("12.4 V");
    const message = openMessage(transcript());
    expect(message !== undefined && fits({ press: "Skip" }, message)).toBe(false);
  });

  it("sends a photo where the line says so", async () => {
    await ask("One photo, please", "Skip this");
    expect(play([{ when: "photo", photo: true }])).toBe("photo");
    expect(transcript().at(-1)?.kind).toBe("photo");
  });

  it("falls back on a button that is there, or does nothing", async () => {
    expect(play([{ say: "hello" }])).toBeNull();
    await ask("What now?", "Skip this");
    expect(play([], ["I don't know", "Skip this"])).toBe("Skip this");
    expect(play([], ["I don't know"])).toBeNull();
  });

  it("takes a message for news again once its words or buttons change", async () => {
    const { message_id: id } = await ask("Who?", "Ilse");
    const key = () => newsKey(openMessage(transcript()) ?? fail());
    const first = key();
    expect(key()).toBe(first);
    const markup = { inline_keyboard: [[{ text: "Piet", callback_data: "x" }]] };
    await stage.api.editMessageText(7, id, "Who?", { reply_markup: markup });
    expect(key()).not.toBe(first);
  });
});

function fail(): never {
  throw new Error("there is no open message");
}
