import { beforeEach, describe, expect, it } from "vitest";
import type { Group } from "../../../src/rehearsal/people/group.ts";
import type { Person } from "../../../src/rehearsal/people/person.ts";
import { openStage, refusalOf, type Stage } from "../stage.ts";

let stage: Stage;
let ana: Person;
let forum: Group;

beforeEach(async () => {
  stage = await openStage();
  ana = stage.server.person({ id: 7, name: "Ana" });
  forum = stage.server.group({ title: "Dispatch", members: [ana], type: "forum" });
  forum.addBot(ana);
});

describe("topics", () => {
  it("are opened by a bot that is an administrator, and written into", async () => {
    const { api, server } = stage;
    forum.promoteBot(ana);
    const topic = await api.createForumTopic(forum.id, "Case 12", { icon_color: 9_367_192 });
    expect(topic).toMatchObject({ name: "Case 12", icon_color: 9_367_192 });
    const { message_thread_id } = topic;
    const sent = await api.sendMessage(forum.id, "hello", { message_thread_id });
    expect(sent).toMatchObject({ message_thread_id, is_topic_message: true });
    const reply = await api.sendMessage(forum.id, "reply", {
      reply_parameters: { message_id: sent.message_id },
    });
    expect(reply.message_thread_id).toBe(message_thread_id);
    expect(server.view(forum.id).topics).toEqual([
      { id: message_thread_id, name: "Case 12", isOpen: true },
    ]);
    const updates = await api.getUpdates();
    expect(updates.at(-1)?.message?.forum_topic_created).toMatchObject({ name: "Case 12" });
  });

  // Wording: Bot API server source, public repository tdlib/telegram-bot-api. That the general
  // topic cannot be named by its id 1: same source.
  it("that do not exist, or no longer, cannot be written into", async () => {
    const { api } = stage;
    forum.promoteBot(ana);
    const { message_thread_id } = await api.createForumTopic(forum.id, "Short");
    await api.raw.deleteForumTopic({ chat_id: forum.id, message_thread_id });
    for (const thread of [message_thread_id, 1, 99]) {
      const call = api.sendMessage(forum.id, "x", { message_thread_id: thread });
      expect(await refusalOf(call)).toBe("400 Bad Request: message thread not found");
    }
  });

  // Wording from field reports on public issue trackers.
  it("that are closed take messages of administrators only", async () => {
    const { api } = stage;
    forum.promoteBot(ana);
    const { message_thread_id } = await api.createForumTopic(forum.id, "Done");
    expect(await api.closeForumTopic(forum.id, message_thread_id)).toBe(true);
    await api.sendMessage(forum.id, "as an administrator", { message_thread_id });
    forum.demoteBot(ana);
    expect(await refusalOf(api.sendMessage(forum.id, "x", { message_thread_id }))).toBe(
      "400 Bad Request: TOPIC_CLOSED",
    );
    forum.promoteBot(ana);
    // Wording from memory.
    expect(await refusalOf(api.closeForumTopic(forum.id, message_thread_id))).toBe(
      "400 Bad Request: TOPIC_NOT_MODIFIED",
    );
    await api.reopenForumTopic(forum.id, message_thread_id);
  });

  // Wordings from memory.
  it("need a forum and the right to manage them", async () => {
    const { api, server } = stage;
    expect(await refusalOf(api.createForumTopic(forum.id, "x"))).toBe(
      "400 Bad Request: not enough rights to create a topic",
    );
    const plain = server.group({ title: "Plain", members: [ana] });
    plain.addBot(ana);
    plain.promoteBot(ana);
    expect(await refusalOf(api.createForumTopic(plain.id, "x"))).toBe(
      "400 Bad Request: the chat is not a forum",
    );
    forum.promoteBot(ana);
    expect(await refusalOf(api.createForumTopic(forum.id, "x".repeat(129)))).toBe(
      "400 Bad Request: topic name is too long",
    );
    expect(await refusalOf(api.closeForumTopic(forum.id, 99))).toBe(
      "400 Bad Request: message thread not found",
    );
  });
});
