import { badRequest } from "../refusal.ts";
import { accessChat } from "../world/chat-access.ts";
import type { ChatRecord, Topic } from "../world/chats.ts";
import type { Body } from "../world/messages.ts";
import { post, tellBot } from "../world/posting.ts";
import { type Call, type Method, messageIdOf, requiredText } from "./call.ts";
import { botAsUser } from "./destination.ts";

/** The colours of topic icons (Bot API reference, createForumTopic); the first is the usual one. */
const ICON_COLORS = [7_322_096, 16_766_590, 13_338_331, 9_367_192, 16_749_490, 16_478_047];

/** Longest name of a topic (Bot API reference: 1-128 characters). */
const LONGEST_NAME = 128;

function forumOf({ world, params }: Call): ChatRecord {
  const record = accessChat(world.chats, params.text("chat_id"), "write");
  const isForum = record.chat.type === "supergroup" && record.chat.is_forum === true;
  if (!isForum) throw badRequest("the chat is not a forum");
  return record;
}

function checkRight(record: ChatRecord, what: string): void {
  if (record.bot !== "administrator") throw badRequest(`not enough rights to ${what}`);
}

function announce(call: Call, record: ChatRecord, body: Body, threadId?: number): number {
  const { world } = call;
  const thread = threadId === undefined ? {} : { threadId };
  const message = post(world, record, { from: botAsUser(call), body, isService: true, ...thread });
  tellBot(world, record, message);
  world.feed.emit({ kind: "chat", chatId: record.chat.id });
  return message.head.message_id;
}

function createForumTopic(call: Call): unknown {
  const record = forumOf(call);
  checkRight(record, "create a topic");
  const name = requiredText(call, "name");
  if (name.length > LONGEST_NAME) throw badRequest("topic name is too long");
  const asked = call.params.integer("icon_color");
  const iconColor = ICON_COLORS.find((color) => color === asked) ?? ICON_COLORS[0] ?? 0;
  const body = { forum_topic_created: { name, icon_color: iconColor } };
  const id = announce(call, record, body);
  record.topics.set(id, { id, name, iconColor, isOpen: true });
  return { message_thread_id: id, name, icon_color: iconColor };
}

function topicOf(call: Call, record: ChatRecord): Topic {
  const topic = record.topics.get(messageIdOf(call, "message_thread_id"));
  if (topic === undefined) throw badRequest("message thread not found");
  return topic;
}

function setOpen(isOpen: boolean): Method {
  return (call) => {
    const record = forumOf(call);
    checkRight(record, isOpen ? "reopen the topic" : "close the topic");
    const topic = topicOf(call, record);
    if (topic.isOpen === isOpen) throw badRequest("TOPIC_NOT_MODIFIED");
    topic.isOpen = isOpen;
    const body: Body = isOpen ? { forum_topic_reopened: {} } : { forum_topic_closed: {} };
    announce(call, record, body, topic.id);
    return true;
  };
}

/** A deleted topic takes its messages with it. */
function deleteForumTopic(call: Call): unknown {
  const { world } = call;
  const record = forumOf(call);
  checkRight(record, "delete the topic");
  const topic = topicOf(call, record);
  record.topics.delete(topic.id);
  for (const message of world.messages.visible(record.chat.id)) {
    const { message_id: id, message_thread_id: threadId } = message.head;
    if (id === topic.id || threadId === topic.id) message.isDeleted = true;
  }
  world.feed.emit({ kind: "chat", chatId: record.chat.id });
  return true;
}

/** The methods about the topics of a forum. */
export const TOPIC_METHODS: Readonly<Record<string, Method>> = {
  createForumTopic,
  closeForumTopic: setOpen(false),
  reopenForumTopic: setOpen(true),
  deleteForumTopic,
};
