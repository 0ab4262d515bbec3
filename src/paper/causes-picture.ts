import type { CauseBar } from "../domain/paper.ts";
import { bundledFonts } from "./bundled-fonts.ts";
import { renderPng } from "./png.ts";
import { svgBox, svgText } from "./svg.ts";
import { breakLines } from "./text-block.ts";

/** The ranked causes as a picture; every text is already in the language of the reader. */
export interface CausesPicture {
  readonly title: string;
  /** Machine and complaint, in one line. */
  readonly subtitle?: string;
  readonly bars: readonly CauseBar<string>[];
  /** What the picture does not say, for instance how many causes it leaves out. */
  readonly note?: string;
  readonly rightToLeft: boolean;
}

/**
 * Sizes in px of a picture 1080 px wide. A phone shows it some 65 mm wide, where 50 px are type of
 * 3 mm: about the smallest that is read at arm's length (60 cm) in poor light.
 */
const WIDTH = 1080;
const MARGIN = 56;
const BORDER = 8;
const TITLE = 60;
const NAME = 50;
const REASON = 42;
const BAR = 40;
const SHARE_ROOM = 190;
const LINE = 1.28;
/** More would be a list to study, not a picture to look at. */
const MOST_BARS = 8;

const INK = "#000000";
const PAPER = "#ffffff";

/** Draws the picture: black on a white card of its own, so that it also stands on a dark ground. */
export async function drawCauses(picture: CausesPicture): Promise<Uint8Array> {
  return renderPng(causesSvg(picture));
}

export function causesSvg(picture: CausesPicture): string {
  const pen = createPen(picture.rightToLeft);
  pen.down(MARGIN + BORDER);
  pen.paragraph(picture.title, { size: TITLE, bold: true, lines: 2 });
  if (picture.subtitle) pen.paragraph(picture.subtitle, { size: REASON, lines: 2 });
  for (const bar of picture.bars.slice(0, MOST_BARS)) drawBar(bar, pen);
  if (picture.note) {
    pen.down(28);
    pen.paragraph(picture.note, { size: REASON, lines: 3 });
  }
  pen.down(MARGIN);
  return card(pen.height(), pen.elements);
}

function drawBar(bar: CauseBar<string>, pen: Pen): void {
  const share = Math.min(1, Math.max(0, Number.isFinite(bar.share) ? bar.share : 0));
  pen.down(36);
  pen.atFarEnd(bar.shareText, { size: NAME, bold: true });
  pen.paragraph(bar.name, { size: NAME, bold: true, lines: 2, room: INNER - SHARE_ROOM });
  pen.down(12);
  pen.bar(share, bar.hollow === true);
  if (bar.reason) {
    pen.down(6);
    pen.paragraph(bar.reason, { size: REASON, lines: 2 });
  }
}

const INNER = WIDTH - 2 * MARGIN;

interface Type {
  readonly size: number;
  readonly bold?: boolean;
}

interface Pen {
  readonly elements: string[];
  height(): number;
  down(pixels: number): void;
  paragraph(text: string, type: Type & { lines: number; room?: number }): void;
  /** Writes at the end of the line, without moving down. */
  atFarEnd(text: string, type: Type): void;
  bar(share: number, hollow: boolean): void;
}

/** Writes downwards from the edge at which a line begins: the left, or the right. */
function createPen(rightToLeft: boolean): Pen {
  const elements: string[] = [];
  let y = 0;
  const near = { x: rightToLeft ? WIDTH - MARGIN : MARGIN, anchor: anchorOf(rightToLeft) };
  const far = { x: rightToLeft ? MARGIN : WIDTH - MARGIN, anchor: anchorOf(!rightToLeft) };
  const baseline = (size: number) => y + size;
  return {
    elements,
    height: () => y,
    down: (pixels) => {
      y += pixels;
    },
    paragraph: (text, { size, bold = false, lines, room = INNER }) => {
      const { regular, bold: heavy } = bundledFonts();
      const shape = { font: bold ? heavy : regular, size, width: room, lines };
      for (const line of breakLines(text, shape)) {
        elements.push(svgText(line, { ...near, y: baseline(size), size, bold, rightToLeft }));
        y += size * LINE;
      }
    },
    atFarEnd: (text, { size, bold = false }) => {
      elements.push(svgText(text, { ...far, y: baseline(size), size, bold, rightToLeft }));
    },
    bar: (share, hollow) => {
      const width = INNER * share;
      const x = rightToLeft ? WIDTH - MARGIN - width : MARGIN;
      const frame = { x: MARGIN, y, width: INNER, height: BAR };
      elements.push(svgBox({ ...frame, stroke: INK, strokeWidth: 2 }));
      const fill = hollow ? "url(#stripes)" : INK;
      elements.push(svgBox({ ...frame, x, width, fill, stroke: INK, strokeWidth: hollow ? 4 : 0 }));
      y += BAR;
    },
  };
}

function anchorOf(right: boolean): "left" | "right" {
  return right ? "right" : "left";
}

function card(height: number, elements: readonly string[]): string {
  const tall = Math.ceil(height + BORDER);
  const edge = BORDER / 2;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${tall}"`,
    ` viewBox="0 0 ${WIDTH} ${tall}">`,
    '<defs><pattern id="stripes" width="14" height="14" patternUnits="userSpaceOnUse"',
    ` patternTransform="rotate(45)"><rect width="4" height="14" fill="${INK}"/></pattern></defs>`,
    svgBox({ x: 0, y: 0, width: WIDTH, height: tall, fill: PAPER }),
    svgBox({
      x: edge,
      y: edge,
      width: WIDTH - BORDER,
      height: tall - BORDER,
      stroke: INK,
      strokeWidth: BORDER,
    }),
    `<g fill="${INK}">${elements.join("")}</g>`,
    "</svg>",
  ].join("");
}
