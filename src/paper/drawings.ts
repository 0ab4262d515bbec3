import type { Drawing, MachineKindId } from "../domain/vocabulary.ts";
import { INK, PAPER } from "./circuit-symbols.ts";
import { drawingDetails } from "./drawing-details.ts";
import { machineView } from "./drawing-machines.ts";
import { renderPng } from "./png.ts";

/** A card as wide as a phone shows sharply. */
const WIDTH = 960;
const HEIGHT = 500;
const MARGIN = 14;

/**
 * A card that shows a part close up, its pieces numbered, and beside it where to look for it on a
 * machine of that kind. Black on white with a frame, so that it reads on light and dark ground; no
 * words, so that it needs no translation: they stand under it.
 */
export function drawingSvg(drawing: Drawing, kind: MachineKindId): string {
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}" ` +
    `viewBox="0 0 ${WIDTH} ${HEIGHT}">` +
    `<rect width="${WIDTH}" height="${HEIGHT}" fill="${PAPER}"/>` +
    `<rect x="${MARGIN / 2}" y="${MARGIN / 2}" width="${WIDTH - MARGIN}" ` +
    `height="${HEIGHT - MARGIN}" fill="none" stroke="${INK}" stroke-width="4"/>` +
    `<g transform="translate(30 140)">${machineView(kind, drawing)}</g>` +
    `<path d="M350 40V460" stroke="${INK}" stroke-width="2"/>` +
    `<g transform="translate(366 40)">${drawingDetails[drawing]()}</g></svg>`
  );
}

/** The card as PNG. */
export function drawDrawing(drawing: Drawing, kind: MachineKindId): Promise<Uint8Array> {
  return renderPng(drawingSvg(drawing, kind));
}
