import type { MessageEntity } from "@grammyjs/types";

type FoundType = "bot_command" | "mention" | "hashtag" | "url" | "email";

/**
 * What the server marks in any text by itself. The patterns are plainer than the real ones, but
 * agree with them on what people and bots ordinarily write.
 */
const PATTERNS: readonly { type: FoundType; pattern: RegExp }[] = [
  { type: "url", pattern: /\b(?:https?:\/\/|www\.)[^\s<>"']*[^\s<>"'.,;:!?)\]]/giu },
  { type: "email", pattern: /[\p{L}\d._%+-]+@[\p{L}\d-]+(?:\.[\p{L}\d-]+)*\.\p{L}{2,}/giu },
  // A command stands at the start or after a character that is no part of a word.
  { type: "bot_command", pattern: /(?<![\p{L}\p{N}_/<>])\/[A-Za-z0-9_]{1,64}(?:@\w{3,32})?\b/gu },
  { type: "mention", pattern: /(?<![\p{L}\p{N}_])@[A-Za-z]\w{2,31}\b/gu },
  { type: "hashtag", pattern: /(?<![\p{L}\p{N}_])#[\p{L}\p{N}_]*\p{L}[\p{L}\p{N}_]*/gu },
];

/**
 * Finds commands, mentions, hashtags, web and mail addresses.
 * @returns the entities sorted by offset; none overlaps another
 */
export function findEntities(text: string): MessageEntity[] {
  const found: MessageEntity[] = [];
  for (const { type, pattern } of PATTERNS) {
    for (const match of text.matchAll(pattern)) {
      const entity = { type, offset: match.index, length: match[0].length };
      if (!found.some((other) => overlap(other, entity))) found.push(entity);
    }
  }
  return found.sort((left, right) => left.offset - right.offset);
}

interface Stretch {
  offset: number;
  length: number;
}

/** True when the two share at least one character. */
export function overlap(left: Stretch, right: Stretch): boolean {
  return left.offset < right.offset + right.length && right.offset < left.offset + left.length;
}
