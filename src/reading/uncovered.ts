import type { Span } from "../domain/reading.ts";
import type { Clauses } from "./clauses.ts";
import type { Language } from "./grammar.ts";

/**
 * Clauses in which nothing was understood and at least one word says something: one span each.
 */
export function uncovered(
  text: Clauses,
  covered: ReadonlySet<number>,
  words: { readonly language: Language; readonly marked: ReadonlySet<number> },
): readonly Span[] {
  const spans: Span[] = [];
  let from = 0;
  for (let at = 1; at <= text.tokens.length; at += 1) {
    if (at < text.tokens.length && text.clauses[at] === text.clauses[from]) continue;
    const range = indices(from, at);
    const reached = range.some((index) => covered.has(index));
    const says = range.some((index) => {
      const token = text.tokens[index];
      return (
        token !== undefined && !words.marked.has(index) && !words.language.lexicon.isOrdinary(token.stem)
      );
    });
    const [first, last] = [text.tokens[from], text.tokens[at - 1]];
    if (!reached && says && first !== undefined && last !== undefined) {
      spans.push([first.from, last.to]);
    }
    from = at;
  }
  return spans;
}

function indices(from: number, to: number): readonly number[] {
  return Array.from({ length: to - from }, (_, offset) => from + offset);
}
