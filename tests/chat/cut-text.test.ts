import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cutText } from "../../src/chat/cut-text.ts";

describe("cutText", () => {
  it("leaves a text that fits alone", () => {
    const text = { text: "short", entities: [{ type: "bold", offset: 0, length: 5 } as const] };
    expect(cutText(text, 10)).toEqual([text]);
  });

  it("carries what lies over a cut into the next piece", () => {
    const entities = [{ type: "bold", offset: 4, length: 4 } as const];
    expect(cutText({ text: "aaa bbb ccc", entities }, 6)).toEqual([
      { text: "aaa ", entities: [] },
      { text: "bbb ", entities: [{ type: "bold", offset: 0, length: 4 }] },
      { text: "ccc", entities: [] },
    ]);
  });

  it("drops pieces of nothing but space", () => {
    const pieces = cutText({ text: `a${" ".repeat(30)}b`, entities: [] }, 8);
    for (const { text } of pieces) expect(text.trim()).not.toBe("");
  });

  it("loses no words and marks the same characters", () =>
    fc.assert(
      fc.property(
        fc.string({ unit: "grapheme", minLength: 1, maxLength: 200 }),
        fc.nat(150),
        fc.nat(100),
        fc.integer({ min: 4, max: 50 }),
        (text, offset, length, limit) => {
          const marked = text.slice(offset, offset + length);
          const mark = { type: "bold", offset, length: marked.length } as const;
          const pieces = cutText({ text, entities: marked === "" ? [] : [mark] }, limit);
          const solid = (from: string) => from.replaceAll(/\s/gu, "");
          expect(solid(pieces.map((piece) => piece.text).join(""))).toBe(solid(text));
          const still = pieces.flatMap((piece) =>
            piece.entities.map((one) => piece.text.slice(one.offset, one.offset + one.length)),
          );
          expect(solid(still.join(""))).toBe(solid(marked));
          for (const piece of pieces) {
            expect(piece.text.length).toBeLessThanOrEqual(limit);
            for (const one of piece.entities) {
              expect(one.offset + one.length).toBeLessThanOrEqual(piece.text.length);
            }
          }
        },
      ),
      { seed: 2, numRuns: 500 },
    ));
});
