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
  /** Words of looking, beside which a comma ends nothing: "coil tested, fine", "coil, tested, fine". */
  readonly looked: ReadonlySet<string>;
}

/** Cuts a message into clauses. */
export function cutClauses(tokens: readonly Token[], words: ClauseWords): Clauses {
  const { joins, not, fillers, looked } = words;
  const clauses: number[] = [];
  const sentences: number[] = [];
  let clause = -1;
  let sentence = -1;
  const goesOn = (at: number): boolean =>
    tokens[at]?.gap === "clause" &&
    ((looked.has(tokens[at - 1]?.stem ?? "") && !not.has(tokens[at - 2]?.stem ?? "")) ||
      (looked.has(tokens[at]?.stem ?? "") && tokens[at + 1]?.gap === "clause"));
  tokens.forEach((token, at) => {
    const opensSentence = at === 0 || token.gap === "sentence";
    const previous = tokens[at - 1];
    const afterJoin = previous !== undefined && joins.has(previous.stem);
    const opensClause =
      opensSentence || token.gap === "colon" || (token.gap === "clause" && !goesOn(at));
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
  const joined = (at: number): boolean => (tokens[at]?.gap ?? "none") === "none" || goesOn(at);
  const isDenial = (at: number): boolean => denials[at] === true;
  return { tokens, clauses, sentences, edge, joined, isDenial };
}
