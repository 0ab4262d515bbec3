import type { User } from "@grammyjs/types";
import { type ChatRecord, type HouseChat, newChatRecord } from "../world/chats.ts";
import type { Body } from "../world/messages.ts";
import { post, tellBot } from "../world/posting.ts";
import type { World } from "../world/world.ts";
import { changeStanding } from "./membership.ts";
import { createParticipant, type Participant } from "./participant.ts";
import type { Person } from "./person.ts";
import { checkCanWrite, RehearsalError, speak, spokenText } from "./speaker.ts";

export interface GroupOptions {
  title: string;
  /** Who is in it; the first one made it and is its administrator. One or more. */
  members: readonly Person[];
  /** A plain group when missing. A forum is a supergroup with topics. */
  type?: "group" | "supergroup" | "forum";
}

/** A group. The bot is not in it until it is added. */
export interface Group {
  readonly id: number;
  /** What the person can do in this group, in one topic of it when `topic` names one. */
  as(person: Person, where?: { topic?: number }): Participant;
  /** @param payload what follows in `/start@bot payload` when the bot is added by a link */
  addBot(by: Person, payload?: string): void;
  /** Makes the bot an administrator, who sees every message. */
  promoteBot(by: Person): void;
  demoteBot(by: Person): void;
  /** Throws the bot out. */
  kickBot(by: Person): void;
  addMember(person: Person, by: Person): void;
  /** The person leaves. */
  leave(person: Person): void;
  /** Opens a topic. @returns its id */
  openTopic(name: string, by: Person): number;
  /** Turns a plain group into a supergroup with a new id; this group is dead after that. */
  migrate(by: Person): Group;
}

/** Makes a group without the bot. */
export function createGroup(world: World, options: GroupOptions): Group {
  const { title, members, type = "group" } = options;
  const [owner] = members;
  if (owner === undefined) throw new RehearsalError(`The group "${title}" needs a member.`);
  const kind = type === "group" ? "group" : "supergroup";
  const id = world.chats.freshGroupId(kind);
  const chat: HouseChat =
    type === "forum"
      ? { id, type: "supergroup", title, is_forum: true }
      : { id, type: kind, title };
  const record = world.chats.add(newChatRecord(chat, "absent"));
  for (const { user } of members) record.members.set(user.id, user);
  record.administrators.add(owner.user.id);
  world.feed.emit({ kind: "chat", chatId: id });
  return groupOf(world, record);
}

function groupOf(world: World, record: ChatRecord): Group {
  const announce = (from: User, body: Body) => {
    const message = post(world, record, { from, body, isService: true });
    tellBot(world, record, message);
    return message.head.message_id;
  };
  const standing = (by: Person, to: ChatRecord["bot"]) =>
    changeStanding(world, record, { by: by.user, to });
  const { id, is_bot, first_name, username } = world.bot;
  const bot: User = { id, is_bot, first_name, username };
  return {
    id: record.chat.id,
    as: ({ user }, { topic } = {}) => {
      if (topic !== undefined && !record.topics.has(topic)) {
        throw new RehearsalError(`There is no topic ${topic} in "${record.chat.title}".`);
      }
      const where = topic === undefined ? {} : { threadId: topic };
      return createParticipant({ world, record, user, ...where });
    },
    addBot: (by, payload) => {
      standing(by, "member");
      announce(by.user, { new_chat_members: [bot] });
      if (payload === undefined) return;
      const text = `/start@${world.bot.username} ${payload}`;
      speak({ world, record, user: by.user }, spokenText(text));
    },
    promoteBot: (by) => standing(by, "administrator"),
    demoteBot: (by) => standing(by, "member"),
    kickBot: (by) => {
      announce(by.user, { left_chat_member: bot });
      standing(by, "kicked");
    },
    addMember: ({ user }, by) => {
      record.members.set(user.id, user);
      announce(by.user, { new_chat_members: [user] });
    },
    leave: ({ user }) => {
      announce(user, { left_chat_member: user });
      record.members.delete(user.id);
    },
    openTopic: (name, by) => openTopic(world, record, { name, by: by.user }),
    migrate: (by) => migrate(world, record, by.user),
  };
}

/** The usual colour of a topic's icon (Bot API reference, createForumTopic). */
const TOPIC_COLOR = 7_322_096;

function openTopic(world: World, record: ChatRecord, { name, by }: { name: string; by: User }) {
  if (record.chat.type !== "supergroup" || record.chat.is_forum !== true) {
    throw new RehearsalError(`"${record.chat.title}" is no forum, so it has no topics.`);
  }
  checkCanWrite({ world, record, user: by });
  const body = { forum_topic_created: { name, icon_color: TOPIC_COLOR } };
  const message = post(world, record, { from: by, body, isService: true });
  const { message_id: id } = message.head;
  record.topics.set(id, { id, name, iconColor: TOPIC_COLOR, isOpen: true });
  tellBot(world, record, message);
  return id;
}

/** Both chats get a service message that names the other; the bot is told of both. */
function migrate(world: World, record: ChatRecord, by: User): Group {
  if (record.chat.type !== "group") {
    throw new RehearsalError(`"${record.chat.title}" is a supergroup already.`);
  }
  const id = world.chats.freshGroupId("supergroup");
  const { title } = record.chat;
  const moved = world.chats.add(newChatRecord({ id, type: "supergroup", title }, record.bot));
  moved.members = record.members;
  moved.administrators = record.administrators;
  const body = { migrate_to_chat_id: id };
  tellBot(world, record, post(world, record, { from: by, body, isService: true }));
  record.migratedTo = id;
  const from = { migrate_from_chat_id: record.chat.id };
  tellBot(world, moved, post(world, moved, { from: by, body: from, isService: true }));
  world.feed.emit({ kind: "chat", chatId: id });
  return groupOf(world, moved);
}
