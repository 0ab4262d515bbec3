import { describe, expect, it } from "vitest";
import { parsePattern } from "../../src/knowledge/phrases-pattern.ts";
import { type Clauses, cutClauses } from "../../src/reading/clauses.ts";
import { createLexicon } from "../../src/reading/language.ts";
import { createPatternIndex } from "../../src/reading/patterns.ts";
import { tokenise } from "../../src/reading/tokens.ts";
import { english } from "../helpers/english-reader.ts";

const lexicon = createLexicon(english);
const stems = (words: string) => new Set(words.split(" ").flatMap((word) => lexicon.stems(word)));
const words = {
  joins: stems("and but"),
  fillers: stems("and but now"),
  not: stems("not no"),
  looked: stems("tested"),
};
const cut = (text: string) => cutClauses(lexicon.tokens(tokenise(text)), words);

function index(...patterns: string[]) {
  const owned = patterns.map((text) => [text, [parsePattern(text, new Map()).pattern]] as const);
  return createPatternIndex<string>(lexicon, owned);
}
const owners = (text: string, ...patterns: string[]) =>
  index(...patterns)
    .longest(cut(text))
    .map((match) => match.owner);

describe("patterns", () => {
  it.each([
    ["one click", "I hear one click now", true],
    ["one|two click", "two clicks", true],
    ["turn over? slow", "turns slow", true],
    ["turn over? slow", "turns over slow", true],
    ["light .. dim", "lights go very dim", true],
    ["light .. dim", "lights go very very awfully dim", false],
    ["light .. dim", "lights. dim", false],
    ["^ nothing ^", "turned it and nothing", true],
    ["^ nothing ^", "nothing wrong there", false],
    ["^ nothing ^", "now nothing", true],
    ["=click", "it clicks", false],
    ["=click", "a Click", true],
    ["like a-switch|mad", "like a switch", true],
  ])("'%s' in '%s': %s", (pattern, text, found) =>
    expect(owners(text, pattern)).toEqual(found ? [pattern] : []),
  );

  it("give way to longer ones and do not overlap", () =>
    expect(owners("the battery is stone dead, dead", "dead", "battery .. dead")).toEqual([
      "battery .. dead",
      "dead",
    ]));

  it("notice a denial that a gap passes over", () => {
    const find = (text: string) => index("fuel .. old").longest(cut(text))[0]?.denied;
    expect(find("the fuel is old")).toBe(false);
    expect(find("the fuel is not old")).toBe(true);
  });

  it("cost work in proportion to the text, whatever it repeats", () => {
    const found = index("a? a? a? .. a b", "a .. a .. c", "a|b a? b? a? .. d");
    const work = (length: number) => {
      let asked = 0;
      const text = cut("a b ".repeat(length));
      const counted: Clauses = {
        ...text,
        joined: (at) => {
          asked += 1;
          return text.joined(at);
        },
      };
      found.all(counted);
      return asked;
    };
    expect(work(400)).toBeLessThan(2.1 * work(200));
  });
});
