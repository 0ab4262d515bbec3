import type { InlineKeyboardButton, MessageEntity } from "@grammyjs/types";
import type { Body, MessageRecord } from "../world/messages.ts";
import type { World } from "../world/world.ts";

/** A button as people see it. */
export interface SeenButton {
  label: string;
  /** What the bot gets when it is pressed; missing for a link. */
  data?: string;
  url?: string;
  style?: "danger" | "success" | "primary";
}

/** A file as people see it; `id` opens it. */
export interface SeenFile {
  id: string;
  name: string;
  mimeType: string;
  /** Bytes. */
  size: number;
  /** Pixels, for pictures. */
  width?: number;
  height?: number;
}

/** What a message mainly is. */
export type SeenKind =
  | "text"
  | "photo"
  | "document"
  | "voice"
  | "video"
  | "audio"
  | "sticker"
  | "venue"
  | "location"
  | "contact"
  | "service";

/** A message as it stands in the chat now, as plain data that survives JSON. */
export interface SeenMessage {
  id: number;
  /** Unix seconds. */
  at: number;
  from: { id: number; name: string; isBot: boolean };
  kind: SeenKind;
  /** The text or the caption; "" for none. */
  text: string;
  entities: readonly MessageEntity[];
  file?: SeenFile;
  /** The same for all messages of one album. */
  albumId?: string;
  place?: { latitude: number; longitude: number; title?: string; address?: string };
  contact?: { phone: string; name: string; userId?: number };
  /** For service messages: which field says what happened. */
  service?: string;
  /** Rows of buttons below the message; [] for none. */
  buttons: SeenButton[][];
  replyTo?: number;
  threadId?: number;
  /** Unix seconds of the last edit. */
  editedAt?: number;
  forwardedFrom?: string;
  isPinned: boolean;
  /** Emoji the bot put on it. */
  reactions: string[];
}

/** Shows a message the way people see it. */
export function seenMessage(world: World, message: MessageRecord): SeenMessage {
  const { head, body } = message;
  return {
    id: head.message_id,
    at: head.date,
    from: { id: head.from.id, name: head.from.first_name, isBot: head.from.is_bot },
    kind: kindOf(message),
    text: body.text ?? body.caption ?? "",
    entities: body.entities ?? body.caption_entities ?? [],
    ...contentOf(world, message),
    buttons: (message.inline?.inline_keyboard ?? []).map((row) => row.map(seenButton)),
    ...contextOf(message),
    isPinned: message.isPinned,
    reactions: message.reactions.map((reaction) =>
      reaction.type === "emoji" ? reaction.emoji : reaction.type,
    ),
  };
}

const KINDS = [
  "photo",
  "document",
  "voice",
  "video",
  "audio",
  "sticker",
  "venue",
  "location",
  "contact",
] as const satisfies readonly (SeenKind & keyof Body)[];

function kindOf({ body, isService }: MessageRecord): SeenKind {
  if (isService) return "service";
  return KINDS.find((kind) => body[kind] !== undefined) ?? "text";
}

function contentOf(
  world: World,
  { body, isService }: MessageRecord,
): Pick<SeenMessage, "file" | "place" | "contact" | "service"> {
  const file = fileOf(world, body);
  const { location, venue, contact } = body;
  const venueWords = venue === undefined ? {} : { title: venue.title, address: venue.address };
  const name = [contact?.first_name, contact?.last_name].filter((part) => part).join(" ");
  const owner = contact?.user_id === undefined ? {} : { userId: contact.user_id };
  const service = isService ? Object.keys(body)[0] : undefined;
  return {
    ...(file === undefined ? {} : { file }),
    ...(location === undefined
      ? {}
      : { place: { latitude: location.latitude, longitude: location.longitude, ...venueWords } }),
    ...(contact === undefined ? {} : { contact: { phone: contact.phone_number, name, ...owner } }),
    ...(service === undefined ? {} : { service }),
  };
}

function fileOf(world: World, body: Body): SeenFile | undefined {
  const largest = body.photo?.at(-1);
  const carried =
    largest ?? body.document ?? body.voice ?? body.video ?? body.audio ?? body.sticker;
  const file = carried === undefined ? undefined : world.files.get(carried.file_id);
  if (file === undefined) return undefined;
  const { fileId: id, name, mimeType, size } = file;
  const pixels = largest === undefined ? {} : { width: largest.width, height: largest.height };
  return { id, name, mimeType, size, ...pixels };
}

function seenButton(button: InlineKeyboardButton): SeenButton {
  return {
    label: button.text,
    ...("callback_data" in button ? { data: button.callback_data } : {}),
    ...("url" in button ? { url: button.url } : {}),
    ...(button.style === undefined ? {} : { style: button.style }),
  };
}

type Context = Pick<SeenMessage, "albumId" | "replyTo" | "threadId" | "editedAt" | "forwardedFrom">;

function contextOf({ head, editedAt }: MessageRecord): Context {
  const { media_group_id: albumId, reply_to_message: reply, message_thread_id: threadId } = head;
  const origin = head.forward_origin;
  return {
    ...(albumId === undefined ? {} : { albumId }),
    ...(reply === undefined ? {} : { replyTo: reply.message_id }),
    ...(threadId === undefined ? {} : { threadId }),
    ...(editedAt === undefined ? {} : { editedAt }),
    ...(origin?.type === "user" ? { forwardedFrom: origin.sender_user.first_name } : {}),
  };
}
