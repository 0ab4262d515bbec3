import { describe, expect, it } from "vitest";
import { chanceWord, shownChance } from "../../src/talk/chance.ts";

describe("a chance as people are told it", () => {
  it("is never more than 97 per cent and never 0 where there is any", () => {
    expect(shownChance(0.9999)).toBe(97);
    expect(shownChance(0.0001)).toBe(1);
    expect(shownChance(0)).toBe(0);
    expect(shownChance(0.304)).toBe(30);
  });

  it("comes with a word that does not change its order", () => {
    expect([0.7, 0.5, 0.3, 0.1].map(chanceWord)).toEqual([
      "likely",
      "likely",
      "possible",
      "less-likely",
    ]);
  });
});
