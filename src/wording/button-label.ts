/** Phones cut longer labels in the middle of a word; we cut them ourselves, at a word. */
export const LABEL_LIMIT = 64;

const MORE = "…";
/** A word is kept whole as long as at least this share of the room is used. */
const LEAST_USED = 0.5;

/** Splits a text into what people take for one character; costly to make. */
const characters = new Intl.Segmenter();

/**
 * Makes a button's label: one line, at most 64 UTF-16 units, cut at a word.
 * @returns never an empty text: where there is none, `…`
 */
export function buttonLabel(text: string, limit = LABEL_LIMIT): string {
  const line = text.replaceAll(/[ \t\n\r]+/g, " ").trim();
  if (line === "") return MORE;
  if (line.length <= limit) return line;
  const ends = (line.match(/\u2068/g) ?? []).length;
  const room = wholeCharacters(line, Math.max(0, limit - MORE.length - ends));
  const atWord = /\s/.test(line.charAt(room.length)) ? room : room.replace(/\s+\S*$/, "");
  const kept = atWord.length >= room.length * LEAST_USED ? atWord : room;
  return `${closeIsolates(kept.replace(/[\s,;:–-]+$/, ""))}${MORE}`;
}

/** The longest beginning of at most `limit` units that ends between two whole characters. */
function wholeCharacters(text: string, limit: number): string {
  let end = 0;
  for (const { index, segment } of characters.segment(text)) {
    if (index + segment.length > limit) break;
    end = index + segment.length;
  }
  return end === 0 ? text.slice(0, limit).replace(/\p{Surrogate}$/u, "") : text.slice(0, end);
}

/** An isolate whose end was cut off would hold everything after the label. */
function closeIsolates(text: string): string {
  const open = (text.match(/\u2068/g) ?? []).length - (text.match(/\u2069/g) ?? []).length;
  return open > 0 ? `${text}${"\u2069".repeat(open)}` : text;
}
