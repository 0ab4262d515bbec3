import type { User } from "@grammyjs/types";
import { type ReplyMarkup, readReplyMarkup } from "../markup/reply-markup.ts";
import { badRequest } from "../refusal.ts";
import { isRecord } from "../wire/params.ts";
import { accessChat } from "../world/chat-access.ts";
import type { ChatRecord } from "../world/chats.ts";
import { type Body, type MessageRecord, toPost } from "../world/messages.ts";
import { type Draft, post } from "../world/posting.ts";
import { type Call, messageIdOf, structured } from "./call.ts";

/** Where a message shall go and what it carries besides its content. */
export interface Destination {
  record: ChatRecord;
  markup: ReplyMarkup;
  draft: Omit<Draft, "body">;
}

/**
 * Reads and checks everything that sending methods share, in the order of the real server:
 * reply parameters, markup, chat, message to reply to, topic.
 * @throws ApiRefusal 400 or 403
 */
export function destinationOf(call: Call): Destination {
  const { world, params } = call;
  const reply = replyParameters(call);
  const chatId = params.text("chat_id");
  const markup = readReplyMarkup(
    structured(call, "reply_markup", "reply keyboard markup JSON object"),
    { isPrivate: Number(chatId) > 0, limits: world.limits },
  );
  const record = accessChat(world.chats, chatId, "write");
  const replyTo = repliedMessage(call, record, reply);
  const threadId = threadOf(call, record, replyTo);
  const isFixed = markup.kind !== "none" && markup.kind !== "inline";
  const draft = {
    from: botAsUser(call),
    isFixed,
    isProtected: params.flag("protect_content"),
    ...(markup.kind === "inline" ? { inline: markup.inline } : {}),
    ...(replyTo === undefined ? {} : { replyTo }),
    ...(threadId === undefined ? {} : { threadId }),
  };
  return { record, markup, draft };
}

/** The bot as it appears in messages: without what only getMe tells. */
export function botAsUser({ world }: Call): User {
  const { id, is_bot, first_name, username } = world.bot;
  return { id, is_bot, first_name, username };
}

interface Reply {
  messageId: number;
  mayBeMissing: boolean;
}

function replyParameters(call: Call): Reply {
  const given = structured(call, "reply_parameters", "reply parameters JSON object");
  if (given === undefined) {
    return {
      messageId: messageIdOf(call, "reply_to_message_id"),
      mayBeMissing: call.params.flag("allow_sending_without_reply"),
    };
  }
  if (!isRecord(given)) throw badRequest("object expected as reply parameters");
  const messageId = given["message_id"];
  if (typeof messageId !== "number") throw badRequest(`Can't find field "message_id"`);
  return { messageId, mayBeMissing: given["allow_sending_without_reply"] === true };
}

function repliedMessage(
  { world }: Call,
  record: ChatRecord,
  { messageId, mayBeMissing }: Reply,
): MessageRecord | undefined {
  if (messageId <= 0) return undefined;
  const found = world.messages.find(record.chat.id, messageId);
  if (found === undefined && !mayBeMissing) throw badRequest("message to be replied not found");
  return found;
}

/** In a forum a reply without a topic goes to the topic of the message it replies to. */
function threadOf(
  call: Call,
  record: ChatRecord,
  replyTo: MessageRecord | undefined,
): number | undefined {
  const asked = messageIdOf(call, "message_thread_id");
  const threadId = asked > 0 ? asked : replyTo?.head.message_thread_id;
  if (threadId === undefined) return undefined;
  const topic = record.topics.get(threadId);
  if (topic === undefined) throw badRequest("message thread not found");
  if (!topic.isOpen && record.bot !== "administrator") throw badRequest("TOPIC_CLOSED");
  return threadId;
}

/**
 * Puts a message of the bot into the chat.
 * @throws ApiRefusal 429 when the rate limiter is on and the bot is too fast
 */
export function send(call: Call, to: Destination, body: Body): MessageRecord {
  const { world } = call;
  world.rate.count(to.record.chat.id);
  const message = post(world, to.record, { ...to.draft, body });
  if (to.markup.kind === "keyboard") to.record.keyboard = to.markup.keyboard;
  if (to.markup.kind === "remove") delete to.record.keyboard;
  if (to.draft.isFixed) world.feed.emit({ kind: "chat", chatId: to.record.chat.id });
  return message;
}

/** The same, for methods that answer with the message. */
export function sendAndShow(call: Call, to: Destination, body: Body): unknown {
  return toPost(send(call, to, body));
}
