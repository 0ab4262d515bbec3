import type { User } from "@grammyjs/types";
import { findEntities } from "../text/find-entities.ts";
import type { ChatRecord } from "../world/chats.ts";
import { type Body, type MessageRecord, type Post, toPost } from "../world/messages.ts";
import { type Draft, post, tellBot } from "../world/posting.ts";
import type { World } from "../world/world.ts";

/** A person in one chat, in one topic of it when it is a forum. */
export interface Speaker {
  world: World;
  record: ChatRecord;
  user: User;
  threadId?: number;
}

/** Something a test asks of a person that the app would not let the person do. */
export class RehearsalError extends Error {
  override readonly name = "RehearsalError";
}

/** @throws RehearsalError when the person cannot write in this chat now */
export function checkCanWrite({ record, user }: Speaker): void {
  const { first_name: name } = user;
  if (record.migratedTo !== undefined) {
    throw new RehearsalError(
      `The group has moved to chat ${record.migratedTo}; ${name} writes there.`,
    );
  }
  if (record.isDeactivated) throw new RehearsalError(`${name} has deleted the account.`);
  if (record.chat.type !== "private") {
    if (record.members.has(user.id)) return;
    throw new RehearsalError(`${name} is not a member of "${record.chat.title}".`);
  }
  if (record.bot === "kicked") {
    throw new RehearsalError(`${name} has blocked the bot; call unblock() or start() first.`);
  }
}

/** What goes with anything a person sends. */
export interface SpeakOptions {
  /** The message replied to. */
  replyTo?: number;
}

/**
 * A person sends something: it appears in the chat, and the bot hears of it if it may. Writing to
 * the bot for the first time lets the bot write back, like pressing Start.
 */
export function speak(
  speaker: Speaker,
  body: Body,
  extra: SpeakOptions & Partial<Pick<Draft, "albumId" | "forwardOrigin">> = {},
): Post {
  checkCanWrite(speaker);
  const { world, record, user, threadId } = speaker;
  const { replyTo, ...draft } = extra;
  if (record.chat.type === "private" && record.bot === "absent") record.bot = "member";
  const message = post(world, record, {
    from: user,
    body,
    ...(threadId === undefined ? {} : { threadId }),
    ...draft,
    ...(replyTo === undefined ? {} : { replyTo: messageAt(speaker, replyTo) }),
  });
  tellBot(world, record, message);
  return toPost(message);
}

/** @throws RehearsalError when that message is not in the chat now */
export function messageAt({ world, record }: Speaker, messageId: number): MessageRecord {
  const message = world.messages.find(record.chat.id, messageId);
  if (message !== undefined) return message;
  const ids = world.messages.visible(record.chat.id).map(({ head }) => head.message_id);
  throw new RehearsalError(
    `There is no message ${messageId} in chat ${record.chat.id}; there are ${ids.join(", ")}.`,
  );
}

/** A text with the marks the app finds in it. */
export function spokenText(text: string): Body {
  const entities = findEntities(text);
  return entities.length === 0 ? { text } : { text, entities };
}

/** A caption with the marks the app finds in it; nothing for "". */
export function spokenCaption(caption: string): Body {
  if (caption === "") return {};
  const entities = findEntities(caption);
  return entities.length === 0 ? { caption } : { caption, caption_entities: entities };
}
