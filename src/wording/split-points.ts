/** Most UTF-16 units that one message of Telegram holds (Bot API, sendMessage: 1-4096). */
export const MESSAGE_LIMIT = 4096;

/**
 * Where to cut a text that is too long for one message: at an empty line, else at the end of a line,
 * else between words, else between two whole characters.
 * @param limit most UTF-16 units a piece may have; > 1
 * @returns offsets of the cuts, rising; empty where the text fits. The pieces between them are at
 *   most `limit` long, joined they are the text, and no character is cut in two.
 */
export function splitPoints(text: string, limit = MESSAGE_LIMIT): number[] {
  const points: number[] = [];
  let start = 0;
  while (text.length - start > limit) {
    start += pieceLength(text.slice(start, start + limit + 1), limit);
    points.push(start);
  }
  return points;
}

/** Pieces shorter than this share of the room are not made for the sake of a better place. */
const LEAST_FILLED = 0.5;

function pieceLength(text: string, limit: number): number {
  for (const border of ["\n\n", "\n", " "]) {
    const at = text.lastIndexOf(border, limit - border.length) + border.length;
    if (at >= border.length && at >= limit * LEAST_FILLED) return at;
  }
  const code = text.charCodeAt(limit - 1);
  const splitsPair = code >= 0xd800 && code <= 0xdbff;
  return splitsPair ? limit - 1 : limit;
}
