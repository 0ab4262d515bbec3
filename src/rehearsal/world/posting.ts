import type { InlineKeyboardMarkup, User } from "@grammyjs/types";
import { unixSeconds } from "../time.ts";
import type { ChatRecord } from "./chats.ts";
import { type Body, type Head, type MessageRecord, toPost, toQuoted } from "./messages.ts";
import type { World } from "./world.ts";

/** A message about to appear. */
export interface Draft {
  from: User;
  body: Body;
  inline?: InlineKeyboardMarkup;
  replyTo?: MessageRecord;
  threadId?: number;
  forwardOrigin?: NonNullable<Head["forward_origin"]>;
  albumId?: string;
  isProtected?: boolean;
  isService?: boolean;
  isFixed?: boolean;
}

/** Puts a message into a chat. Whether the bot hears of it is another matter: see `tellBot`. */
export function post(world: World, record: ChatRecord, draft: Draft): MessageRecord {
  const head: Head = {
    message_id: world.messages.nextId(record.chat),
    from: draft.from,
    chat: record.chat,
    date: unixSeconds(world.time.clock),
    ...headOf(draft),
  };
  const message = world.messages.add({
    head,
    body: draft.body,
    inline: draft.inline,
    editedAt: undefined,
    isByBot: draft.from.id === world.bot.id,
    isService: draft.isService ?? false,
    isFixed: draft.isFixed ?? false,
    isDeleted: false,
    isPinned: false,
    reactions: [],
  });
  world.feed.emit({ kind: "posted", chatId: record.chat.id, messageId: head.message_id });
  return message;
}

function headOf({ replyTo, threadId, forwardOrigin, albumId, isProtected }: Draft): Partial<Head> {
  return {
    ...(threadId === undefined ? {} : { message_thread_id: threadId, is_topic_message: true }),
    ...(replyTo === undefined ? {} : { reply_to_message: toQuoted(replyTo) }),
    ...(forwardOrigin === undefined ? {} : { forward_origin: forwardOrigin }),
    ...(albumId === undefined ? {} : { media_group_id: albumId }),
    ...(isProtected ? { has_protected_content: true } : {}),
  };
}

/** Queues the update about a new message, if the bot may see it. */
export function tellBot(world: World, record: ChatRecord, message: MessageRecord): void {
  if (!botSees(world, record, message)) return;
  world.queue.push({ message: toPost(message) }, laneOf(record));
}

/** Queues the update about an edited message, if the bot may see it. */
export function tellBotOfEdit(world: World, record: ChatRecord, message: MessageRecord): void {
  if (!botSees(world, record, message)) return;
  const edited = { ...toPost(message), edit_date: message.editedAt ?? message.head.date };
  world.queue.push({ edited_message: edited }, laneOf(record));
}

function laneOf(record: ChatRecord): string {
  return `chat ${record.chat.id}`;
}

/**
 * Privacy mode (platform documentation, "Privacy mode"): in groups a bot that is no administrator
 * sees service messages, replies to itself, commands that name it, and other commands only when it
 * wrote the last message.
 */
function botSees(world: World, record: ChatRecord, message: MessageRecord): boolean {
  if (record.bot !== "member" && record.bot !== "administrator") return false;
  const isPrivate = record.chat.type === "private";
  if (isPrivate || record.bot === "administrator" || message.isService) return true;
  if (world.bot.can_read_all_group_messages) return true;
  if (message.head.reply_to_message?.from?.id === world.bot.id) return true;
  return isCommandForBot(world, message);
}

function isCommandForBot(world: World, { body, head }: MessageRecord): boolean {
  const command = body.entities?.find(({ type, offset }) => type === "bot_command" && offset === 0);
  if (command === undefined) return false;
  const [, addressee] = (body.text ?? "").slice(0, command.length).split("@");
  return addressee === undefined
    ? wroteBefore(world, head)
    : addressee.toLowerCase() === world.bot.username.toLowerCase();
}

/** The last message before this one that somebody wrote is the bot's. */
function wroteBefore(world: World, { chat, message_id: id }: Head): boolean {
  const earlier = world.messages
    .visible(chat.id)
    .filter((message) => !message.isService && message.head.message_id < id);
  return earlier.at(-1)?.isByBot ?? false;
}
