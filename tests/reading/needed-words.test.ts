import { describe, expect, it } from "vitest";
import { createHeldWords, createNeededWords } from "../../src/reading/needed-words.ts";

const token = (stem: string) => ({
  ...{ text: stem, stem, number: false, from: 0, to: stem.length },
  ...{ gap: "none" as const, before: "", after: "", known: true, corrected: false },
});

describe("words of which a text must hold one", () => {
  it("have one number a set, in whatever order they are written", () => {
    const needed = createNeededWords();
    const first = needed.number(new Set(["click", "clunk"]));
    expect(needed.number(new Set(["clunk", "click"]))).toBe(first);
    expect(needed.number(new Set(["click"]))).not.toBe(first);
  });

  it("rule out only the sets of which nothing was said", () => {
    const needed = createNeededWords();
    const sounds = needed.number(new Set(["click", "clunk"]));
    const lights = needed.number(new Set(["light"]));
    const held = createHeldWords(needed.table());
    held.look([token("one"), token("clunk")]);
    expect([held.has(sounds), held.has(lights)]).toEqual([true, false]);
    held.look([token("light")]);
    expect([held.has(sounds), held.has(lights)]).toEqual([false, true]);
    held.look([]);
    expect([held.has(sounds), held.has(lights)]).toEqual([false, false]);
  });
});
