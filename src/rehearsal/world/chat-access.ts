import { badRequest, forbidden, migrated } from "../refusal.ts";
import type { ChatBook, ChatRecord } from "./chats.ts";

/** What a call wants to do in a chat. Each level includes the one before. */
export type Access = "read" | "edit" | "write";

/**
 * Finds the chat a call names and checks that the bot may do there what it wants, in the order of
 * the real server: existence, migration, kicked, not a member, blocked.
 * @param chatIdText the `chat_id` argument as text
 * @throws ApiRefusal 400 `chat not found`, 400 with `migrate_to_chat_id`, or 403
 */
export function accessChat(chats: ChatBook, chatIdText: string, access: Access): ChatRecord {
  if (chatIdText === "") throw badRequest("chat_id is empty");
  const record = chats.get(Number(chatIdText));
  if (record === undefined) throw badRequest("chat not found");
  if (record.chat.type === "private") checkPrivate(chats, record, access);
  else checkGroup(record, access);
  return record;
}

function checkPrivate(chats: ChatBook, record: ChatRecord, access: Access): void {
  if (record.isDeactivated && access !== "read") throw forbidden("user is deactivated");
  if (record.bot === "absent") {
    throw isKnownFromGroup(chats, record.chat.id)
      ? forbidden("bot can't initiate conversation with a user")
      : badRequest("chat not found");
  }
  if (record.bot === "kicked" && access === "write") throw forbidden("bot was blocked by the user");
}

/** The bot has met this person in a group it is in. */
function isKnownFromGroup(chats: ChatBook, userId: number): boolean {
  return chats
    .all()
    .some(({ chat, bot, members }) => chat.type !== "private" && isIn(bot) && members.has(userId));
}

function isIn(bot: ChatRecord["bot"]): boolean {
  return bot === "member" || bot === "administrator";
}

function checkGroup(record: ChatRecord, access: Access): void {
  if (record.migratedTo !== undefined && access === "write") throw migrated(record.migratedTo);
  if (isIn(record.bot)) return;
  const { type } = record.chat;
  if (record.bot === "absent") throw badRequest("chat not found");
  if (type === "group" && access === "read") return;
  throw record.bot === "kicked"
    ? forbidden(`bot was kicked from the ${type} chat`)
    : forbidden(`bot is not a member of the ${type} chat`);
}
