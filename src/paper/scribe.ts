import { bundledFonts } from "./bundled-fonts.ts";
import { drawableText } from "./glyphs.ts";
import { renderPng } from "./png.ts";
import { svgText } from "./svg.ts";
import { breakLines } from "./text-block.ts";

/** Line height ÷ type size. */
const LEADING = 1.25;
/** Lines of one text at most: no text of ours is longer. */
const MOST_LINES = 40;
/** Pixels a point in texts that are drawn as pictures: sharp on paper. */
const SHARP = 4;
/** Points of room under a bar. */
const BAR_GAP = 2;

export interface TextStyle {
  readonly size: number;
  readonly bold?: boolean;
  /** Points from the edge at which a line begins. */
  readonly indent?: number;
  /** Points of room above. */
  readonly above?: number;
  /** Points that must still fit below on the same page. */
  readonly keepWith?: number;
}

/** Writes downwards on the pages of a document. */
export interface Scribe {
  write(text: string, style: TextStyle): Promise<void>;
  /** A bar as long as a share in [0, 1] of the line, in a frame; hollow: its outline alone. */
  bar(share: number, shape: { readonly height: number; readonly hollow: boolean }): void;
  /** Pictures side by side, each fitted into its room. */
  pictures(
    pngs: readonly Uint8Array[],
    room: { readonly width: number; readonly height: number; readonly gap: number },
  ): void;
}

export interface ScribeShape {
  readonly margin: number;
  /** Room for a line, points. */
  readonly inner: number;
  /** The PDF library sets letters from the left only, so such texts are drawn as pictures. */
  readonly rightToLeft: boolean;
  /** Of all sizes of type, in (0, 1]; 1 when missing. */
  readonly scale?: number;
}

export function createScribe(document: PDFKit.PDFDocument, shape: ScribeShape): Scribe {
  const { margin, inner, rightToLeft, scale = 1 } = shape;
  let y = margin;

  function makeRoom(height: number): void {
    if (y + height <= document.page.height - margin) return;
    document.addPage();
    y = margin;
  }

  async function drawn(line: string, size: number, bold: boolean): Promise<void> {
    const [width, height] = [inner * SHARP, size * LEADING * SHARP];
    const words = svgText(line, {
      ...{ x: width, y: size * SHARP, size: size * SHARP, bold },
      ...{ anchor: "right", rightToLeft: true },
    });
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">${words}</svg>`;
    const png = Buffer.from(await renderPng(svg));
    document.image(png, margin, y, { width: inner, height: size * LEADING });
  }

  return {
    async write(text, { bold = false, indent = 0, above = 0, keepWith = 0, ...style }) {
      const size = style.size * scale;
      const { regular, bold: heavy } = bundledFonts();
      const font = bold ? heavy : regular;
      const width = inner - indent;
      y += above;
      for (const line of breakLines(drawableText(text), { font, size, width, lines: MOST_LINES })) {
        makeRoom(size * LEADING + keepWith);
        if (rightToLeft) await drawn(line, size, bold);
        else {
          const at = document
            .font(bold ? "bold" : "regular")
            .fontSize(size)
            .fillColor("black");
          at.text(line, margin + indent, y, { lineBreak: false });
        }
        y += size * LEADING;
      }
    },
    bar(share, { height, hollow }) {
      makeRoom(height + BAR_GAP);
      const filled = inner * Math.min(1, Math.max(0, share));
      const x = rightToLeft ? margin + inner - filled : margin;
      document.lineWidth(0.5).rect(margin, y, inner, height).stroke("black");
      if (hollow) document.lineWidth(1).rect(x, y, filled, height).stroke("black");
      else document.rect(x, y, filled, height).fill("black");
      y += height + BAR_GAP;
    },
    pictures(pngs, { width, height, gap }) {
      makeRoom(height + gap);
      y += gap / 2;
      for (const [index, png] of pngs.entries()) {
        const x = margin + index * (width + gap);
        document.image(Buffer.from(png), x, y, { fit: [width, height], align: "center" });
      }
      y += height + gap / 2;
    },
  };
}
