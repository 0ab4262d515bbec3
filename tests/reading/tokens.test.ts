import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fold, LONGEST_TEXT, tokenise } from "../../src/reading/tokens.ts";

const texts = (text: string) => tokenise(text).map((token) => token.text);

describe("tokenise", () => {
  it("keeps words and numbers with their places in the text", () => {
    const text = "Won't START: 12,4v!";
    const tokens = tokenise(text);
    expect(tokens.map((token) => token.text)).toEqual(["won't", "start", "12,4", "v"]);
    expect(tokens.map(({ from, to }) => text.slice(from, to))).toEqual([
      "Won't",
      "START",
      "12,4",
      "v",
    ]);
    expect(tokens.map((token) => token.gap)).toEqual(["none", "none", "colon", "none"]);
  });

  it("counts UTF-16 units past emoji", () => {
    const text = "🚜🚜 dead";
    const [token] = tokenise(text);
    expect(token).toMatchObject({ from: 5, to: 9, text: "dead" });
  });

  it("looks through invisible marks, accents and capitals", () => {
    expect(texts("bat\u200bte\u00adry")).toEqual(["battery"]);
    expect(texts("\u202bde\u200eAD\u202c")).toEqual(["dead"]);
    expect(texts("batería BATERÍA")).toEqual(["bateria", "bateria"]);
    expect(fold("Straße")).toBe("strasse");
    expect(fold("won’t")).toBe("won't");
  });

  it("ends a number before a full stop and reads exponents whole", () =>
    expect(texts("12.4. 1e309 3.")).toEqual(["12.4", "1e309", "3"]));

  it("reads only as much as a message can hold", () =>
    expect(tokenise("a ".repeat(LONGEST_TEXT)).length).toBe(LONGEST_TEXT / 2));

  it("gives ordered, non-empty stretches of any text", () =>
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 200 }), (text) => {
        let end = 0;
        for (const { from, to } of tokenise(text)) {
          expect(from).toBeGreaterThanOrEqual(end);
          expect(to).toBeGreaterThan(from);
          expect(to).toBeLessThanOrEqual(text.length);
          end = to;
        }
      }),
      { seed: 3, numRuns: 150 },
    ));
});
