import type { MessageEntity, User } from "@grammyjs/types";
import { badRequest } from "../refusal.ts";
import { isRecord } from "../wire/params.ts";

/** A text and what is marked in it; offsets and lengths count UTF-16 units. */
export interface FormattedText {
  text: string;
  entities: MessageEntity[];
}

type PlainType = MessageEntity.CommonMessageEntity["type"];

const MARKED_BY_BOTS = [
  "bold",
  "italic",
  "underline",
  "strikethrough",
  "spoiler",
  "code",
  "blockquote",
  "expandable_blockquote",
] as const satisfies readonly PlainType[];

/** Found by the server in the text itself; when a bot sends them they are ignored. */
const FOUND_BY_SERVER: readonly string[] = [
  "mention",
  "hashtag",
  "cashtag",
  "bot_command",
  "url",
  "email",
  "phone_number",
  "bank_card_number",
];

type TimeFormat = MessageEntity.DateTimeMessageEntity["date_time_format"];

/** Every way to show a time: the weekday, the date, the time of day; or how long ago. */
const TIME_FORMATS = (
  ["", "t", "T", "d", "dt", "dT", "D", "Dt", "DT", "r"] as const satisfies readonly TimeFormat[]
).flatMap((format): TimeFormat[] => (format === "r" ? [format] : [format, `w${format}`]));

/** The time format of that name; undefined when there is none. */
export function timeFormat(name: string): TimeFormat | undefined {
  return TIME_FORMATS.find((format) => format === name);
}

/** The real server takes offsets and lengths up to this value. */
const LARGEST_OFFSET = 1_000_000;

/**
 * Checks an `entities` argument.
 * @param value parsed JSON; anything but an array counts as none, as on the real server
 * @returns the entities a bot may set, in the order given
 * @throws ApiRefusal 400 `can't parse MessageEntity: …`
 */
export function readEntities(value: unknown): MessageEntity[] {
  if (!Array.isArray(value)) return [];
  return value.map(readEntity).filter((entity) => entity !== undefined);
}

function unreadable(reason: string): Error {
  return badRequest(`can't parse MessageEntity: ${reason}`);
}

function readEntity(value: unknown): MessageEntity | undefined {
  if (!isRecord(value)) throw unreadable("expected an Object");
  const place = { offset: wholeNumber(value, "offset"), length: wholeNumber(value, "length") };
  const type = textField(value, "type");
  if (FOUND_BY_SERVER.includes(type)) return undefined;
  const plain = MARKED_BY_BOTS.find((known) => known === type);
  if (plain !== undefined) return { type: plain, ...place };
  switch (type) {
    case "pre": {
      const language = value["language"];
      return typeof language === "string" ? { type, ...place, language } : { type, ...place };
    }
    case "text_link":
      return { type, ...place, url: textField(value, "url") };
    case "text_mention":
      return { type, ...place, user: mentionedUser(value["user"]) };
    case "custom_emoji":
      return { type, ...place, custom_emoji_id: textField(value, "custom_emoji_id") };
    case "date_time": {
      const format = timeFormat(String(value["date_time_format"] ?? ""));
      if (format === undefined) throw unreadable("Invalid date-time format specified");
      return {
        type,
        ...place,
        unix_time: wholeNumber(value, "unix_time"),
        date_time_format: format,
      };
    }
    default:
      throw unreadable("Unsupported type specified");
  }
}

function wholeNumber(value: Record<string, unknown>, field: string): number {
  const found = value[field];
  if (found === undefined) throw unreadable(`Can't find field "${field}"`);
  if (typeof found !== "number" || !Number.isInteger(found)) {
    throw unreadable(`Field "${field}" must be of type Number`);
  }
  return found;
}

function textField(value: Record<string, unknown>, field: string): string {
  const found = value[field];
  if (found === undefined) throw unreadable(`Can't find field "${field}"`);
  if (typeof found !== "string") throw unreadable(`Field "${field}" must be of type String`);
  return found;
}

function mentionedUser(value: unknown): User {
  if (!isRecord(value)) throw unreadable(`Can't find field "user"`);
  const firstName = value["first_name"];
  return {
    id: wholeNumber(value, "id"),
    is_bot: value["is_bot"] === true,
    first_name: typeof firstName === "string" ? firstName : "",
  };
}

/** Before `at` stands the first half of a surrogate pair, so `at` splits a character. */
function splitsCharacter(text: string, at: number): boolean {
  return /[\uD800-\uDBFF]/.test(text.charAt(at - 1)) && /[\uDC00-\uDFFF]/.test(text.charAt(at));
}

function bytesBefore(text: string, at: number): number {
  return Buffer.byteLength(text.slice(0, at), "utf8");
}

/**
 * Checks that every entity lies inside the text and splits no character.
 * @throws ApiRefusal 400 with the wording of the library under the Bot API server
 */
export function checkOffsets({ text, entities }: FormattedText): void {
  for (const { offset, length } of entities) {
    if (offset < 0 || offset > LARGEST_OFFSET) {
      throw badRequest(`receive an entity with incorrect offset ${offset}`);
    }
    if (length < 0 || length > LARGEST_OFFSET) {
      throw badRequest(`receive an entity with incorrect length ${length}`);
    }
    if (length === 0) continue;
    checkEnds(text, offset, offset + length);
  }
}

function checkEnds(text: string, begin: number, end: number): void {
  const named = `entity beginning at UTF-16 offset ${begin}`;
  if (begin >= text.length) {
    throw badRequest(`entity begins after the end of the text at UTF-16 offset ${begin}`);
  }
  if (splitsCharacter(text, begin)) {
    const at = bytesBefore(text, begin + 1);
    throw badRequest(`entity begins in a middle of a UTF-16 symbol at byte offset ${at}`);
  }
  if (end > text.length) {
    throw badRequest(`${named} ends after the end of the text at UTF-16 offset ${end}`);
  }
  if (splitsCharacter(text, end)) {
    const at = bytesBefore(text, end + 1);
    throw badRequest(`${named} ends in a middle of a UTF-16 symbol at byte offset ${at}`);
  }
}
