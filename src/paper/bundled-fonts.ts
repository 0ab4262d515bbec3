import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { type Font, openFont } from "./font.ts";

/**
 * The typeface of everything we draw. It comes with the program, so a picture looks the same on every
 * computer; and it has the signs the trade needs (≥ → Ω ✓ ⚠) in Latin, Greek, Cyrillic, Hebrew and
 * Arabic, which most free typefaces have not.
 */
export const FAMILY = "DejaVu Sans";

export interface Typeface {
  readonly regular: Font;
  readonly bold: Font;
  /** Paths of the font files, for programs that read them themselves. */
  readonly files: readonly string[];
}

let opened: Typeface | undefined;

/** The typeface, read from its files at the first call. */
export function bundledFonts(): Typeface {
  opened ??= open();
  return opened;
}

function open(): Typeface {
  const { resolve } = createRequire(import.meta.url);
  const regular = resolve("dejavu-fonts-ttf/ttf/DejaVuSans.ttf");
  const bold = resolve("dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf");
  return {
    regular: openFont(readFileSync(regular)),
    bold: openFont(readFileSync(bold)),
    files: [regular, bold],
  };
}
