import type { Token } from "./language.ts";

/** A whole message as tokens, with its clauses. */
export interface Clauses {
  readonly tokens: readonly Token[];
  /** Clause number of each token; a new one begins at commas, full stops and joining words. */
  readonly clauses: readonly number[];
  /** Sentence number of each token. */
  readonly sentences: readonly number[];
  /** True at the beginning and the end of a clause; joining words and "now", "then" left aside. */
  edge(at: number): boolean;
  /** True where no punctuation stands between this token and the one before. */
  joined(at: number): boolean;
  /** True where the token is a word of denial. */
  isDenial(at: number): boolean;
}

export interface ClauseWords {
  readonly joins: ReadonlySet<string>;
  /** Joining words, time words and the like, left aside at an edge. */
  readonly fillers: ReadonlySet<string>;
  readonly not: ReadonlySet<string>;
}

/** Cuts a message into clauses. */
export function cutClauses(tokens: readonly Token[], words: ClauseWords): Clauses {
  const { joins, not, fillers } = words;
  const clauses: number[] = [];
  const sentences: number[] = [];
  let clause = -1;
  let sentence = -1;
  tokens.forEach((token, at) => {
    const opensSentence = at === 0 || token.gap === "sentence";
    const previous = tokens[at - 1];
    const afterJoin = previous !== undefined && joins.has(previous.stem);
    const opensClause = opensSentence || token.gap === "clause" || token.gap === "colon";
    if (opensClause || (joins.has(token.stem) && !afterJoin)) clause += 1;
    if (opensSentence) sentence += 1;
    clauses.push(clause);
    sentences.push(sentence);
  });
  const passes = tokens.map((token) => fillers.has(token.stem));
  const denials = tokens.map((token) => not.has(token.stem));
  const edge = (at: number): boolean =>
    at <= 0 ||
    at >= tokens.length ||
    clauses[at] !== clauses[at - 1] ||
    passes[at - 1] === true ||
    passes[at] === true;
  const joined = (at: number): boolean => (tokens[at]?.gap ?? "none") === "none";
  const isDenial = (at: number): boolean => denials[at] === true;
  return { tokens, clauses, sentences, edge, joined, isDenial };
}
