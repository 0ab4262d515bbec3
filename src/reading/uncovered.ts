import type { Span } from "../domain/reading.ts";
import type { Clauses } from "./clauses.ts";
import type { Language } from "./grammar.ts";

/** Fewer telling words than this behind something understood only fill it up. */
const TELLING = 3;

interface Words {
  readonly language: Language;
  /** Tokens of time words, hedges and the like. */
  readonly marked: ReadonlySet<number>;
}

/**
 * Clauses in which nothing was understood though they say something: one span each. A short clause
 * joined without a comma to one that was understood ("when I turn the key") belongs to it.
 */
export function uncovered(
  text: Clauses,
  covered: ReadonlySet<number>,
  words: Words,
): readonly Span[] {
  const spans: Span[] = [];
  let from = 0;
  let understood = false;
  for (let at = 1; at <= text.tokens.length; at += 1) {
    if (at < text.tokens.length && text.clauses[at] === text.clauses[from]) continue;
    const [first, last] = [text.tokens[from], text.tokens[at - 1]];
    if (first === undefined || last === undefined) break;
    const reached = anyBetween(from, at, (index) => covered.has(index));
    const carried: boolean = understood && first.gap === "none";
    const telling = countTelling(text, { from, to: at }, words);
    if (!reached && telling >= (carried ? TELLING : 1)) spans.push([first.from, last.to]);
    understood = reached || (carried && telling < TELLING);
    from = at;
  }
  return spans;
}

function anyBetween(from: number, to: number, test: (index: number) => boolean): boolean {
  for (let at = from; at < to; at += 1) if (test(at)) return true;
  return false;
}

function countTelling(
  text: Clauses,
  { from, to }: { readonly from: number; readonly to: number },
  { language, marked }: Words,
): number {
  let count = 0;
  for (let at = from; at < to; at += 1) {
    const token = text.tokens[at];
    if (token === undefined || marked.has(at)) continue;
    if (!language.lexicon.isOrdinary(token.stem)) count += 1;
  }
  return count;
}
