// Covers also: src/rehearsal/world/presses.ts
import { InlineKeyboard, InputFile } from "grammy";
import { beforeEach, describe, expect, it } from "vitest";
import { openStage, refusalOf, type Stage } from "../stage.ts";

const ANA = 7;
const TOO_OLD =
  "400 Bad Request: query is too old and response timeout expired or query ID is invalid";
let stage: Stage;
let now = 0;

beforeEach(async () => {
  now = 1_700_000_000_000;
  stage = await openStage({ clock: () => now });
  stage.server.person({ id: ANA, name: "Ana" }).start();
});

const ana = () => stage.server.person({ id: ANA, name: "Ana" });

/** Presses a button and returns the query id the bot gets. */
async function press(): Promise<string> {
  const { api } = stage;
  await api.sendMessage(ANA, "?", { reply_markup: new InlineKeyboard().text("Yes", "y") });
  ana().press("Yes");
  const updates = await api.getUpdates();
  const { update_id: last = 0, callback_query: query } = updates.at(-1) ?? {};
  await api.getUpdates({ offset: last + 1 });
  return query?.id ?? "";
}

describe("answering a button press", () => {
  it("shows the words once and ends the waiting", async () => {
    const { api, server } = stage;
    const id = await press();
    expect(ana().waitingButtons()).toEqual(["y"]);
    expect(await api.answerCallbackQuery(id, { text: "Noted", show_alert: true })).toBe(true);
    expect(ana().waitingButtons()).toEqual([]);
    expect(server.view(ANA).toasts).toEqual([{ userId: ANA, text: "Noted", alert: true }]);
  });

  // Wording: Bot API server source, public repository tdlib/telegram-bot-api. The window of 15 s
  // is undocumented; it comes from field reports.
  it("works once, within 15 seconds, for a query that was", async () => {
    const { api } = stage;
    const once = await press();
    await api.answerCallbackQuery(once);
    expect(await refusalOf(api.answerCallbackQuery(once))).toBe(TOO_OLD);
    expect(await refusalOf(api.answerCallbackQuery("12345"))).toBe(TOO_OLD);
    const inTime = await press();
    now += 15_000;
    await api.answerCallbackQuery(inTime);
    const late = await press();
    now += 15_001;
    expect(await refusalOf(api.answerCallbackQuery(late))).toBe(TOO_OLD);
  });

  // Limit: Bot API reference text in @grammyjs/types, "0-200 characters". Wording from memory.
  it("takes 200 characters", async () => {
    const { api } = stage;
    const id = await press();
    expect(await refusalOf(api.answerCallbackQuery(id, { text: "x".repeat(201) }))).toBe(
      "400 Bad Request: MESSAGE_TOO_LONG",
    );
    await api.answerCallbackQuery(id, { text: "x".repeat(200) });
  });
});

describe("signs of life", () => {
  // Wording: Bot API server source, public repository tdlib/telegram-bot-api.
  it("an action shows until the next message", async () => {
    const { api, server } = stage;
    await api.sendChatAction(ANA, "typing");
    expect(server.view(ANA).action).toBe("typing");
    await api.sendMessage(ANA, "x");
    expect(server.view(ANA).action).toBe("");
    expect(await stage.ask("sendChatAction", { chat_id: "7", action: "dance" })).toBe(
      "400 Bad Request: wrong parameter action in request",
    );
  });

  // First wording from memory; second: Bot API server source, public repository
  // tdlib/telegram-bot-api.
  it("one reaction on a message, of the emoji there are", async () => {
    const { api, server } = stage;
    await api.setMessageReaction(ANA, 1, [{ type: "emoji", emoji: "👍" }]);
    expect(server.transcript(ANA)[0]?.reactions).toEqual(["👍"]);
    await api.setMessageReaction(ANA, 1, []);
    expect(server.transcript(ANA)[0]?.reactions).toEqual([]);
    const reaction = '[{"type":"emoji","emoji":"🚜"}]';
    expect(await stage.ask("setMessageReaction", { chat_id: "7", message_id: "1", reaction })).toBe(
      "400 Bad Request: REACTION_INVALID",
    );
    expect(await refusalOf(api.setMessageReaction(ANA, 99, []))).toBe(
      "400 Bad Request: message to react not found",
    );
  });
});

describe("pinning", () => {
  it("marks the message, leaves a service message and tells the bot", async () => {
    const { api, server } = stage;
    const { message_id } = await api.sendMessage(ANA, "plan");
    await api.pinChatMessage(ANA, message_id);
    expect(server.transcript(ANA).map(({ isPinned, service }) => [isPinned, service])).toEqual([
      [false, undefined],
      [true, undefined],
      [false, "pinned_message"],
    ]);
    const updates = await api.getUpdates();
    expect(updates.at(-1)?.message?.pinned_message).toMatchObject({ message_id, text: "plan" });
    expect((await api.getChat(ANA)).pinned_message).toMatchObject({ message_id });
    await api.unpinChatMessage(ANA);
    expect((await api.getChat(ANA)).pinned_message).toBeUndefined();
  });

  // "not found" wordings: Bot API server source, public repository tdlib/telegram-bot-api; the
  // other from memory.
  it("needs a message, and rights in a group", async () => {
    const { api, server } = stage;
    expect(await refusalOf(api.pinChatMessage(ANA, 99))).toBe(
      "400 Bad Request: message to pin not found",
    );
    expect(await refusalOf(api.unpinChatMessage(ANA))).toBe(
      "400 Bad Request: message to unpin not found",
    );
    const group = server.group({ title: "Yard", members: [ana()] });
    group.addBot(ana());
    const { message_id } = await api.sendMessage(group.id, "plan");
    expect(await refusalOf(api.pinChatMessage(group.id, message_id))).toBe(
      "400 Bad Request: not enough rights to manage pinned messages in the chat",
    );
  });
});

describe("who is who", () => {
  it("a chat is described, and its members", async () => {
    const { api, server } = stage;
    const ben = server.person({ id: 8, name: "Ben" });
    const cy = server.person({ id: 9, name: "Cy" });
    const group = server.group({ title: "Yard", members: [ana(), ben] });
    group.addBot(ana());
    expect(await api.getChat(group.id)).toMatchObject({
      id: group.id,
      type: "group",
      title: "Yard",
    });
    const status = async (id: number) => (await api.getChatMember(group.id, id)).status;
    expect(await Promise.all([7, 8, 9, 1].map(status))).toEqual([
      "administrator",
      "member",
      "left",
      "member",
    ]);
    expect(cy.user.first_name).toBe("Cy");
    // Wordings: Bot API server source, public repository tdlib/telegram-bot-api.
    expect(await refusalOf(api.getChatMember(group.id, 404))).toBe(
      "400 Bad Request: user not found",
    );
    expect(await refusalOf(api.getChatMember(group.id, 0))).toBe(
      "400 Bad Request: invalid user_id specified",
    );
  });
});

describe("files", () => {
  const download = async (path: string | undefined) =>
    await fetch(`${stage.server.url}/file/bot${stage.server.token}/${path}`);

  it("can be fetched by a link that works for an hour", async () => {
    const { api } = stage;
    const { document } = await api.sendDocument(ANA, new InputFile(Buffer.from("%PDF"), "a b.pdf"));
    const file = await api.getFile(document.file_id);
    expect(file).toMatchObject({ file_id: document.file_id, file_size: 4 });
    expect(file.file_path).toBe("documents/file_1.pdf");
    now += 3_600_000;
    expect(await (await download(file.file_path)).text()).toBe("%PDF");
    now += 1;
    expect((await download(file.file_path)).status).toBe(404);
    const fresh = await api.getFile(document.file_id);
    expect((await download(fresh.file_path)).status).toBe(200);
  });

  it("a download can be made to fail", async () => {
    const { api, server } = stage;
    const { document } = await api.sendDocument(ANA, new InputFile(Buffer.from("%PDF"), "a.pdf"));
    const { file_path } = await api.getFile(document.file_id);
    server.faults.add({ kind: "webPage", status: 502 }, { method: "file" });
    server.faults.add({ kind: "resetBefore" }, { method: "file" });
    expect((await download(file_path)).status).toBe(502);
    await expect(download(file_path)).rejects.toThrow();
    expect((await download(file_path)).status).toBe(200);
  });

  // Limit and wordings: Bot API server source, public repository tdlib/telegram-bot-api (20 << 20).
  it("above 20 MB are not handed out, nor are unknown ones", async () => {
    const { api } = stage;
    const size = (claimedSize: number) =>
      ana().sendDocument(Buffer.from("x"), { claimedSize }).document?.file_id ?? "";
    expect((await api.getFile(size(20 << 20))).file_size).toBe(20 << 20);
    expect(await refusalOf(api.getFile(size((20 << 20) + 1)))).toBe(
      "400 Bad Request: file is too big",
    );
    expect(await refusalOf(api.getFile("nonsense"))).toBe("400 Bad Request: invalid file_id");
    const id = size(1);
    const almost = `${id.slice(0, -1)}${id.endsWith("A") ? "B" : "A"}`;
    expect(await refusalOf(api.getFile(almost))).toBe(
      "400 Bad Request: wrong file_id or the file is temporarily unavailable",
    );
    expect(await refusalOf(api.getFile(""))).toBe("400 Bad Request: file_id not specified");
  });
});
