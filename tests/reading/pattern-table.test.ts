import { describe, expect, it } from "vitest";
import type { Pattern } from "../../src/domain/phrases.ts";
import { parsePattern } from "../../src/knowledge/phrases-pattern.ts";
import { createLexicon } from "../../src/reading/language.ts";
import { listAt, packPatterns, unpackPattern } from "../../src/reading/pattern-table.ts";
import { english } from "../helpers/english-reader.ts";

const lexicon = createLexicon(english);
const pattern = (text: string): Pattern => parsePattern(text, new Map()).pattern;
const table = packPatterns(lexicon, [
  ["spins", [pattern("spin .. free"), pattern("^ spin?  free|loose ^")]],
  ["none", []],
  ["clicks", [pattern("=Clicks once-or-twice relay")]],
]);
const stem = (word: string) => lexicon.stems(word)[0] ?? "";

describe("packed patterns", () => {
  it("come back whole, each with its owner", () => {
    const kinds = [0, 1, 2].map((order) => {
      const entry = unpackPattern(table, order);
      return [entry?.owner, entry?.order, ...(entry?.pieces.map(({ kind }) => kind) ?? [])];
    });
    expect(kinds).toEqual([
      ["spins", 0, "words", "gap", "words"],
      ["spins", 1, "edge", "words", "words", "edge"],
      ["clicks", 2, "words", "words", "words"],
    ]);
    expect(unpackPattern(table, 0)?.pieces[1]).toEqual({ kind: "gap", upTo: 3 });
    expect(unpackPattern(table, 1)?.pieces[1]).toMatchObject({ kind: "words", optional: true });
    const [click, once] = unpackPattern(table, 2)?.pieces ?? [];
    expect(click).toMatchObject({ exact: new Set(["clicks"]) });
    expect(once).toMatchObject({ several: [["once", "or", "twice"].map(stem)] });
  });

  it("are nothing at a place that there is not", () => {
    expect(unpackPattern(table, 3)).toBeUndefined();
    expect(unpackPattern(table, -1)).toBeUndefined();
    expect([...listAt(table.patterns, 3)]).toEqual([]);
  });

  it("stand on the shelf of every word that they may begin with, by the last word they need", () => {
    const orders = (word: string) =>
      (table.byFirst.get(stem(word)) ?? []).flatMap((place) => {
        const [, count = 0, ...its] = listAt(table.shelves, place);
        return its.slice(0, count);
      });
    expect(orders("spin").sort()).toEqual([0, 1]);
    expect(orders("loose")).toEqual([1]);
    expect(orders("clicks")).toEqual([2]);
    expect(orders("relay")).toEqual([]);
  });

  it("need each word once, the first known to be there left aside where another is needed", () => {
    const spins = unpackPattern(table, 0)?.needs.map((need) => need) ?? [];
    const isIn = (word: string) => table.needed.byStem.get(stem(word)) ?? [];
    expect(spins).toEqual(isIn("spin"));
    expect(isIn("free")).toHaveLength(2);
  });
});
