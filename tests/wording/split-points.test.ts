import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { splitPoints } from "../../src/wording/split-points.ts";

function pieces(text: string, limit: number): string[] {
  const cuts = [0, ...splitPoints(text, limit), text.length];
  return cuts.slice(1).map((end, index) => text.slice(cuts[index], end));
}

describe("cuts of a long text", () => {
  it("are not made where it fits", () => {
    expect(splitPoints("x".repeat(4096))).toEqual([]);
    expect(splitPoints("x".repeat(4097))).toEqual([4096]);
  });

  it("prefer an empty line, then a line's end, then a space", () => {
    expect(pieces("aaaa bb\n\ncc\ndd ee", 12)).toEqual(["aaaa bb\n\n", "cc\ndd ee"]);
    expect(pieces("aaaa bb\ncc dd ee", 12)).toEqual(["aaaa bb\n", "cc dd ee"]);
    expect(pieces("aaaa bbbb cccc dddd", 12)).toEqual(["aaaa bbbb ", "cccc dddd"]);
  });

  it("leave no piece too long, lose nothing and cut no character in two", () => {
    const text = fc.string({ unit: fc.constantFrom("a", " ", "\n", "🚜", "é"), maxLength: 120 });
    fc.assert(
      fc.property(text, fc.integer({ min: 2, max: 30 }), (given, limit) => {
        const parts = pieces(given, limit);
        expect(parts.join("")).toBe(given);
        for (const part of parts) {
          expect(part.length).toBeLessThanOrEqual(limit);
          expect(part).not.toMatch(/\p{Surrogate}/u);
        }
      }),
      { seed: 7, numRuns: 500 },
    );
  });
});
