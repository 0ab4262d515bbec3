/**
 * A person's own words, cut at a word where they are many. A slip must stay one message: what takes
 * several cannot be changed in place, and would be said anew at every change.
 * @param most UTF-16 units at most, the sign that more follows among them
 */
export function cutWords(text: string, most: number): string {
  if (text.length <= most) return text;
  const cut = text.slice(0, most - 1);
  const isWhole = /\s/.test(text[most - 1] ?? "");
  const atWord = isWhole ? cut : cut.replace(/\s+\S*$/, "");
  const kept = atWord.length > most / 2 ? atWord : cut;
  // Half of a pair of surrogates is no letter.
  return `${kept.replace(/[\uD800-\uDBFF]$/, "")}…`;
}
