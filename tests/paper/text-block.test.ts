import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { breakLines } from "../../src/paper/text-block.ts";

/** Every letter is one wide. */
const font = { has: () => true, width: (text: string) => [...text].length };
const shape = (width: number, lines = 99) => ({ font, size: 1, width, lines });

describe("lines of a text", () => {
  it("break between words", () => {
    expect(breakLines("the earth strap is loose", shape(10))).toEqual([
      "the earth",
      "strap is",
      "loose",
    ]);
  });

  it("break inside a word that is longer than a line", () => {
    expect(breakLines("a Starterrelais b", shape(7))).toEqual(["a", "Starter", "relais", "b"]);
  });

  it("never part a number from its unit", () => {
    expect(breakLines("now 12.4\u00A0V", shape(8))).toEqual(["now", "12.4\u00A0V"]);
  });

  it("end with … where there is no more room, at a word if it can be", () => {
    expect(breakLines("one two three four", shape(8, 2))).toEqual(["one two", "three…"]);
    expect(breakLines("one abcdefghij", shape(6, 2))).toEqual(["one", "abcde…"]);
  });

  it("are one empty line for no text", () => {
    expect(breakLines("  ", shape(8))).toEqual([""]);
  });

  it("fit their room, and hold the whole text where there are enough of them", () => {
    const text = fc.array(fc.string({ unit: "grapheme", maxLength: 14 })).map((w) => w.join(" "));
    fc.assert(
      fc.property(
        text,
        fc.integer({ min: 20, max: 60 }),
        fc.integer({ min: 1, max: 4 }),
        (t, w, n) => {
          const all = breakLines(t, shape(w));
          expect(all.join("").replaceAll(/[ \n\t]/g, "")).toBe(t.replaceAll(/[ \n\t]/g, ""));
          const few = breakLines(t, shape(w, n));
          expect(few.length).toBeLessThanOrEqual(n);
          for (const line of [...all, ...few]) expect(font.width(line)).toBeLessThanOrEqual(w);
        },
      ),
      { seed: 3 },
    );
  });
});
