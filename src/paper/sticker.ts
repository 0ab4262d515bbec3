import PDFDocument from "pdfkit";
import { encode } from "uqr";
import type { MachineSticker } from "../domain/paper.ts";
import { bundledFonts } from "./bundled-fonts.ts";
import { renderPng } from "./png.ts";
import { svgBox, svgText } from "./svg.ts";
import { breakLines } from "./text-block.ts";

/** The card, px: A6 upright at 8 px a millimetre. */
const [WIDTH, HEIGHT] = [840, 1184];
const MARGIN = 56;
const [TITLE, TEXT] = [60, 40];
const LEADING = 1.25;
const TITLE_LINES = 3;
const TEXT_LINES = 3;
/** ISO/IEC 18004: four modules of white around the code. */
const QUIET = 4;
/** A6 in points. */
const PAGE = [297.64, 419.53] as const;

/**
 * The code as boxes. Error correction H: about 30 % of it may be lost to mud and scratches
 * (ISO/IEC 18004).
 */
function codeBoxes(link: string, place: { x: number; y: number; width: number }): string {
  const { data, size } = encode(link, { ecc: "H", border: QUIET });
  const step = place.width / size;
  return data
    .flatMap((row, y) =>
      row.flatMap((isDark, x) =>
        isDark
          ? [
              svgBox({
                ...{ x: place.x + x * step, y: place.y + y * step, fill: "#000000" },
                ...{ width: step + 0.3, height: step + 0.3 },
              }),
            ]
          : [],
      ),
    )
    .join("");
}

/** The sticker as a drawing: the machine's name, the code, and what to do with it. */
export function stickerSvg(sticker: MachineSticker<string>, rightToLeft: boolean): string {
  const { regular, bold } = bundledFonts();
  const room = WIDTH - 2 * MARGIN;
  let y = MARGIN;
  const paragraph = (text: string, size: number, isTitle: boolean) => {
    const font = isTitle ? bold : regular;
    const lines = isTitle ? TITLE_LINES : TEXT_LINES;
    return breakLines(text, { font, size, width: room, lines }).map((line) => {
      y += size * LEADING;
      return svgText(line, {
        ...{ x: WIDTH / 2, y, size, bold: isTitle, anchor: "middle", rightToLeft },
      });
    });
  };
  const title = paragraph(sticker.title, TITLE, true);
  y += 12;
  const code = codeBoxes(sticker.link, { x: MARGIN, y, width: room });
  y += room;
  const lines = sticker.lines.flatMap((line) => paragraph(line, TEXT, false));
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}" ` +
    `viewBox="0 0 ${WIDTH} ${HEIGHT}"><rect width="${WIDTH}" height="${HEIGHT}" fill="#ffffff"/>` +
    `<g fill="#000000">${title.join("")}</g>${code}<g fill="#000000">${lines.join("")}</g></svg>`
  );
}

/** The sticker as a page to print, A6. */
export async function stickerPdf(
  sticker: MachineSticker<string>,
  rightToLeft: boolean,
): Promise<Uint8Array> {
  const png = await renderPng(stickerSvg(sticker, rightToLeft));
  const document = new PDFDocument({ size: [...PAGE], margin: 0, info: { Title: sticker.title } });
  const chunks: Uint8Array[] = [];
  document.on("data", (chunk: Uint8Array) => chunks.push(chunk));
  const ended = new Promise<void>((resolve, reject) => {
    document.on("end", resolve);
    document.on("error", reject);
  });
  document.image(Buffer.from(png), 0, 0, { width: PAGE[0], height: PAGE[1] });
  document.end();
  await ended;
  return Buffer.concat(chunks);
}
