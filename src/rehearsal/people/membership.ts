import type { ChatMember, User } from "@grammyjs/types";
import { unixSeconds } from "../time.ts";
import type { BotStanding, ChatRecord } from "../world/chats.ts";
import type { World } from "../world/world.ts";

/** What an administrator may do here: everything. */
const ALL_RIGHTS = {
  can_be_edited: false,
  is_anonymous: false,
  can_manage_chat: true,
  can_delete_messages: true,
  can_manage_video_chats: true,
  can_restrict_members: true,
  can_promote_members: true,
  can_change_info: true,
  can_invite_users: true,
  can_post_stories: false,
  can_edit_stories: false,
  can_delete_stories: false,
  can_send_welcome_messages: false,
  can_pin_messages: true,
  can_manage_topics: true,
} as const;

function memberOf(user: User, standing: BotStanding): ChatMember {
  switch (standing) {
    case "administrator":
      return { status: standing, user, ...ALL_RIGHTS };
    case "member":
      return { status: standing, user };
    case "kicked":
      return { status: standing, user, until_date: 0 };
    default:
      return { status: "left", user };
  }
}

/**
 * Changes how the bot stands in a chat and tells it by a `my_chat_member` update. In a private
 * chat that update comes only when the person blocks or unblocks the bot.
 * @param by who did it
 */
export function changeStanding(
  world: World,
  record: ChatRecord,
  { by, to }: { by: User; to: BotStanding },
): void {
  const { id, is_bot, first_name, username } = world.bot;
  const bot: User = { id, is_bot, first_name, username };
  const change = {
    chat: record.chat,
    from: by,
    date: unixSeconds(world.time.clock),
    old_chat_member: memberOf(bot, record.bot),
    new_chat_member: memberOf(bot, to),
  };
  record.bot = to;
  world.queue.push({ my_chat_member: change }, `membership ${record.chat.id}`);
  world.feed.emit({ kind: "chat", chatId: record.chat.id });
}
