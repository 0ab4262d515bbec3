import { describe, expect, it } from "vitest";
import { parsePattern } from "../../src/knowledge/phrases-pattern.ts";
import { createLexicon } from "../../src/reading/language.ts";
import {
  createWords,
  firstWords,
  neededWords,
  nextStems,
} from "../../src/reading/pattern-pieces.ts";
import { english } from "../helpers/english-reader.ts";

const wordsOf = createWords(createLexicon(english));
const piecesOf = (text: string) =>
  parsePattern(text, new Map()).pattern.map((piece) =>
    piece.kind === "words" ? wordsOf(piece) : piece,
  );

describe("the pieces of a pattern", () => {
  it("need every word that may not be missing, each set once", () => {
    const needed = neededWords(piecesOf("turn over? slow|lazy .. click"));
    expect(needed.map((set) => [...set])).toEqual([["turn"], ["slow", "lazi"], ["click"]]);
    const [first, second] = piecesOf("click click");
    expect(neededWords(piecesOf("click click"))).toHaveLength(first === second ? 1 : 2);
  });

  it("begin with the first word, or with the next where that may be missing", () => {
    const starts = (text: string) => firstWords(piecesOf(text)).map((one) => [...one.starts]);
    expect(starts("one click")).toEqual([["one"]]);
    expect(starts("^ just? one? click")).toEqual([["just"], ["one"], ["click"]]);
  });

  it("tell what must follow the first word only where one word stands for sure", () => {
    expect([...(nextStems(piecesOf("one click")) ?? [])]).toEqual(["click"]);
    for (const text of ["one? click", "one .. click", "one click?", "machine-gun|tick click"]) {
      expect(nextStems(piecesOf(text))).toBeNull();
    }
  });

  it("are stemmed once for each piece as written", () => {
    const [piece] = parsePattern("clicks", new Map()).pattern;
    if (piece?.kind !== "words") throw new Error("It should be words.");
    expect(wordsOf(piece)).toBe(wordsOf(piece));
  });
});
