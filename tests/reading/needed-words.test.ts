import { describe, expect, it } from "vitest";
import { createNeededWords, heldBy } from "../../src/reading/needed-words.ts";

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
    const held = heldBy([token("one"), token("clunk")], needed.table());
    expect([held[sounds], held[lights]]).toEqual([1, 0]);
    expect([...heldBy([], needed.table())]).toEqual([0, 0]);
  });
});
