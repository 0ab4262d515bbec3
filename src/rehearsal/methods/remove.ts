import { badRequest } from "../refusal.ts";
import { unixSeconds } from "../time.ts";
import { accessChat } from "../world/chat-access.ts";
import type { ChatRecord } from "../world/chats.ts";
import type { MessageRecord } from "../world/messages.ts";
import { type Call, type Method, messageIdOf, structured } from "./call.ts";

/** Most messages that one deleteMessages call takes (Bot API reference: 1-100). */
const MOST_AT_ONCE = 100;

/**
 * The bot may delete messages younger than 48 hours: its own everywhere, the other person's in a
 * private chat, everybody's in a group where it is an administrator.
 */
function mayDelete({ world }: Call, record: ChatRecord, message: MessageRecord): boolean {
  const age = unixSeconds(world.time.clock) - message.head.date;
  if (age >= world.limits.deleteSeconds) return false;
  const isPrivate = record.chat.type === "private";
  return message.isByBot || isPrivate || record.bot === "administrator";
}

function remove({ world }: Call, message: MessageRecord): void {
  message.isDeleted = true;
  const { chat, message_id: messageId } = message.head;
  world.feed.emit({ kind: "deleted", chatId: chat.id, messageId });
}

function deleteMessage(call: Call): unknown {
  const { world, params } = call;
  const chatId = params.text("chat_id");
  if (chatId === "") throw badRequest("chat identifier is not specified");
  const messageId = messageIdOf(call);
  if (messageId === 0) throw badRequest("message identifier is not specified");
  const record = accessChat(world.chats, chatId, "write");
  const message = world.messages.find(record.chat.id, messageId);
  if (message === undefined) throw badRequest("message to delete not found");
  if (!mayDelete(call, record, message)) throw badRequest("message can't be deleted");
  remove(call, message);
  return true;
}

/** Messages that are not there are passed over; one that may not be deleted spoils the call. */
function deleteMessages(call: Call): unknown {
  const { world, params } = call;
  const ids = structured(call, "message_ids", "message_ids JSON object");
  if (ids === undefined) throw badRequest("message identifiers are not specified");
  if (!Array.isArray(ids)) throw badRequest("expected an Array of message identifiers");
  if (ids.length > MOST_AT_ONCE) throw badRequest("too many message identifiers specified");
  const record = accessChat(world.chats, params.text("chat_id"), "write");
  const found = ids
    .map((id: unknown) => world.messages.find(record.chat.id, Number(id)))
    .filter((message) => message !== undefined);
  if (!found.every((message) => mayDelete(call, record, message))) {
    throw badRequest("message can't be deleted");
  }
  for (const message of found) remove(call, message);
  return true;
}

/** The methods that take messages away. */
export const REMOVE_METHODS: Readonly<Record<string, Method>> = { deleteMessage, deleteMessages };
