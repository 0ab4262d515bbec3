/**
 * Finds a forbidden phrase in a text. A phrase counts as a whole, and not where its own sentence
 * denies it ("never bridge the starter").
 * @param phrases in small letters · @param negations words that turn a sentence round
 * @returns the first phrase found, or undefined
 */
export function forbiddenPhrase(
  text: string,
  phrases: readonly string[],
  negations: readonly string[],
): string | undefined {
  const sentences = text.toLowerCase().split(/[.;:!?\n]+/);
  return phrases.find((phrase) =>
    sentences.some(
      (sentence) =>
        hasWords(sentence, phrase.toLowerCase()) &&
        !negations.some((negation) => hasWords(sentence, negation)),
    ),
  );
}

function hasWords(sentence: string, words: string): boolean {
  const start = sentence.indexOf(words);
  if (start < 0) return false;
  const isLetter = (letter: string | undefined) => /[a-z]/.test(letter ?? "");
  if (!isLetter(sentence[start - 1]) && !isLetter(sentence[start + words.length])) return true;
  return hasWords(sentence.slice(start + words.length), words);
}
