import type { MessageEntity } from "@grammyjs/types";
import { badRequest } from "../refusal.ts";
import { type FormattedText, timeFormat } from "./entities.ts";
import { readReference } from "./html-reference.ts";
import { readStartTag, type StartTag } from "./html-tag.ts";

const END_TAG = /<\/([^\s>]*)\s*>/y;

type Place = { offset: number; length: number };
type Opened = StartTag & { offset: number };

interface Reading {
  source: string;
  at: number;
  text: string;
  open: Opened[];
  entities: MessageEntity[];
  /** The `<code class="language-…">` closed last: inside `<pre>` it names the language. */
  code?: Place & { language: string };
}

/**
 * Reads a text in the Bot API's HTML style.
 * @param source what the bot sent
 * @returns the text without tags, and its entities sorted by offset, the longer one first
 * @throws ApiRefusal 400 `can't parse entities: …` with a byte offset into the source
 */
export function parseHtml(source: string): FormattedText {
  const reading: Reading = { source, at: 0, text: "", open: [], entities: [] };
  while (reading.at < source.length) {
    const char = source.charAt(reading.at);
    const reference = char === "&" ? readReference(source, reading.at) : undefined;
    if (char === "<") readTag(reading);
    else {
      reading.text += reference?.stands ?? char;
      reading.at += reference?.length ?? 1;
    }
  }
  const unclosed = reading.open.at(-1);
  if (unclosed !== undefined) {
    throw broken(`Can't find end tag corresponding to start tag "${unclosed.name}"`);
  }
  const entities = reading.entities.sort(
    (left, right) => left.offset - right.offset || right.length - left.length,
  );
  return { text: reading.text, entities };
}

function broken(reason: string): Error {
  return badRequest(`can't parse entities: ${reason}`);
}

function readTag(reading: Reading): void {
  if (reading.source.charAt(reading.at + 1) === "/") readEndTag(reading);
  else {
    const tag = readStartTag(reading.source, reading.at, broken);
    if (tag.name === "span" && tag.attributes.get("class") !== "tg-spoiler") {
      throw broken(`Tag "span" must have class "tg-spoiler" at byte offset ${byteOffset(reading)}`);
    }
    reading.open.push({ ...tag, offset: reading.text.length });
    reading.at = tag.end;
  }
}

function byteOffset(reading: Reading): number {
  return Buffer.byteLength(reading.source.slice(0, reading.at), "utf8");
}

function readEndTag(reading: Reading): void {
  const where = `at byte offset ${byteOffset(reading)}`;
  const tag = reading.open.pop();
  if (tag === undefined) throw broken(`Unexpected end tag ${where}`);
  END_TAG.lastIndex = reading.at;
  const match = END_TAG.exec(reading.source);
  if (match === null) throw broken(`Unclosed end tag ${where}`);
  const name = (match[1] ?? "").toLowerCase();
  if (name !== "" && name !== tag.name) {
    throw broken(`Unmatched end tag ${where}, expected "</${tag.name}>", found "</${name}>"`);
  }
  reading.at += match[0].length;
  if (reading.text.length > tag.offset) close(reading, tag);
}

function close(reading: Reading, tag: Opened): void {
  const place = { offset: tag.offset, length: reading.text.length - tag.offset };
  const entity = entityOf(tag, place, reading.text.slice(tag.offset));
  if (entity === undefined) return;
  const language = tag.attributes.get("class")?.replace(/^language-/, "");
  if (entity.type === "code" && language !== undefined) reading.code = { ...place, language };
  const { code } = reading;
  const namesLanguage =
    entity.type === "pre" && code?.offset === place.offset && code.length === place.length;
  if (!namesLanguage) reading.entities.push(entity);
  else {
    // `<pre><code class="language-x">` is one block with a language, not two entities.
    reading.entities.pop();
    reading.entities.push({ ...entity, language: code.language });
  }
}

function entityOf(tag: Opened, place: Place, inner: string): MessageEntity | undefined {
  switch (tag.name) {
    case "b":
    case "strong":
      return { type: "bold", ...place };
    case "i":
    case "em":
      return { type: "italic", ...place };
    case "u":
    case "ins":
      return { type: "underline", ...place };
    case "s":
    case "strike":
    case "del":
      return { type: "strikethrough", ...place };
    case "span":
    case "tg-spoiler":
      return { type: "spoiler", ...place };
    case "code":
      return { type: "code", ...place };
    case "pre":
      return { type: "pre", ...place };
    case "blockquote": {
      const expandable = tag.attributes.has("expandable");
      return { type: expandable ? "expandable_blockquote" : "blockquote", ...place };
    }
    case "tg-emoji":
      return {
        type: "custom_emoji",
        ...place,
        custom_emoji_id: tag.attributes.get("emoji-id") ?? "",
      };
    case "tg-time":
      return timeEntity(tag, place);
    default:
      return linkEntity(tag.attributes.get("href") ?? inner, place);
  }
}

function timeEntity(tag: Opened, place: Place): MessageEntity {
  const unix = Number(tag.attributes.get("unix"));
  if (!Number.isInteger(unix)) throw broken("Invalid Unix time specified");
  const format = timeFormat(tag.attributes.get("format") ?? "");
  if (format === undefined) throw broken("Invalid date-time format specified");
  return { type: "date_time", ...place, unix_time: unix, date_time_format: format };
}

/** A link without a usable address is dropped without a word, as on the real server. */
function linkEntity(href: string, place: Place): MessageEntity | undefined {
  const user = /^tg:\/\/user\?id=(\d+)$/.exec(href);
  if (user !== null) {
    const mentioned = { id: Number(user[1]), is_bot: false, first_name: "" };
    return { type: "text_mention", ...place, user: mentioned };
  }
  const url = /^[a-z][a-z\d+.-]*:/i.test(href) ? href : `http://${href}`;
  return /^[a-z]+:(\/\/)?[^\s.]+(\.[^\s]+|:\d+)/i.test(url) || url.startsWith("tg:")
    ? { type: "text_link", ...place, url }
    : undefined;
}
