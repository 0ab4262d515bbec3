import type { CircuitNetwork } from "../domain/circuit.ts";
import type { CircuitWish } from "../domain/paper.ts";
import { bundledFonts } from "./bundled-fonts.ts";
import { type CircuitPicture, drawCircuit, partsOfFault } from "./circuit-picture.ts";
import { INK, PAPER } from "./circuit-symbols.ts";
import { renderPng } from "./png.ts";
import { svgText } from "./svg.ts";
import { breakLines } from "./text-block.ts";

/** Drawn so many times larger than on paper: a phone shows photos some 1300 px wide. */
const ZOOM = 1.6;
const MARGIN = 24;
const TITLE = 24;
/** Type of the readings, px before zooming: as large as the drawing's width bears. */
const TEXT = 20;
const LINE = 1.3;
/** Lines of one reading at most. */
const MOST_LINES = 3;

/** The drawing of a circuit as it was wished for. */
export function wishedCircuit(circuit: CircuitNetwork, wish: CircuitWish<string>): CircuitPicture {
  const { fault, headings } = wish;
  return drawCircuit(circuit, {
    ...(fault === undefined ? {} : { marked: partsOfFault(circuit, fault) }),
    ...(headings === undefined ? {} : { headings }),
  });
}

/** What belongs to each number of the drawing: what the meter should show, or the place alone. */
export function numberedReadings(
  circuit: CircuitNetwork,
  { points }: Pick<CircuitPicture, "points">,
  { readings = [] }: Pick<CircuitWish<string>, "readings">,
): readonly string[] {
  const known = new Map(readings.map(({ point, words }) => [point, words]));
  const labels = new Map(circuit.testPoints.map(({ id, label }) => [id, label]));
  return points.flatMap(({ number, testPoints }) =>
    testPoints.map((id) => `${number}  ${known.get(id) ?? labels.get(id) ?? id}`),
  );
}

/** The circuit with its readings under it, as one picture. */
export function circuitCardSvg(
  circuit: CircuitNetwork,
  wish: CircuitWish<string>,
  rightToLeft: boolean,
): string {
  const drawn = wishedCircuit(circuit, wish);
  const { width } = drawn;
  const place = {
    x: rightToLeft ? width - MARGIN : MARGIN,
    anchor: rightToLeft ? "right" : "left",
    rightToLeft,
  } as const;
  const { regular } = bundledFonts();
  const shape = { font: regular, size: TEXT, width: width - 2 * MARGIN, lines: MOST_LINES };
  let y = MARGIN + TITLE;
  const title = svgText(wish.title, { ...place, y, size: TITLE, bold: true });
  const top = y + 8;
  y = top + drawn.height + MARGIN;
  const lines = numberedReadings(circuit, drawn, wish).flatMap((reading) => {
    const block = breakLines(reading, shape).map((text) => {
      const element = svgText(text, { ...place, y, size: TEXT });
      y += TEXT * LINE;
      return element;
    });
    y += 4;
    return block;
  });
  const height = y + MARGIN / 2;
  const picture = drawn.svg.replace("<svg ", `<svg x="0" y="${top}" `);
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width * ZOOM}" height="${height * ZOOM}" ` +
    `viewBox="0 0 ${width} ${height}"><rect width="${width}" height="${height}" fill="${PAPER}"/>` +
    `<g fill="${INK}">${title}${picture}${lines.join("")}</g></svg>`
  );
}

/** The same as PNG. */
export function drawCircuitCard(
  circuit: CircuitNetwork,
  wish: CircuitWish<string>,
  rightToLeft: boolean,
): Promise<Uint8Array> {
  return renderPng(circuitCardSvg(circuit, wish, rightToLeft));
}
