import type { Clauses } from "./clauses.ts";
import type { GrammarWords } from "./grammar.ts";
import type { Match } from "./patterns.ts";

/** How many words a denial reaches forward: "not even the slightest little click". */
const REACH = 6;

/**
 * For each match, whether words inside it or around it in its clause deny it. A denial does not
 * reach over "just", over a new subject ("it won't start, it clicks") or over another match, unless
 * the two are joined by "or"; it does reach through verbs of hearing and seeing ("I don't hear it
 * click"), and back from behind ("smoke: none").
 */
export function denials<Owner>(
  text: Clauses,
  matches: readonly Match<Owner>[],
  words: GrammarWords,
): readonly boolean[] {
  const denied: boolean[] = [];
  matches.forEach((match, index) => {
    const before = matches[index - 1];
    const deniedBefore = denied[index - 1] ?? false;
    const here = isDenied(text, { match, before, deniedBefore }, words);
    const end = matches[index + 1]?.from ?? text.tokens.length;
    // "no echa humo ninguno" denies once, in two places.
    const behind =
      !holdsDenial(text, match, words) &&
      isDeniedAfter(text, { from: match.from, to: match.to, end }, words);
    denied.push(match.denied !== (here || behind));
  });
  return denied;
}

interface Neighbours<Owner> {
  readonly match: Match<Owner>;
  readonly before: Match<Owner> | undefined;
  readonly deniedBefore: boolean;
}

function isDenied<Owner>(
  text: Clauses,
  { match, before, deniedBefore }: Neighbours<Owner>,
  words: GrammarWords,
): boolean {
  const clause = text.clauses[match.from];
  // "not my fault it stopped": a phrase that begins with its own subject is out of reach.
  if (opensAnew(text, match.from, words)) return false;
  const limit = Math.max(0, match.from - REACH);
  for (let at = match.from - 1; at >= limit && text.clauses[at] === clause; at -= 1) {
    const stem = text.tokens[at]?.stem ?? "";
    if (before !== undefined && at < before.to) {
      // "won't crank or click": the denial inside or before the first also denies the second.
      const joined = words.or.has(text.tokens[before.to]?.stem ?? "");
      return joined && (deniedBefore || holdsDenial(text, before, words));
    }
    if (words.not.has(stem)) return true;
    const perceived = words.perceive.has(text.tokens[at - 1]?.stem ?? "");
    if (words.stop.has(stem) && !perceived) return false;
  }
  return false;
}

function opensAnew(text: Clauses, at: number, words: GrammarWords): boolean {
  const perceived = words.perceive.has(text.tokens[at - 1]?.stem ?? "");
  return words.stop.has(text.tokens[at]?.stem ?? "") && !perceived;
}

/** "smoke: none", "rodents suspected, none found": at most so many words later. */
const REACH_BACK = 3;

/** A match, and where the next one begins: a denial behind that is of the next. */
interface Before {
  readonly from: number;
  readonly to: number;
  readonly end: number;
}

function isDeniedAfter(text: Clauses, match: Before, words: GrammarWords): boolean {
  const limit = Math.min(match.end, match.to + REACH_BACK);
  for (
    let at = match.to;
    at < limit && text.sentences[at] === text.sentences[match.from];
    at += 1
  ) {
    const stem = text.tokens[at]?.stem ?? "";
    if (words.stop.has(stem)) return false;
    if (!words.notAfter.has(stem)) continue;
    const next = text.tokens[at + 1]?.stem ?? "";
    return text.edge(at + 1) || words.perceive.has(next);
  }
  return false;
}

function holdsDenial<Owner>(text: Clauses, match: Match<Owner>, words: GrammarWords): boolean {
  for (let at = match.from; at < match.to; at += 1) {
    if (words.not.has(text.tokens[at]?.stem ?? "")) return true;
  }
  return false;
}
