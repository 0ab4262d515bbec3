import type { Drawing } from "../domain/vocabulary.ts";
import { circle, INK, line, PAPER } from "./circuit-symbols.ts";
import { svgText } from "./svg.ts";

/** Thick enough to be seen on a phone in the sun. */
const BOLD = 5;
const CABLE = 12;
const GREY = "#d9d9d9";

function box(x: number, y: number, width: number, height: number, fill = PAPER): string {
  return (
    `<rect x="${x}" y="${y}" width="${width}" height="${height}" rx="6" fill="${fill}" ` +
    `stroke="${INK}" stroke-width="${BOLD}"/>`
  );
}

const curve = (path: string, width: number) =>
  `<path d="${path}" fill="none" stroke="${INK}" stroke-width="${width}" stroke-linecap="round"/>`;

const sign = (text: string, x: number, y: number) =>
  svgText(text, { x, y, size: 54, bold: true, anchor: "middle" });

/** A number in a ring, and the line from it to what it names. */
function mark(number: number, at: readonly [number, number], to: readonly [number, number]) {
  const [x, y] = at;
  return (
    line(x, y, to[0], to[1], 3) +
    circle(x, y, 24, PAPER) +
    svgText(String(number), { x, y: y + 12, size: 34, bold: true, anchor: "middle" })
  );
}

function clamp(x: number): string {
  return box(x - 34, 118, 68, 34, GREY) + circle(x + 46, 135, 13, PAPER);
}

function batteryPosts(): string {
  return (
    box(90, 170, 400, 200) +
    box(146, 110, 36, 60, PAPER) +
    box(398, 110, 36, 60, PAPER) +
    clamp(164) +
    clamp(416) +
    sign("+", 164, 250) +
    sign("−", 416, 250) +
    curve("M120 135C60 135 40 200 30 400", CABLE) +
    curve("M470 135C520 135 540 220 545 400", CABLE) +
    mark(1, [210, 50], [168, 108]) +
    mark(2, [330, 90], [390, 134]) +
    mark(3, [500, 60], [505, 150])
  );
}

function earthStrap(): string {
  const braid = Array.from({ length: 7 }, (_, i) =>
    line(285 + i * 24, 268 + i * 8, 300 + i * 24, 300 + i * 8, 3),
  ).join("");
  return (
    box(40, 120, 170, 120) +
    sign("−", 160, 200) +
    box(140, 84, 30, 36) +
    curve("M155 84C155 30 260 40 262 250", CABLE) +
    box(440, 150, 120, 170, GREY) +
    line(10, 350, 570, 350, 14) +
    curve("M262 262C330 300 380 330 452 318", CABLE * 2) +
    braid +
    circle(262, 262, 15, PAPER) +
    circle(452, 318, 15, PAPER) +
    curve("M262 277L262 350", BOLD) +
    mark(1, [90, 40], [150, 90]) +
    mark(2, [200, 300], [252, 266]) +
    mark(3, [350, 210], [350, 292]) +
    mark(4, [520, 100], [510, 160])
  );
}

function fuse(x: number, isWhole: boolean): string {
  const wire = isWhole
    ? curve(`M${x + 22} 300C${x + 40} 262 ${x + 60} 262 ${x + 78} 300`, BOLD)
    : curve(`M${x + 22} 300C${x + 26} 284 ${x + 34} 276 ${x + 42} 272`, BOLD) +
      curve(`M${x + 62} 276C${x + 70} 280 ${x + 76} 290 ${x + 78} 300`, BOLD);
  return (
    box(x, 240, 100, 76) + wire + box(x + 12, 316, 20, 60, GREY) + box(x + 68, 316, 20, 60, GREY)
  );
}

function fuseBox(): string {
  const row = Array.from({ length: 6 }, (_, i) => box(70 + i * 52, 90, 36, 70, GREY)).join("");
  return (
    box(40, 60, 350, 130) +
    row +
    box(410, 60, 60, 130, GREY) +
    fuse(110, true) +
    fuse(350, false) +
    mark(1, [530, 40], [466, 70]) +
    mark(2, [60, 240], [112, 262]) +
    mark(3, [500, 240], [448, 264])
  );
}

function stopKnob(): string {
  return (
    box(60, 40, 150, 340, GREY) +
    curve("M210 130L330 130", 10) +
    circle(352, 130, 30, PAPER) +
    curve("M210 290L250 290", 10) +
    circle(272, 290, 30, PAPER) +
    curve("M400 130L480 130M456 108L482 130L456 152", BOLD) +
    curve("M480 290L330 290M354 268L330 290L354 312", BOLD) +
    mark(1, [352, 50], [352, 100]) +
    mark(2, [272, 380], [272, 322])
  );
}

function solenoid(): string {
  return (
    box(120, 220, 320, 130) +
    box(440, 240, 70, 90, GREY) +
    box(150, 110, 220, 80) +
    box(106, 120, 44, 18, GREY) +
    box(106, 162, 44, 18, GREY) +
    box(200, 84, 20, 26, GREY) +
    curve("M106 128C50 128 30 90 24 30", CABLE) +
    curve("M106 172C76 190 80 250 120 262", CABLE) +
    curve("M210 84C214 50 250 40 300 36", BOLD) +
    mark(1, [430, 130], [370, 150]) +
    mark(2, [290, 396], [290, 350]) +
    mark(3, [150, 40], [122, 118]) +
    mark(4, [330, 76], [222, 92])
  );
}

/** The part itself, close up, in a field 580 px wide and 420 px high. */
export const drawingDetails: Readonly<Record<Drawing, () => string>> = {
  "battery-posts": batteryPosts,
  "earth-strap": earthStrap,
  "fuse-box": fuseBox,
  "stop-knob": stopKnob,
  solenoid,
};
