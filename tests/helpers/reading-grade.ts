import { fleschKincaid } from "flesch-kincaid";
import { syllable } from "syllable";

/** School years; what a child of ten reads. Our own aim. */
export const MOST_GRADE = 5;

/**
 * Words of the trade, which people who run such machines know and for which there are no others;
 * they are left out of the count.
 */
const TRADE = new Set(
  "battery solenoid carburettor ignition terminal alternator cylinder distributor injection".split(
    " ",
  ),
);

const wordsIn = (text: string) => text.match(/[A-Za-z][A-Za-z'’-]*/g) ?? [];

/** The school grade of texts by Flesch and Kincaid (US Navy, 1975). */
export function gradeOf(texts: readonly string[]): number {
  const sentences = texts
    .flatMap((text) => text.split(/[.?!]\s|\n/))
    .map((text) => wordsIn(text).filter((word) => !TRADE.has(word.toLowerCase())))
    .filter((words) => words.length > 0);
  const words = sentences.flat();
  return fleschKincaid({
    sentence: sentences.length,
    word: words.length,
    syllable: words.reduce((sum, word) => sum + syllable(word), 0),
  });
}
