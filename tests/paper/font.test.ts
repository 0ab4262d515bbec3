// Also covers bundled-fonts.ts, whose typeface it reads.
import PDFDocument from "pdfkit";
import { describe, expect, it } from "vitest";
import { bundledFonts } from "../../src/paper/bundled-fonts.ts";
import { openFont, UnreadableFont } from "../../src/paper/font.ts";

const { regular, bold, files } = bundledFonts();

describe("the bundled typeface", () => {
  it("has the signs of the trade and the scripts we promise", () => {
    for (const character of "→≥≤Ω°✓✗⚠•▸…–AäñßШΩעבع") {
      expect(regular.has(character.codePointAt(0) ?? 0), character).toBe(true);
      expect(bold.has(character.codePointAt(0) ?? 0), character).toBe(true);
    }
    for (const character of "🚜漢") {
      expect(regular.has(character.codePointAt(0) ?? 0), character).toBe(false);
    }
  });

  it("measures letters as the font reader of pdfkit does", () => {
    const document = new PDFDocument();
    for (const [index, font] of [regular, bold].entries()) {
      document.font(files[index] ?? "").fontSize(1000);
      for (const letter of "iWm1.%Ωя→ע") {
        expect(font.width(letter) * 1000, letter).toBeCloseTo(document.widthOfString(letter), 3);
      }
    }
  });

  it("adds widths up", () => {
    expect(regular.width("ab")).toBeCloseTo(regular.width("a") + regular.width("b"), 12);
    expect(regular.width("")).toBe(0);
  });
});

describe("a font that cannot be read", () => {
  it("is refused in words", () => {
    expect(() => openFont(new Uint8Array(3))).toThrow(UnreadableFont);
    expect(() => openFont(new Uint8Array(400))).toThrow('no table "head"');
    expect(() => openFont(new Uint8Array(14).fill(1))).toThrow("cut short");
  });
});
