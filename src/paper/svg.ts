import { FAMILY } from "./bundled-fonts.ts";
import { drawableText } from "./glyphs.ts";

export interface Place {
  readonly x: number;
  /** Baseline of the first line, px from the top. */
  readonly y: number;
  readonly size: number;
  readonly bold?: boolean;
  /** Which end of the text stands at x, whatever its direction. */
  readonly anchor?: "left" | "middle" | "right";
  readonly rightToLeft?: boolean;
}

/** Gives a text its direction, whatever its first letter. */
const RIGHT_TO_LEFT = "\u2067";
const LEFT_TO_RIGHT = "\u2066";
const END = "\u2069";

const anchors = { left: "start", middle: "middle", right: "end" } as const;

/** One line of text as an SVG element. Anything may stand in the text. */
export function svgText(text: string, place: Place): string {
  const { x, y, size, bold = false, anchor = "left", rightToLeft = false } = place;
  const words = escapeXml(drawableText(text));
  const start = rightToLeft ? RIGHT_TO_LEFT : LEFT_TO_RIGHT;
  return (
    `<text x="${round(x)}" y="${round(y)}" font-family="${FAMILY}" font-size="${size}"` +
    `${bold ? ' font-weight="bold"' : ""} text-anchor="${anchors[anchor]}"` +
    ` xml:space="preserve">${start}${words}${END}</text>`
  );
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly fill?: string;
  readonly stroke?: string;
  readonly strokeWidth?: number;
}

export function svgBox(box: Box): string {
  const { fill = "none", stroke = "none", strokeWidth = 0 } = box;
  return (
    `<rect x="${round(box.x)}" y="${round(box.y)}" width="${round(Math.max(0, box.width))}"` +
    ` height="${round(box.height)}" fill="${fill}" stroke="${stroke}"` +
    ` stroke-width="${strokeWidth}"/>`
  );
}

/** Makes a text safe inside XML 1.0, characters that may not stand in it left out. */
export function escapeXml(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, "")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
