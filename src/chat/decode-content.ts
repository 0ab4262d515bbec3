import type { Message } from "grammy/types";
import type { FileRef } from "../domain/effects.ts";
import type { IncomingContent } from "../domain/incoming.ts";

/**
 * What a message holds; null for notes of the platform itself (somebody joined, a title changed)
 * and for commands to another bot.
 *
 * @param username the bot's own, without "@"
 */
export function decodeContent(message: Message, username: string): IncomingContent | null {
  if (message.text !== undefined) return words(message, message.text, username);
  const file = fileOf(message);
  if (file !== null) return withFile(message, file);
  return placeOf(message) ?? contactOf(message) ?? moveOf(message) ?? otherOf(message);
}

function words(message: Message, text: string, username: string): IncomingContent | null {
  const command = message.entities?.find(
    ({ type, offset }) => type === "bot_command" && offset === 0,
  );
  if (command === undefined) {
    const replyTo = message.reply_to_message?.message_id;
    return {
      ...{ kind: "text", text },
      ...(replyTo === undefined ? {} : { replyTo: String(replyTo) }),
      ...(message.forward_origin === undefined ? {} : { forwarded: true }),
    };
  }
  const [name = "", addressee] = text.slice(1, command.length).split("@");
  if (addressee !== undefined && addressee.toLowerCase() !== username.toLowerCase()) return null;
  return {
    kind: "command",
    name: name.toLowerCase(),
    argument: text.slice(command.length).trim(),
  };
}

interface PlatformFile {
  readonly file_id: string;
  readonly file_size?: number;
  readonly mime_type?: string;
}

function fileOf(message: Message): FileRef | null {
  // A photo comes in several sizes, the last being the largest.
  const photo = message.photo?.at(-1);
  // What moves without sound comes as a document as well, so it is looked for first.
  const candidates: readonly [FileRef["kind"], PlatformFile | undefined][] = [
    ["photo", photo],
    ["voice", message.voice],
    ["video", message.video],
    ["video-note", message.video_note],
    ["audio", message.audio],
    ["animation", message.animation],
    ["document", message.document],
    ["sticker", message.sticker],
  ];
  for (const [kind, file] of candidates) {
    if (file === undefined) continue;
    const { file_id: id, file_size: bytes, mime_type: mime } = file;
    return {
      id,
      kind,
      ...(mime === undefined ? {} : { mime }),
      ...(bytes === undefined ? {} : { bytes }),
    };
  }
  return null;
}

function withFile(message: Message, file: FileRef): IncomingContent {
  const { caption, media_group_id: album } = message;
  return {
    kind: "file",
    file,
    ...(caption === undefined ? {} : { caption }),
    ...(album === undefined ? {} : { album }),
  };
}

function placeOf({ venue, location }: Message): IncomingContent | null {
  const place = venue?.location ?? location;
  if (place === undefined) return null;
  const { latitude, longitude } = place;
  return { kind: "location", latitude, longitude, ...(venue ? { title: venue.title } : {}) };
}

function contactOf({ contact, from }: Message): IncomingContent | null {
  if (contact === undefined) return null;
  const name = [contact.first_name, contact.last_name].filter(Boolean).join(" ");
  // Anybody's card can be sent; only the number the app vouches for is the sender's own.
  const own = contact.user_id !== undefined && contact.user_id === from?.id;
  return { kind: "contact", phone: contact.phone_number, own, name };
}

const moveOf = ({ migrate_to_chat_id: to }: Message): IncomingContent | null =>
  to === undefined ? null : { kind: "moved", to: String(to) };

/** Sent on purpose, but of no use here; anything else is the platform's own note. */
const odd = ["poll", "dice", "game", "story", "invoice", "paid_media", "checklist"] as const;

function otherOf(message: Message): IncomingContent | null {
  const name = odd.find((key) => message[key] !== undefined);
  return name === undefined ? null : { kind: "other", name };
}
