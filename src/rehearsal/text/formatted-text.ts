import type { MessageEntity } from "@grammyjs/types";
import { badRequest } from "../refusal.ts";
import { checkOffsets, type FormattedText, readEntities } from "./entities.ts";
import { findEntities, overlap } from "./find-entities.ts";
import { parseHtml } from "./html.ts";

/** A text as a bot sends it. */
export interface RawText {
  text: string;
  /** "" for none. */
  parseMode: string;
  /** The parsed `entities` argument; used only without a parse mode. */
  entities: unknown;
}

/** What the reader wants of the text. */
export interface TextRule {
  maxChars: number;
  /** The wording when it is longer, such as "message is too long". */
  tooLong: string;
  /** True for a caption, which may be missing. */
  mayBeEmpty: boolean;
}

/** Marks in whose inside the server looks for nothing more. */
const OPAQUE: ReadonlySet<MessageEntity["type"]> = new Set([
  "code",
  "pre",
  "text_link",
  "text_mention",
  "custom_emoji",
]);

/**
 * Turns what a bot sent into what people see: markup read, blanks at both ends removed, control
 * characters replaced, commands and links found, length checked after all that.
 * @returns the text in UTF-16 units with entities that lie inside it
 * @throws ApiRefusal 400 with the wording of the real server
 */
export function formatText(raw: RawText, rule: TextRule): FormattedText {
  const parsed = readMarks(raw);
  checkOffsets(parsed);
  const trimmed = trim(clean(parsed));
  if (trimmed.text === "" && !rule.mayBeEmpty) throw badRequest("message must be non-empty");
  if (trimmed.text.length > rule.maxChars) throw badRequest(rule.tooLong);
  return { text: trimmed.text, entities: withFound(trimmed) };
}

function readMarks({ text, parseMode, entities }: RawText): FormattedText {
  switch (parseMode.toLowerCase()) {
    case "html":
      return parseHtml(text);
    case "":
    case "none":
      return { text, entities: readEntities(entities) };
    case "markdown":
    case "markdownv2":
      throw badRequest("this rehearsal server reads HTML and entities, not Markdown");
    default:
      throw badRequest("unsupported parse_mode");
  }
}

/** Carriage returns vanish; other control characters but the line feed become blanks. */
function clean({ text, entities }: FormattedText): FormattedText {
  const kept = entities.filter((entity) => entity.length > 0);
  const spaced = [...text]
    .map((char) => (char < " " && char !== "\n" && char !== "\r" ? " " : char))
    .join("");
  if (!spaced.includes("\r")) return { text: spaced, entities: kept };
  const before = (at: number) => spaced.slice(0, at).replaceAll("\r", "").length;
  return {
    text: spaced.replaceAll("\r", ""),
    entities: kept.map((entity) => {
      const offset = before(entity.offset);
      return { ...entity, offset, length: before(entity.offset + entity.length) - offset };
    }),
  };
}

/** Blanks before the first entity and after the last character go; entities shrink with them. */
function trim({ text, entities }: FormattedText): FormattedText {
  const right = text.replace(/[ \n]+$/, "");
  const firstMark = Math.min(right.length, ...entities.map((entity) => entity.offset));
  const left = /^[ \n]*/.exec(right.slice(0, firstMark))?.[0].length ?? 0;
  const moved = entities.map((entity) => {
    const end = Math.min(entity.offset + entity.length, right.length) - left;
    const offset = entity.offset - left;
    return { ...entity, offset, length: end - offset };
  });
  return { text: right.slice(left), entities: moved.filter((entity) => entity.length > 0) };
}

function withFound({ text, entities }: FormattedText): MessageEntity[] {
  const opaque = entities.filter((entity) => OPAQUE.has(entity.type));
  const found = findEntities(text).filter(
    (entity) => !opaque.some((mark) => overlap(mark, entity)),
  );
  return [...entities, ...found].sort(
    (left, right) => left.offset - right.offset || right.length - left.length,
  );
}
