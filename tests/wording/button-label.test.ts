import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buttonLabel, LABEL_LIMIT } from "../../src/wording/button-label.ts";

/** Whole characters of every kind, some of them common enough to make words. */
const anyText = fc
  .array(
    fc.oneof(fc.integer({ min: 0x1f000, max: 0x10ffff }), fc.integer({ min: 10, max: 0x2ff })),
    {
      maxLength: 120,
    },
  )
  .map((codes) => String.fromCodePoint(...codes));

describe("button labels", () => {
  it("stay as they are up to 64 characters", () => {
    const label = "x".repeat(64);
    expect(buttonLabel(label)).toBe(label);
  });

  it("are cut at a word, without the comma before the cut", () => {
    const long =
      "The engine turns over at its usual speed, nothing comes out of the exhaust, and it never fires";
    expect(buttonLabel(long)).toBe(
      "The engine turns over at its usual speed, nothing comes out of…",
    );
    expect(buttonLabel("a word, and more", 8)).toBe("a word…");
  });

  it("keep a word that ends exactly where the room ends", () => {
    expect(buttonLabel("abcd efgh ijkl", 10)).toBe("abcd efgh…");
  });

  it("are cut inside a word where there is no other place", () => {
    expect(buttonLabel("x".repeat(80))).toBe(`${"x".repeat(63)}…`);
  });

  it("stand on one line and are never empty", () => {
    expect(buttonLabel(" a \n b ")).toBe("a b");
    expect(buttonLabel(" \n ")).toBe("…");
  });

  it("close an isolate that the cut left open", () => {
    const cut = buttonLabel(`\u2068${"word ".repeat(30)}\u2069`);
    expect(cut.endsWith("\u2069…")).toBe(true);
    expect(cut.length).toBeLessThanOrEqual(LABEL_LIMIT);
  });

  it("fit, and cut no character in two, whatever the text", () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const label = buttonLabel(text);
        expect(label.length).toBeGreaterThan(0);
        expect(label.length).toBeLessThanOrEqual(LABEL_LIMIT);
        expect(label).not.toMatch(/\p{Surrogate}/u);
      }),
      { seed: 5 },
    );
  });
});
