import type { InlineKeyboardMarkup } from "@grammyjs/types";
import { readReplyMarkup } from "../markup/reply-markup.ts";
import { badRequest } from "../refusal.ts";
import { unixSeconds } from "../time.ts";
import { accessChat } from "../world/chat-access.ts";
import { type Body, type MessageRecord, toPost } from "../world/messages.ts";
import { type Call, type Method, messageIdOf, structured } from "./call.ts";
import { inputMedia } from "./media-arguments.ts";
import { captionBody, textBody } from "./text-arguments.ts";

const NOT_MODIFIED =
  "message is not modified: specified new message content and reply markup are exactly the same " +
  "as a current content and reply markup of the message";

/** A message to edit carries an inline keyboard or none; without one the old one goes. */
function newKeyboard(call: Call): InlineKeyboardMarkup | undefined {
  const markup = readReplyMarkup(
    structured(call, "reply_markup", "reply keyboard markup JSON object"),
    { isPrivate: Number(call.params.text("chat_id")) > 0, limits: call.world.limits },
  );
  if (markup.kind === "none") return undefined;
  if (markup.kind !== "inline") throw badRequest("inline keyboard expected");
  return markup.inline;
}

function messageToEdit(call: Call): MessageRecord {
  const { world, params } = call;
  const messageId = messageIdOf(call);
  if (params.text("chat_id") === "" && messageId === 0) {
    throw badRequest("message identifier is not specified");
  }
  const { chat } = accessChat(world.chats, params.text("chat_id"), "edit");
  const message = world.messages.find(chat.id, messageId);
  if (message === undefined) throw badRequest("message to edit not found");
  const isForeign = !message.isByBot || message.head.forward_origin !== undefined;
  if (isForeign || message.isService || message.isFixed)
    throw badRequest("message can't be edited");
  return message;
}

/** Replaces body and keyboard, unless that would change nothing. */
function change(
  { world }: Call,
  message: MessageRecord,
  to: { body: Body; inline: InlineKeyboardMarkup | undefined },
): unknown {
  const before = JSON.stringify([comparable(message.body), message.inline]);
  if (JSON.stringify([comparable(to.body), to.inline]) === before) throw badRequest(NOT_MODIFIED);
  message.body = to.body;
  message.inline = to.inline;
  message.editedAt = unixSeconds(world.time.clock);
  const { chat, message_id: messageId } = message.head;
  world.feed.emit({ kind: "edited", chatId: chat.id, messageId });
  return toPost(message);
}

/** The fields in one order, so that equal bodies give equal text. */
function comparable(body: Body): unknown {
  return Object.entries(body).sort(([left], [right]) => left.localeCompare(right));
}

function editMessageText(call: Call): unknown {
  const body = textBody(call);
  const inline = newKeyboard(call);
  const message = messageToEdit(call);
  if (message.body.text === undefined) throw badRequest("there is no text in the message to edit");
  return change(call, message, { body, inline });
}

function editMessageCaption(call: Call): unknown {
  const inline = newKeyboard(call);
  const caption = captionBody(call);
  const message = messageToEdit(call);
  const { caption: _old, caption_entities: _marks, ...media } = message.body;
  const hasFile = media.photo ?? media.document ?? media.video ?? media.audio ?? media.voice;
  if (hasFile === undefined) throw badRequest("there is no caption in the message to edit");
  return change(call, message, { body: { ...media, ...caption }, inline });
}

function editMessageMedia(call: Call): unknown {
  const inline = newKeyboard(call);
  const value = structured(call, "media", "input media JSON object");
  if (value === undefined) throw badRequest(`parameter "media" is required`);
  const { body } = inputMedia(call, value);
  return change(call, messageToEdit(call), { body, inline });
}

function editMessageReplyMarkup(call: Call): unknown {
  const inline = newKeyboard(call);
  const message = messageToEdit(call);
  return change(call, message, { body: message.body, inline });
}

/** The methods that change a message of the bot. */
export const EDIT_METHODS: Readonly<Record<string, Method>> = {
  editMessageText,
  editMessageCaption,
  editMessageMedia,
  editMessageReplyMarkup,
};
