/**
 * The known word that a mistyped one most likely stands for.
 * @returns undefined where nothing is near (more than a third of the letters differ)
 */
export function nearestWord(word: string, known: Iterable<string>): string | undefined {
  let best: string | undefined;
  let bestDistance = word.length < 3 ? 1 : Math.max(1, Math.floor(word.length / 3)) + 1;
  for (const candidate of known) {
    const distance = editDistance(word, candidate);
    if (distance < bestDistance) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}

/** A sentence's tail that proposes the nearest word, or lists the words when they are few. */
export function suggestion(word: string, known: Iterable<string>): string {
  const words = [...known];
  const near = nearestWord(word, words);
  if (near !== undefined) return ` Did you mean "${near}"?`;
  return words.length > 0 && words.length <= 20 ? ` Known: ${words.join(", ")}.` : "";
}

/** Optimal string alignment distance: letters changed, left out, added or swapped with the next. */
function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let previous = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const change = (previous[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const shift = Math.min((previous[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row.push(Math.min(change, shift, swapped ? (before[j - 2] ?? 0) + 1 : Infinity));
    }
    before = previous;
    previous = row;
  }
  return previous[b.length] ?? 0;
}
