/** Words as people who cannot spell write them: marks, accents and doubled letters do not count. */
const bare = (text: string) =>
  text
    .normalize("NFKD")
    .toLowerCase()
    .replace(/ß/g, "ss")
    .replace(/[\p{M}'’`´]/gu, "")
    .replace(/[\p{P}\p{S}]/gu, " ")
    .replace(/(.)\1+/gu, "$1")
    .replace(/\s+/g, " ")
    .trim();

/** Shorter words are written right, or are other words: "no" and "on", "hot" and "not". */
const SHORTEST_WITH_A_SLIP = 4;
/** From here on a letter may be a wrong one: "fire" is not "fine", "savety" is "safety". */
const SHORTEST_WITH_A_WRONG_LETTER = 6;
/** Words as long as this have room for a second slip. */
const SHORTEST_WITH_TWO_SLIPS = 9;

/** The fewest letters to add, drop, change or swap with their neighbour (Damerau, 1964). */
function slipsBetween(typed: string, word: string): number {
  const rows: number[][] = [Array.from({ length: word.length + 1 }, (_, at) => at)];
  const cost = (i: number, j: number) => rows[i]?.[j] ?? Number.POSITIVE_INFINITY;
  for (let i = 1; i <= typed.length; i += 1) {
    const row = [i];
    rows.push(row);
    for (let j = 1; j <= word.length; j += 1) {
      const same = typed[i - 1] === word[j - 1] ? 0 : 1;
      const swapped = typed[i - 1] === word[j - 2] && typed[i - 2] === word[j - 1];
      row[j] = Math.min(
        cost(i - 1, j) + 1,
        cost(i, j - 1) + 1,
        cost(i - 1, j - 1) + same,
        swapped ? cost(i - 2, j - 2) + 1 : Number.POSITIVE_INFINITY,
      );
    }
  }
  return cost(typed.length, word.length);
}

const sorted = (word: string) => [...word].sort().join("");

function isNear(typed: string, word: string): boolean {
  if (typed === word) return true;
  if (word.length < SHORTEST_WITH_A_SLIP || typed[0] !== word[0]) return false;
  const slips = slipsBetween(typed, word);
  if (word.length >= SHORTEST_WITH_TWO_SLIPS) return slips <= 2;
  if (word.length >= SHORTEST_WITH_A_WRONG_LETTER) return slips <= 1;
  // A short word may lack a letter or have two in the wrong order, no more.
  return slips === 1 && (typed.length < word.length || sorted(typed) === sorted(word));
}

/**
 * True where the text can only be these words, badly spelt: as many words, each with its own first
 * letter and hardly another slip. A short word must be right, so that no "not" becomes a "now".
 */
export function nearWords(text: string, label: string): boolean {
  const typed = bare(text).split(" ");
  const words = bare(label).split(" ");
  if (typed.join("") === words.join("")) return words.join("") !== "";
  return (
    typed.length === words.length && typed.every((one, index) => isNear(one, words[index] ?? ""))
  );
}
