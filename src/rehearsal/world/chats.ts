import type { Chat, User } from "@grammyjs/types";
import type { ReplyKeyboard } from "../markup/reply-markup.ts";

/** The kinds of chat there are here; channels are left out. */
export type HouseChat = Chat.PrivateChat | Chat.GroupChat | Chat.SupergroupChat;

/**
 * How the bot stands in a chat. In a private chat "absent" means that the person never pressed
 * Start and "kicked" that the bot is blocked.
 */
export type BotStanding = "absent" | "member" | "administrator" | "left" | "kicked";

/** A topic of a forum. Its id is the id of the message that opened it. */
export interface Topic {
  id: number;
  name: string;
  iconColor: number;
  isOpen: boolean;
}

/** A chat and what the server knows about it. */
export interface ChatRecord {
  chat: HouseChat;
  bot: BotStanding;
  /** The people in it by user id. */
  members: Map<number, User>;
  administrators: Set<number>;
  topics: Map<number, Topic>;
  /** The id of the supergroup this group became. */
  migratedTo?: number;
  /** The reply keyboard shown below the input field. */
  keyboard?: ReplyKeyboard;
  /** True for a private chat whose person deleted their account. */
  isDeactivated: boolean;
}

/** Makes a record with nobody in it. */
export function newChatRecord(chat: HouseChat, bot: BotStanding): ChatRecord {
  return {
    chat,
    bot,
    members: new Map(),
    administrators: new Set(),
    topics: new Map(),
    isDeactivated: false,
  };
}

/** All chats by id. */
export class ChatBook {
  readonly #records = new Map<number, ChatRecord>();
  #groups = 0;

  add(record: ChatRecord): ChatRecord {
    this.#records.set(record.chat.id, record);
    return record;
  }

  get(id: number): ChatRecord | undefined {
    return this.#records.get(id);
  }

  /** @throws RangeError for an id no chat has: a mistake of the caller */
  require(id: number): ChatRecord {
    const record = this.#records.get(id);
    if (record === undefined) throw new RangeError(`There is no chat ${id}.`);
    return record;
  }

  all(): ChatRecord[] {
    return [...this.#records.values()];
  }

  /** The user of that id, wherever they were met. */
  user(id: number): User | undefined {
    for (const record of this.#records.values()) {
      const user = record.members.get(id);
      if (user !== undefined) return user;
    }
    return undefined;
  }

  /** A fresh id: groups count down from -1, supergroups from -1000000000001. */
  freshGroupId(type: "group" | "supergroup"): number {
    this.#groups += 1;
    return type === "group" ? -this.#groups : -1_000_000_000_000 - this.#groups;
  }
}
