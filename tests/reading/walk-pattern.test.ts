import { describe, expect, it } from "vitest";
import { parsePattern } from "../../src/knowledge/phrases-pattern.ts";
import { cutClauses } from "../../src/reading/clauses.ts";
import { createLexicon } from "../../src/reading/language.ts";
import { createWords } from "../../src/reading/pattern-pieces.ts";
import { tokenise } from "../../src/reading/tokens.ts";
import { matchFrom } from "../../src/reading/walk-pattern.ts";
import { english } from "../helpers/english-reader.ts";

const lexicon = createLexicon(english);
const wordsOf = createWords(lexicon);
const stems = (words: string) => new Set(words.split(" ").flatMap((word) => lexicon.stems(word)));
const grammar = {
  joins: stems("and"),
  fillers: stems("and"),
  not: stems("not no"),
  looked: new Set<string>(),
};

function walk(text: string, pattern: string) {
  const pieces = parsePattern(pattern, new Map()).pattern.map((piece) =>
    piece.kind === "words" ? wordsOf(piece) : piece,
  );
  return matchFrom(cutClauses(lexicon.tokens(tokenise(text)), grammar), pieces, 0);
}

describe("one pattern walked along a text", () => {
  it("ends behind its last word and counts the words it found, not those it passed", () => {
    expect(walk("turns slow today", "turn slow")).toEqual({ to: 2, words: 2, denied: false });
    expect(walk("light is very dim", "light .. dim")).toEqual({ to: 4, words: 2, denied: false });
    expect(walk("machine gun", "machine-gun|tick")).toEqual({ to: 2, words: 1, denied: false });
  });

  it("leaves no trace of a way that led nowhere", () => {
    // "not" is passed first, then found to be the wrong way.
    expect(walk("turn over slow", "turn over? over slow")).toEqual({
      ...{ to: 3, words: 3, denied: false },
    });
    expect(walk("fuel is not no good", "fuel .. good")?.denied).toBe(false);
    expect(walk("fuel is not good", "fuel .. good")?.denied).toBe(true);
  });

  it("goes nowhere past a comma, or where a word is missing", () => {
    expect(walk("turns, slow", "turn slow")).toBeNull();
    expect(walk("turns", "turn slow")).toBeNull();
  });
});
