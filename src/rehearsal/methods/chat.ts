import type { ReactionType } from "@grammyjs/types";
import { badRequest } from "../refusal.ts";
import { isRecord } from "../wire/params.ts";
import { accessChat } from "../world/chat-access.ts";
import type { ChatRecord } from "../world/chats.ts";
import { type MessageRecord, toPost, toQuoted } from "../world/messages.ts";
import { post, tellBot } from "../world/posting.ts";
import { type Call, type Method, messageIdOf, structured } from "./call.ts";
import { botAsUser } from "./destination.ts";

/** What the bot may be seen to do (Bot API reference, sendChatAction). */
const ACTIONS: ReadonlySet<string> = new Set(
  (
    "typing upload_photo record_video upload_video record_voice upload_voice upload_document " +
    "choose_sticker find_location record_video_note upload_video_note"
  ).split(" "),
);

function sendChatAction({ world, params }: Call): unknown {
  const action = params.text("action").toLowerCase();
  if (!ACTIONS.has(action)) throw badRequest("wrong parameter action in request");
  const { chat } = accessChat(world.chats, params.text("chat_id"), "write");
  world.feed.emit({ kind: "action", chatId: chat.id, action });
  return true;
}

function answerCallbackQuery({ world, params }: Call): unknown {
  const text = params.text("text");
  if (text.length > world.limits.toastChars) throw badRequest("MESSAGE_TOO_LONG");
  const { chatId, userId } = world.presses.answer(params.text("callback_query_id"));
  const alert = params.flag("show_alert");
  world.feed.emit({ kind: "toast", chatId, userId, text, alert });
  return true;
}

/** Some of the emoji a bot may react with (Bot API reference, ReactionTypeEmoji). */
const REACTION_EMOJI = [
  "👍",
  "👎",
  "❤",
  "🔥",
  "👏",
  "🤔",
  "🎉",
  "🙏",
  "👌",
  "👀",
  "✍",
  "🤝",
] as const;

function reactionOf(value: unknown): ReactionType {
  const emoji = isRecord(value) && value["type"] === "emoji" ? value["emoji"] : undefined;
  const known = REACTION_EMOJI.find((candidate) => candidate === emoji);
  if (known === undefined) throw badRequest("REACTION_INVALID");
  return { type: "emoji", emoji: known };
}

function setMessageReaction(call: Call): unknown {
  const { world, params } = call;
  const given = structured(call, "reaction", "reaction types JSON object") ?? [];
  if (!Array.isArray(given)) throw badRequest("expected an Array of ReactionType");
  const reactions = given.map(reactionOf);
  const { chat } = accessChat(world.chats, params.text("chat_id"), "read");
  const message = world.messages.find(chat.id, messageIdOf(call));
  if (message === undefined) throw badRequest("message to react not found");
  if (reactions.length > 1) throw badRequest("REACTIONS_TOO_MANY");
  message.reactions = reactions;
  world.feed.emit({ kind: "reacted", chatId: chat.id, messageId: message.head.message_id });
  return true;
}

/** In a group only an administrator pins. */
function chatToPin({ world, params }: Call): ChatRecord {
  const record = accessChat(world.chats, params.text("chat_id"), "write");
  if (record.chat.type !== "private" && record.bot !== "administrator") {
    throw badRequest("not enough rights to manage pinned messages in the chat");
  }
  return record;
}

function setPinned({ world }: Call, message: MessageRecord, isPinned: boolean): void {
  message.isPinned = isPinned;
  const { chat, message_id: messageId } = message.head;
  world.feed.emit({ kind: "pinned", chatId: chat.id, messageId });
}

/** Pinning leaves a service message, and the bot gets an update about it like everybody. */
function pinChatMessage(call: Call): unknown {
  const { world } = call;
  const record = chatToPin(call);
  const message = world.messages.find(record.chat.id, messageIdOf(call));
  if (message === undefined) throw badRequest("message to pin not found");
  setPinned(call, message, true);
  const body = { pinned_message: toQuoted(message) };
  tellBot(world, record, post(world, record, { from: botAsUser(call), body, isService: true }));
  return true;
}

function unpinChatMessage(call: Call): unknown {
  const record = chatToPin(call);
  const pinned = call.world.messages.visible(record.chat.id).filter((message) => message.isPinned);
  const wanted = messageIdOf(call);
  const message = pinned.findLast(({ head }) => wanted === 0 || head.message_id === wanted);
  if (message === undefined) throw badRequest("message to unpin not found");
  setPinned(call, message, false);
  return true;
}

function getChat({ world, params }: Call): unknown {
  const { chat } = accessChat(world.chats, params.text("chat_id"), "read");
  const pinned = world.messages.visible(chat.id).findLast((message) => message.isPinned);
  return {
    ...chat,
    accent_color_id: 0,
    max_reaction_count: 11,
    accepted_gift_types: {
      unlimited_gifts: false,
      limited_gifts: false,
      unique_gifts: false,
      premium_subscription: false,
      gifts_from_channels: false,
    },
    ...(pinned === undefined ? {} : { pinned_message: toPost(pinned) }),
  };
}

function getChatMember(call: Call): unknown {
  const { world, params } = call;
  const record = accessChat(world.chats, params.text("chat_id"), "read");
  const userId = params.integer("user_id") ?? 0;
  if (userId <= 0) throw badRequest("invalid user_id specified");
  if (userId === world.bot.id) return { status: standing(record), user: botAsUser(call) };
  const member = record.members.get(userId);
  if (member !== undefined) {
    return { status: record.administrators.has(userId) ? "administrator" : "member", user: member };
  }
  const user = world.chats.user(userId);
  if (user === undefined) throw badRequest("user not found");
  return { status: "left", user };
}

function standing({ bot }: ChatRecord): string {
  return bot === "absent" ? "left" : bot;
}

function getFile({ world, params }: Call): unknown {
  const fileId = params.text("file_id");
  if (fileId === "") throw badRequest("file_id not specified");
  const file = world.files.get(fileId);
  if (file === undefined) {
    throw badRequest(
      world.files.hasMade(fileId)
        ? "wrong file_id or the file is temporarily unavailable"
        : "invalid file_id",
    );
  }
  if (file.size > world.limits.downloadBytes) throw badRequest("file is too big");
  return {
    file_id: file.fileId,
    file_unique_id: file.uniqueId,
    file_size: file.size,
    file_path: world.files.link(file, world.limits.fileLinkSeconds),
  };
}

/** The methods about a chat, its members, its pinned messages and files. */
export const CHAT_METHODS: Readonly<Record<string, Method>> = {
  sendChatAction,
  answerCallbackQuery,
  setMessageReaction,
  pinChatMessage,
  unpinChatMessage,
  getChat,
  getChatMember,
  getFile,
};
