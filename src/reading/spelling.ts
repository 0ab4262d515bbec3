import { distance } from "fastest-levenshtein";

/** Words that are known, arranged so that only a handful is compared with a misspelt one. */
export interface Spelling {
  /** The known word meant, or null when none or several are near enough. */
  nearest(word: string): string | null;
}

/** Shorter words differ from their neighbours by one letter far too often. */
const SHORTEST = 4;
/** From this length on two slips are allowed. */
const TWO_SLIPS_FROM = 9;

/** Known words by first letter and length. */
export type WordShelves = ReadonlyMap<string, readonly string[]>;

/** @param words known words, folded; the first letter is trusted, as people rarely miss it. */
export function shelveWords(words: Iterable<string>): WordShelves {
  const shelves = new Map<string, string[]>();
  for (const word of new Set(words)) {
    if (word.length < SHORTEST) continue;
    const shelf = shelfOf(word, word.length);
    const there = shelves.get(shelf);
    if (there === undefined) shelves.set(shelf, [word]);
    else there.push(word);
  }
  return shelves;
}

/** @param stem words with one stem count as one word. */
export function createSpelling(shelves: WordShelves, stem: (word: string) => string): Spelling {
  return { nearest: (word) => nearestOn(shelves, word, stem) };
}

function shelfOf(word: string, length: number): string {
  return `${word.slice(0, 1)}${length}`;
}

function nearestOn(
  shelves: WordShelves,
  word: string,
  stem: (word: string) => string,
): string | null {
  // Nobody types a word this long; comparing it would only cost time.
  if (word.length < SHORTEST || word.length > 24) return null;
  const slips = word.length >= TWO_SLIPS_FROM ? 2 : 1;
  let best: string | null = null;
  let least = slips + 1;
  let tied = false;
  for (let length = word.length - slips; length <= word.length + slips; length += 1) {
    for (const known of shelves.get(shelfOf(word, length)) ?? []) {
      const slip = slipsBetween(word, known);
      if (slip < least) [best, least, tied] = [known, slip, false];
      else if (slip === least && best !== null && stem(best) !== stem(known)) tied = true;
    }
  }
  return tied ? null : best;
}

/** Edit distance; two neighbouring letters swapped count as one slip. */
function slipsBetween(word: string, known: string): number {
  const edits = distance(word, known);
  return edits === 2 && isSwap(word, known) ? 1 : edits;
}

function isSwap(word: string, known: string): boolean {
  if (word.length !== known.length) return false;
  let at = 0;
  while (word[at] === known[at]) at += 1;
  return (
    word[at] === known[at + 1] &&
    word[at + 1] === known[at] &&
    word.slice(at + 2) === known.slice(at + 2)
  );
}
