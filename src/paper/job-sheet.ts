import PDFDocument from "pdfkit";
import type { CircuitNetwork } from "../domain/circuit.ts";
import type { JobSheet, SheetLine } from "../domain/paper.ts";
import { bundledFonts } from "./bundled-fonts.ts";
import { numberedReadings, wishedCircuit } from "./circuit-card.ts";
import { drawableText } from "./glyphs.ts";
import { renderPng } from "./png.ts";
import { createScribe, type Scribe } from "./scribe.ts";

export interface SheetParts {
  readonly sheet: JobSheet<string>;
  readonly rightToLeft: boolean;
  /** The starting circuit that the sheet names; absent: it is left out. */
  readonly circuit?: CircuitNetwork;
}

/** A4 in points, and the least edge that every office printer can print to. */
const PAGE = { width: 595.28, height: 841.89, margin: 36 } as const;
const INNER = PAGE.width - 2 * PAGE.margin;
const TITLE = 15;
const HEADING = 11;
const TEXT = 9;
const NOTE = 7.5;
/** Height of a cause's bar. */
const BAR = 6;
/** Pixels of the circuit's drawing for each of its own. */
const SHARP = 2;
const GAP = 12;
/** A sheet and its back; more is not taken along. */
const MOST_PAGES = 2;
/** The type's sizes that are tried; the least is seven points, which is still read in the hand. */
const SCALES = [1, 0.9, 0.8] as const;

const marks = { step: "", tick: "☐ ", turn: "→ ", caution: "⚠ ", quote: "" } as const;

function marked({ words, style }: SheetLine<string>, count: number): string {
  if (style === "step") return `${count}. ${words}`;
  if (style === "quote") return `“${words}”`;
  return (style === undefined ? "" : marks[style]) + words;
}

async function writeLines(scribe: Scribe, lines: readonly SheetLine<string>[]): Promise<void> {
  let steps = 0;
  for (const line of lines) {
    if (line.style === "step") steps += 1;
    const indent = line.style === "turn" ? 14 : 0;
    const bold = line.style === "caution";
    await scribe.write(marked(line, steps), { size: TEXT, bold, indent });
  }
}

async function drawCauses(scribe: Scribe, { sheet }: SheetParts): Promise<void> {
  const { causes } = sheet;
  if (causes === undefined || causes.bars.length === 0) return;
  await scribe.write(causes.title, { size: HEADING, bold: true, above: 6, keepWith: 3 * TEXT });
  for (const { name, share, shareText, reason, hollow = false } of causes.bars) {
    await scribe.write(`${shareText}  ${name}`, { size: TEXT, bold: true, keepWith: BAR + NOTE });
    scribe.bar(share, { height: BAR, hollow });
    if (reason !== undefined) await scribe.write(reason, { size: NOTE });
  }
}

/** The circuit as wide as the page, so that its words can be read, with its readings under it. */
async function drawCircuitOf(scribe: Scribe, parts: SheetParts): Promise<void> {
  const { circuit, sheet } = parts;
  if (circuit === undefined || sheet.circuit === undefined) return;
  const drawn = wishedCircuit(circuit, sheet.circuit);
  const height = (INNER / drawn.width) * drawn.height;
  const heading = { size: HEADING, bold: true, above: 6, keepWith: height + GAP };
  await scribe.write(sheet.circuit.title, heading);
  const png = await renderPng(enlarged(drawn.svg, drawn.width, drawn.height));
  scribe.pictures([png], { width: INNER, height, gap: GAP });
  for (const note of numberedReadings(circuit, drawn, sheet.circuit)) {
    await scribe.write(note, { size: NOTE });
  }
}

/** The same drawing with more pixels: sharp on paper. */
const enlarged = (svg: string, width: number, height: number) =>
  svg
    .replace(`width="${width}"`, `width="${SHARP * width}"`)
    .replace(`height="${height}"`, `height="${SHARP * height}"`);

/** Everything in its order. */
async function drawSheet(scribe: Scribe, parts: SheetParts): Promise<void> {
  const { sheet } = parts;
  await scribe.write(sheet.title, { size: TITLE, bold: true });
  await writeLines(scribe, sheet.head);
  await drawCauses(scribe, parts);
  for (const { heading, lines } of sheet.sections) {
    if (lines.length === 0) continue;
    await scribe.write(heading, { size: HEADING, bold: true, above: 6, keepWith: 2 * TEXT });
    await writeLines(scribe, lines);
  }
  await drawCircuitOf(scribe, parts);
}

interface Printed {
  readonly bytes: Uint8Array;
  readonly pages: number;
}

/** @param scale of all type, in (0, 1] */
async function printed(parts: SheetParts, scale: number): Promise<Printed> {
  const { sheet, rightToLeft } = parts;
  const [regular = "", bold = ""] = bundledFonts().files;
  const info = { Title: drawableText(sheet.title), CreationDate: new Date(sheet.made) };
  const document = new PDFDocument({
    size: [PAGE.width, PAGE.height],
    margin: PAGE.margin,
    info,
    font: regular,
  });
  const chunks: Uint8Array[] = [];
  let pages = 1;
  document.on("pageAdded", () => {
    pages += 1;
  });
  document.on("data", (chunk: Uint8Array) => chunks.push(chunk));
  const ended = new Promise<void>((resolve, reject) => {
    document.on("end", resolve);
    document.on("error", reject);
  });
  document.registerFont("regular", regular);
  document.registerFont("bold", bold);
  const shape = { margin: PAGE.margin, inner: INNER, rightToLeft, scale };
  await drawSheet(createScribe(document, shape), parts);
  document.end();
  await ended;
  return { bytes: Buffer.concat(chunks), pages };
}

/**
 * The job as a PDF, A4, black and white: head, the causes as bars, the sections in their order, then
 * the circuit with its readings. Where much is known the type is set smaller, so that it stays on
 * two pages as long as it can be read. Text can be copied out of it, except in scripts that run from
 * the right.
 */
export async function jobSheetPdf(parts: SheetParts): Promise<Uint8Array> {
  for (const scale of SCALES) {
    const { bytes, pages } = await printed(parts, scale);
    if (pages <= MOST_PAGES) return bytes;
  }
  return (await printed(parts, SCALES[0])).bytes;
}
