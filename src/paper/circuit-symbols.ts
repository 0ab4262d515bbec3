import type { CircuitPart } from "../domain/circuit.ts";

/** Ink and line of the drawing: black on white, thick enough to copy. */
export const INK = "#000000";
export const PAPER = "#ffffff";
export const LINE = 2;
/** Half of the room a symbol takes across and along the row. */
export const HALF_HEIGHT = 16;

/** Where a symbol is drawn: its row's height and its two ends. */
export interface SymbolPlace {
  readonly y: number;
  readonly left: number;
  readonly right: number;
  /** A contact that an actuator moves. */
  readonly moved: boolean;
  /** A battery's plus pole is on the right. */
  readonly plusRight: boolean;
}

/** Our own plain symbols after the practice of IEC 60617: contact at rest, coil as a box. */
export function drawSymbol(part: CircuitPart, place: SymbolPlace): string {
  const { y, left, right } = place;
  const middle = (left + right) / 2;
  switch (part.sort) {
    case "cable":
      return line(left, y, right, y);
    case "joint":
      return ends(place, 6) + circle(middle, y, 6, PAPER);
    case "battery":
      return ends(place, 6) + plates(middle, y, place.plusRight ? 1 : -1);
    case "fuse":
      return line(left, y, right, y) + box(middle, y, 22, 9);
    case "coil":
      return (
        ends(place, 12) + box(middle, y, 12, 16) + line(middle - 12, y + 16, middle + 12, y - 16)
      );
    case "lamp":
      return ends(place, 14) + circle(middle, y, 14, PAPER) + cross(middle, y, 10);
    case "motor":
      return ends(place, 16) + circle(middle, y, 16, PAPER) + letter("M", middle, y);
    case "resistor":
      return ends(place, 18) + box(middle, y, 18, 7);
    default:
      return contact(part, place, middle);
  }
}

/** A make contact drawn at rest; what moves it hangs above on a dashed line. */
function contact({ sort }: CircuitPart, place: SymbolPlace, middle: number): string {
  const { y, moved } = place;
  const blade = line(middle - 14, y, middle + 12, y - 14);
  const dots = circle(middle - 14, y, 2.5, INK) + circle(middle + 14, y, 2.5, INK);
  const link = dashed(middle, y - 8, middle, y - 24);
  const handle =
    sort === "isolator"
      ? line(middle - 8, y - 24, middle + 8, y - 24) + line(middle - 8, y - 24, middle - 8, y - 19)
      : sort === "interlock"
        ? circle(middle, y - 27, 3.5, PAPER)
        : moved
          ? box(middle, y - 28, 7, 4)
          : line(middle - 7, y - 24, middle + 7, y - 24);
  return ends(place, 14) + blade + dots + link + handle;
}

/** The long thin plate is the plus pole; side 1 puts it on the right. */
function plates(x: number, y: number, side: 1 | -1): string {
  const [plus, minus] = [x + 5 * side, x - 5 * side];
  return line(plus, y - 16, plus, y + 16) + line(minus, y - 8, minus, y + 8, 2 * LINE);
}

/** The wire from both ends of the room up to the symbol. */
function ends({ y, left, right }: SymbolPlace, half: number): string {
  const middle = (left + right) / 2;
  return line(left, y, middle - half, y) + line(middle + half, y, right, y);
}

export function line(x1: number, y1: number, x2: number, y2: number, width = LINE): string {
  return `<path d="M${x1} ${y1}L${x2} ${y2}" stroke="${INK}" stroke-width="${width}" fill="none"/>`;
}

function dashed(x1: number, y1: number, x2: number, y2: number): string {
  return (
    `<path d="M${x1} ${y1}L${x2} ${y2}" stroke="${INK}" stroke-width="1" ` +
    `stroke-dasharray="3 2" fill="none"/>`
  );
}

export function circle(x: number, y: number, radius: number, fill: string): string {
  return (
    `<circle cx="${x}" cy="${y}" r="${radius}" fill="${fill}" ` +
    `stroke="${INK}" stroke-width="${LINE}"/>`
  );
}

/** A box about its middle. */
function box(x: number, y: number, halfWidth: number, halfHeight: number): string {
  return (
    `<rect x="${x - halfWidth}" y="${y - halfHeight}" width="${2 * halfWidth}" ` +
    `height="${2 * halfHeight}" fill="${halfHeight === 9 ? "none" : PAPER}" ` +
    `stroke="${INK}" stroke-width="${LINE}"/>`
  );
}

function cross(x: number, y: number, half: number): string {
  return (
    line(x - half, y - half, x + half, y + half) + line(x - half, y + half, x + half, y - half)
  );
}

function letter(text: string, x: number, y: number): string {
  return (
    `<text x="${x}" y="${y + 6}" font-size="17" text-anchor="middle" ` +
    `font-family="DejaVu Sans">${text}</text>`
  );
}

/** The sign of the earthed battery post: three bars below a stem. */
export function earthSign(x: number, y: number): string {
  return (
    line(x, y, x, y + 12) +
    line(x - 11, y + 12, x + 11, y + 12) +
    line(x - 7, y + 17, x + 7, y + 17) +
    line(x - 3, y + 22, x + 3, y + 22)
  );
}
