import { describe, expect, it } from "vitest";
import { createSpelling, shelveWords } from "../../src/reading/spelling.ts";

const plain = (word: string) => word.replace(/s$/, "");
const known = ["battery", "starter", "started", "click", "clock", "alternator", "gear", "gears"];
const spelling = createSpelling(shelveWords(known), plain);

describe("the nearest known word", () => {
  it.each([
    ["batery", "battery"],
    ["batttery", "battery"],
    ["bettery", "battery"],
    ["batteyr", "battery"],
    ["altenater", "alternator"],
  ])("%s is %s", (word, expected) => expect(spelling.nearest(word)).toBe(expected));

  it.each([
    ["cluck", "near the one as much as the other"],
    ["starte", "near two words"],
    ["bat", "too short"],
    ["xattery", "another first letter"],
    ["buttress", "too far"],
    ["b".repeat(40), "no word at all"],
  ])("%s is none: %s", (word) => expect(spelling.nearest(word)).toBeNull());

  it("does not hesitate between forms of one word", () =>
    expect(spelling.nearest("geear")).toBe("gear"));
});
