import { renderAsync } from "@resvg/resvg-js";
import { bundledFonts, FAMILY } from "./bundled-fonts.ts";

/**
 * Draws an SVG as PNG in the bundled typeface, off the event loop. Fonts of the computer are not
 * used: where one is missing there, text would vanish without a word.
 */
export async function renderPng(svg: string): Promise<Uint8Array> {
  const image = await renderAsync(svg, {
    font: {
      loadSystemFonts: false,
      fontFiles: [...bundledFonts().files],
      defaultFontFamily: FAMILY,
    },
    logLevel: "off",
  });
  return image.asPng();
}
