import type { CallbackQuery, Chat, ChatMemberUpdated, Message, Update, User } from "grammy/types";
import type { Incoming, IncomingContent, Sender } from "../domain/incoming.ts";
import { decodeContent } from "./decode-content.ts";
import type { PressCodec } from "./press-codec.ts";

/** The kinds of updates that are asked for; the platform remembers the list it was sent last. */
export const UPDATE_KINDS = [
  "message",
  "edited_message",
  "callback_query",
  "my_chat_member",
] as const;

export interface DecodeParts {
  readonly bot: { readonly id: number; readonly username: string };
  readonly codec: PressCodec;
  /** Milliseconds since 1970 UTC; presses carry no time of their own. */
  readonly now: () => number;
}

/** What an update says; null where there is nothing to react to. */
export function decodeUpdate(update: Update, parts: DecodeParts): Incoming | null {
  // Numbers of updates begin anew with another bot, so its own number belongs to the name.
  const name = `${parts.bot.id}.${update.update_id}`;
  if (update.message) return fromMessage(update.message, name, parts);
  if (update.edited_message) return fromEdited(update.edited_message, name);
  if (update.callback_query) return fromPress(update.callback_query, name, parts);
  if (update.my_chat_member) return fromMembership(update.my_chat_member, name);
  return null;
}

const isDirect = (chat: Chat) => chat.type === "private";

function sender(user: User): Sender {
  const name = [user.first_name, user.last_name].filter(Boolean).join(" ");
  const language = user.language_code?.slice(0, 2).toLowerCase();
  return { id: String(user.id), name, ...(language === undefined ? {} : { language }) };
}

interface Envelope {
  readonly update: string;
  readonly sentAt: number;
  readonly from: User | undefined;
  readonly chat: Chat;
  readonly topic: number | undefined;
}

function enclose(envelope: Envelope, what: IncomingContent): Incoming | null {
  const { update, sentAt, from, chat, topic } = envelope;
  // Channels and anonymous administrators speak for nobody in particular.
  if (from === undefined || from.is_bot) return null;
  return {
    update,
    sentAt,
    chat: String(chat.id),
    ...(topic === undefined ? {} : { topic }),
    direct: isDirect(chat),
    from: sender(from),
    what,
  };
}

const topicOf = (message: Message) =>
  message.is_topic_message === true ? message.message_thread_id : undefined;

function fromMessage(message: Message, update: string, { bot }: DecodeParts): Incoming | null {
  if (message.is_automatic_forward === true) return null;
  const what = decodeContent(message, bot.username);
  const { from, chat } = message;
  const envelope = { update, sentAt: message.date * 1000, from, chat, topic: topicOf(message) };
  return what && enclose(envelope, what);
}

/** Changed words only: a live location changes all the time. */
function fromEdited(message: Message, update: string): Incoming | null {
  const text = message.text ?? message.caption;
  if (text === undefined) return null;
  const { from, chat, date, edit_date } = message;
  const sentAt = (edit_date ?? date) * 1000;
  return enclose({ update, sentAt, from, chat, topic: topicOf(message) }, { kind: "edited", text });
}

function fromPress(query: CallbackQuery, update: string, parts: DecodeParts): Incoming | null {
  const { message, from, data } = query;
  const press = data === undefined ? null : parts.codec.decode(data);
  const chat: Chat = message?.chat ?? { id: from.id, type: "private", first_name: "" };
  // A message that is too old comes without anything but its place.
  const topic =
    message !== undefined && "is_topic_message" in message ? message.message_thread_id : undefined;
  return enclose(
    { update, sentAt: parts.now(), from, chat, topic },
    {
      kind: "press",
      press,
      ...(message === undefined ? {} : { message: String(message.message_id) }),
    },
  );
}

function fromMembership(change: ChatMemberUpdated, update: string): Incoming | null {
  const { chat, from, date, new_chat_member: member } = change;
  const gone = member.status === "kicked" || member.status === "left";
  return enclose(
    { update, sentAt: date * 1000, from, chat, topic: undefined },
    { kind: "reachable", reachable: !gone },
  );
}
