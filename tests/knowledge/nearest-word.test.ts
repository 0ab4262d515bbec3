import { describe, expect, it } from "vitest";
import { nearestWord, suggestion } from "../../src/knowledge/nearest-word.ts";

describe("the nearest word", () => {
  it("finds the word that was meant", () => {
    expect(nearestWord("batery-flat", ["battery-flat", "battery-dead"])).toBe("battery-flat");
    expect(nearestWord("ofer", ["offer", "title"])).toBe("offer");
  });

  it("finds nothing where all words are far", () => {
    expect(nearestWord("camshaft", ["title", "offer"])).toBeUndefined();
    expect(nearestWord("x", [])).toBeUndefined();
  });

  it("lists the words where none is near and they are few", () => {
    expect(suggestion("camshaft", ["a", "b"])).toBe(" Known: a, b.");
    expect(suggestion("titel", ["title"])).toBe(' Did you mean "title"?');
    expect(
      suggestion(
        "q",
        Array.from({ length: 30 }, (_, index) => `word-${index}`),
      ),
    ).toBe("");
  });
});
