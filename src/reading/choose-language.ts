import { detect } from "tinyld";
import type { ReadingResult } from "../domain/reading.ts";

/** Detection of the language is not trusted for less. */
const WORDS_TO_DETECT = 4;
/** More text does not make the detection better, only slower. */
const LONGEST_SAMPLE = 300;

/** What one reading of a message is worth when languages are compared. */
function worth(result: ReadingResult): number {
  return (
    3 * result.understood.length +
    2 * result.ambiguous.length +
    result.denied.length +
    result.components.length +
    result.redFlags.length +
    (result.command === null ? 0 : 3)
  );
}

/**
 * The reading in the language the message is written in: the one that makes most of it; between
 * equals the detected one when it is long enough to tell, then the person's own.
 *
 * @param results one for each language tried; at least one
 * @param preferred languages, the person's own first
 */
export function chooseLanguage(
  text: string,
  results: readonly ReadingResult[],
  preferred: readonly string[],
): ReadingResult {
  const [first] = results;
  if (first === undefined) throw new TypeError("a reader needs at least one language");
  if (results.length === 1) return first;
  const detected = detectLanguage(
    text,
    results.map((result) => result.language),
  );
  const order = (result: ReadingResult): number => {
    const place = preferred.indexOf(result.language);
    return place === -1 ? preferred.length : place;
  };
  const ranked = [...results].sort(
    (a, b) =>
      worth(b) - worth(a) ||
      Number(b.language === detected) - Number(a.language === detected) ||
      order(a) - order(b),
  );
  return ranked[0] ?? first;
}

/** The language of a text of four or more words, among those given; null when it cannot tell. */
export function detectLanguage(text: string, among: readonly string[]): string | null {
  const sample = text.slice(0, LONGEST_SAMPLE);
  const words = sample.split(/\s+/).filter((word) => /\p{L}/u.test(word));
  if (words.length < WORDS_TO_DETECT) return null;
  const found = detect(sample, { only: [...among] });
  return among.includes(found) ? found : null;
}
