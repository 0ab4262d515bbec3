import { beforeEach, describe, expect, it } from "vitest";
import { openStage, refusalOf, type Stage } from "../stage.ts";

const ANA = 7;
let stage: Stage;
let now = 0;

beforeEach(async () => {
  now = 1_700_000_000_000;
  stage = await openStage({ clock: () => now });
  stage.server.person({ id: ANA, name: "Ana" }).start();
});

const HOUR = 3_600_000;

describe("deleting", () => {
  it("takes a message away for good, the person's own too in a private chat", async () => {
    const { api, server } = stage;
    await api.sendMessage(ANA, "a");
    await api.deleteMessage(ANA, 1);
    expect(server.transcript(ANA).map(({ text }) => text)).toEqual(["a"]);
    // Wording from memory.
    expect(await refusalOf(api.deleteMessage(ANA, 1))).toBe(
      "400 Bad Request: message to delete not found",
    );
  });

  // Limit: Bot API reference text in @grammyjs/types, "less than 48 hours ago".
  // Wording: Bot API server source, public repository tdlib/telegram-bot-api.
  it("is over after 48 hours", async () => {
    const { api } = stage;
    const { message_id: first } = await api.sendMessage(ANA, "a");
    const { message_id: second } = await api.sendMessage(ANA, "b");
    now += 48 * HOUR - 1000;
    await api.deleteMessage(ANA, first);
    now += 1000;
    expect(await refusalOf(api.deleteMessage(ANA, second))).toBe(
      "400 Bad Request: message can't be deleted",
    );
    expect(await refusalOf(api.deleteMessages(ANA, [second]))).toBe(
      "400 Bad Request: message can't be deleted",
    );
  });

  it("of other people's messages in a group is for administrators", async () => {
    const { api, server } = stage;
    const ana = server.person({ id: ANA, name: "Ana" });
    const group = server.group({ title: "Yard", members: [ana] });
    group.addBot(ana);
    const { message_id } = group.as(ana).say("hello");
    expect(await refusalOf(api.deleteMessage(group.id, message_id))).toBe(
      "400 Bad Request: message can't be deleted",
    );
    group.promoteBot(ana);
    await api.deleteMessage(group.id, message_id);
  });

  it("of several passes over those that are not there", async () => {
    const { api, server } = stage;
    const { message_id } = await api.sendMessage(ANA, "a");
    expect(await api.deleteMessages(ANA, [message_id, 98, 99])).toBe(true);
    expect(server.transcript(ANA)).toHaveLength(1);
  });

  // Wordings: Bot API server source, public repository tdlib/telegram-bot-api.
  it.each([
    ["deleteMessage?message_id=1", "chat identifier is not specified"],
    ["deleteMessage?chat_id=7", "message identifier is not specified"],
    ["deleteMessages?chat_id=7", "message identifiers are not specified"],
    ["deleteMessages?chat_id=7&message_ids=1", "expected an Array of message identifiers"],
    ["deleteMessages?chat_id=7&message_ids=[", "can't parse message_ids JSON object"],
    [
      `deleteMessages?chat_id=7&message_ids=[${"1,".repeat(100)}1]`,
      "too many message identifiers specified",
    ],
  ])("%.40s is refused", async (call, reason) => {
    expect(await stage.ask(call)).toBe(`400 Bad Request: ${reason}`);
  });
});
