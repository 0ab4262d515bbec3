import { describe, expect, it } from "vitest";
import { isRightToLeft, plainWords, runsAgainst } from "../../src/wording/text-direction.ts";

describe("direction of text", () => {
  // Source: Unicode CLDR, layout orientation of these locales.
  it("is right to left for Arabic, Hebrew, Persian and Urdu", () => {
    for (const language of ["ar", "he", "fa", "ur", "ar-XB"]) {
      expect(isRightToLeft(language), language).toBe(true);
    }
    for (const language of ["en", "de", "es", "ru", "ja", "", "no tag"]) {
      expect(isRightToLeft(language), language).toBe(false);
    }
  });

  it("is told by the letters, not by digits and signs", () => {
    expect(runsAgainst("12.4 ؟", false)).toBe(false);
    expect(runsAgainst("أحمد", false)).toBe(true);
    expect(runsAgainst("V", true)).toBe(true);
  });

  it("of words around a person's words stays what it was", () => {
    expect(plainWords("a\u202Eb\u2066c\u2069\r\nd\te\u0000")).toBe("abc\nd\te");
    expect(plainWords("\uD83D\uDE9C \uD83D")).toBe("🚜 \uFFFD");
    // Marks that only mark are left alone: they are part of correct spelling.
    expect(plainWords("a\u200Eb\u200Dc")).toBe("a\u200Eb\u200Dc");
  });
});
