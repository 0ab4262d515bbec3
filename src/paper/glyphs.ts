import { bundledFonts } from "./bundled-fonts.ts";

/** Characters that steer the text and are never drawn: joiners, direction marks, line ends. */
const undrawn = /[\p{Default_Ignorable_Code_Point}\p{Cc}\p{Cf}]/u;

function isDrawn(character: string): boolean {
  const code = character.codePointAt(0) ?? 0;
  const { regular, bold } = bundledFonts();
  return undrawn.test(character) || (regular.has(code) && bold.has(code));
}

/**
 * Characters of a text that our pictures would show as an empty box.
 * @returns each once, in the order in which they come
 */
export function missingGlyphs(text: string): string[] {
  return [...new Set(text)].filter((character) => !isDrawn(character));
}

/** The text without the characters our pictures cannot draw, and without the gaps they leave. */
export function drawableText(text: string): string {
  const kept = [...text].filter(isDrawn).join("");
  return kept.length === text.length ? text : kept.replaceAll(/ +/g, " ").trim();
}
