/** How a text is made strange. */
export interface Strangeness {
  /** Turns the text round, as if the language were written from right to left. */
  readonly rightToLeft?: boolean;
  /** How much longer the text becomes; 0.4 = 40 %. */
  readonly longer?: number;
}

/** A made-up language of letters with accents, by the common tags for such languages. */
export const PSEUDO_ACCENTED = "en-XA";
/** The same from right to left. */
export const PSEUDO_RIGHT_TO_LEFT = "ar-XB";

const plain = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";
const strange = "áƀçđéƒĝĥíĵķľɱñóþɋŕšťúṽŵẋýžÁɃÇĐÉƑĜĤÍĴĶĽṀÑÓÞɊŔŠŤÚṼŴẊÝŽ";
const accents = new Map([...plain].map((letter, index) => [letter, [...strange][index] ?? letter]));

/** What is added; long and short words, so that lines also break in it. */
const filler = "ẋý þéŕ ášťúñ ḿ óľéɱíŕ ";

const OVERRIDE = "\u202E";
const END_OVERRIDE = "\u202C";
/** First, so that a program that looks for the first strong letter finds this one. */
const RIGHT_TO_LEFT_MARK = "\u200F";

/**
 * Makes English text look like a language nobody has translated yet: letters with accents, longer
 * than English, on wish from right to left. Whoever still sees plain English afterwards has found a
 * text that is not translated; whatever is cut or out of place will be so in a real language too.
 * @param text without variables; white space at its ends is kept
 */
export function pseudoText(text: string, strangeness: Strangeness = {}): string {
  const { rightToLeft = false, longer = 0.4 } = strangeness;
  const [, start = "", body = "", end = ""] = /^(\s*)(.*?)(\s*)$/su.exec(text) ?? [];
  if (body === "") return text;
  const accented = [...body].map((letter) => accents.get(letter) ?? letter).join("");
  const letters = /\p{L}/u.test(body);
  const grown = letters ? accented + padding(Math.ceil(body.length * longer)) : accented;
  if (!rightToLeft || !letters) return start + grown + end;
  const turned = grown.replace(/\S+/gu, (word) => `${OVERRIDE}${word}${END_OVERRIDE}`);
  return `${start}${RIGHT_TO_LEFT_MARK}${turned}${end}`;
}

function padding(length: number): string {
  if (length < 2) return "š".repeat(length);
  const text = filler.repeat(Math.ceil(length / filler.length)).slice(0, length - 1);
  return ` ${text.replace(/\s$/, "š")}`;
}
