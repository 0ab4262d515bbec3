import type { InlineKeyboardMarkup, Message, ReactionType, User } from "@grammyjs/types";
import type { HouseChat } from "./chats.ts";

/** A message quoted inside another, which itself quotes none. */
export type Quoted = Omit<Message, "reply_to_message" | "pinned_message" | "chat" | "from"> & {
  chat: HouseChat;
  from: User;
};

/** A message as it goes over the wire. */
export type Post = Quoted & { reply_to_message?: Quoted; pinned_message?: Quoted };

type HeadKey =
  | "message_id"
  | "date"
  | "message_thread_id"
  | "is_topic_message"
  | "forward_origin"
  | "media_group_id"
  | "has_protected_content";

/** What an edit leaves as it is: who, where, when, in reply to what. */
export type Head = Pick<Post, HeadKey | "chat" | "from" | "reply_to_message">;

/** What an edit replaces: text, caption, file. Also what a service message says. */
export type Body = Omit<Partial<Post>, keyof Head | "reply_markup" | "edit_date">;

/** A message and what the server knows about it. Its parts are replaced, never changed inside. */
export interface MessageRecord {
  readonly head: Head;
  body: Body;
  inline: InlineKeyboardMarkup | undefined;
  /** Unix seconds. */
  editedAt: number | undefined;
  readonly isByBot: boolean;
  /** It says what happened in the chat, not what somebody wrote. */
  readonly isService: boolean;
  /** It came with a reply keyboard, its removal or a forced reply, and cannot be edited. */
  readonly isFixed: boolean;
  isDeleted: boolean;
  isPinned: boolean;
  /** The bot's own reaction. */
  reactions: ReactionType[];
}

/** The message as it goes over the wire. */
export function toPost({ head, body, inline, editedAt }: MessageRecord): Post {
  return {
    ...head,
    ...body,
    ...(editedAt === undefined ? {} : { edit_date: editedAt }),
    ...(inline === undefined ? {} : { reply_markup: inline }),
  };
}

/** The message as it is quoted inside another. */
export function toQuoted(record: MessageRecord): Quoted {
  const { reply_to_message: _reply, pinned_message: _pinned, ...quoted } = toPost(record);
  return quoted;
}

/** Album ids look like those of the platform: long numbers as text. Ours. */
const FIRST_ALBUM_ID = 13_900_000_000_000_000n;

/** All messages of all chats, deleted ones too. */
export class MessageBook {
  readonly #chats = new Map<number, Map<number, MessageRecord>>();
  readonly #counts = new Map<number, number>();
  #albums = 0;

  /**
   * The id the next message in that chat gets, 1 or more. As on the platform, a bot's private
   * chats and plain groups share one count, and each supergroup has its own, in which the message
   * about its making is the first.
   */
  nextId(chat: HouseChat): number {
    const isApart = chat.type === "supergroup";
    const key = isApart ? chat.id : 0;
    const id = (this.#counts.get(key) ?? (isApart ? 1 : 0)) + 1;
    this.#counts.set(key, id);
    return id;
  }

  /** The `media_group_id` of the next album. */
  nextAlbumId(): string {
    this.#albums += 1;
    return String(FIRST_ALBUM_ID + BigInt(this.#albums));
  }

  add(record: MessageRecord): MessageRecord {
    const { chat, message_id: id } = record.head;
    const messages = this.#chats.get(chat.id) ?? new Map<number, MessageRecord>();
    this.#chats.set(chat.id, messages.set(id, record));
    return record;
  }

  /** The message of that id, even when it was deleted. */
  ever(chatId: number, messageId: number): MessageRecord | undefined {
    return this.#chats.get(chatId)?.get(messageId);
  }

  /** The message of that id unless it was deleted. */
  find(chatId: number, messageId: number): MessageRecord | undefined {
    const record = this.ever(chatId, messageId);
    return record?.isDeleted === false ? record : undefined;
  }

  /** What stands in the chat now, oldest first. */
  visible(chatId: number): MessageRecord[] {
    return [...(this.#chats.get(chatId)?.values() ?? [])].filter((record) => !record.isDeleted);
  }
}
