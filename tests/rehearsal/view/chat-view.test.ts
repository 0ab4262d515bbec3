// Covers also: src/rehearsal/view/seen-message.ts
import { InlineKeyboard } from "grammy";
import { beforeEach, describe, expect, it } from "vitest";
import { samplePicture } from "../../../src/rehearsal/people/sample-picture.ts";
import { transcriptText } from "../../../src/rehearsal/view/chat-view.ts";
import { openStage, type Stage } from "../stage.ts";

let stage: Stage;

beforeEach(async () => {
  stage = await openStage({ clock: () => 1_700_000_000_000 });
  stage.server.person({ id: 7, name: "Ana" }).start();
});

describe("what people see of a chat", () => {
  it("is plain data that survives JSON", async () => {
    const { api, server } = stage;
    const keyboard = new InlineKeyboard()
      .text("Yes", "y")
      .success()
      .row()
      .url("Map", "https://farm.example");
    await api.sendMessage(7, "<b>Is</b> it on?", { parse_mode: "HTML", reply_markup: keyboard });
    const view = server.view(7);
    expect(view).toEqual({
      id: 7,
      type: "private",
      title: "Ana",
      messages: [
        expect.objectContaining({
          id: 1,
          text: "/start",
          from: { id: 7, name: "Ana", isBot: false },
        }),
        {
          id: 2,
          at: 1_700_000_000,
          from: { id: 1, name: "Rehearsal", isBot: true },
          kind: "text",
          text: "Is it on?",
          entities: [{ type: "bold", offset: 0, length: 2 }],
          buttons: [
            [{ label: "Yes", data: "y", style: "success" }],
            [{ label: "Map", url: "https://farm.example" }],
          ],
          isPinned: false,
          reactions: [],
        },
      ],
      keyboard: [],
      toasts: [],
      topics: [],
      action: "",
    });
    expect(JSON.parse(JSON.stringify(view))).toEqual(view);
  });

  it("shows files by name, type and size, and opens them by id", () => {
    const { server } = stage;
    const ana = server.person({ id: 7, name: "Ana" });
    ana.sendPhoto(samplePicture({ width: 100, height: 50 }));
    ana.sendDocument(Buffer.from("abc"), { name: "a.pdf" });
    const [, photo, document] = server.transcript(7);
    expect(photo?.file).toMatchObject({ width: 100, height: 50 });
    expect(document?.file).toEqual({
      id: expect.any(String),
      name: "a.pdf",
      mimeType: "application/pdf",
      size: 3,
    });
    expect(server.file(document?.file?.id ?? "")?.bytes.toString()).toBe("abc");
  });

  it("says who a forwarded message is from, and what a message replies to", () => {
    const { server } = stage;
    const ana = server.person({ id: 7, name: "Ana" });
    const ben = server.person({ id: 8, name: "Ben" });
    const said = ben.say("hello");
    ana.forward(said.message_id, 8);
    ana.say("yes", { replyTo: 1 });
    expect(server.transcript(7).slice(1)).toMatchObject([{ forwardedFrom: "Ben" }, { replyTo: 1 }]);
  });

  it("lists all chats, and knows those there are", () => {
    const { server } = stage;
    const ana = server.person({ id: 7, name: "Ana" });
    const group = server.group({ title: "Yard", members: [ana] });
    expect(server.chats()).toEqual([
      { id: 7, type: "private", title: "Ana" },
      { id: group.id, type: "group", title: "Yard" },
    ]);
    expect(() => server.transcript(404)).toThrow("There is no chat 404.");
  });
});

it("a chat in a few lines shows words, kinds and buttons", async () => {
  const { api, server } = stage;
  server.person({ id: 7, name: "Ana" }).sendPhoto(samplePicture());
  await api.sendMessage(7, "ok?", {
    reply_markup: new InlineKeyboard().text("Yes", "y").text("No", "n"),
  });
  expect(transcriptText(server.transcript(7))).toBe(
    "#1 Ana: /start\n#2 Ana: (photo)\n#3 Rehearsal: ok?\n    [Yes] [No]",
  );
  expect(transcriptText([])).toBe("(no messages)");
});
