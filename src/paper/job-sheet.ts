import PDFDocument from "pdfkit";
import type { CircuitNetwork } from "../domain/circuit.ts";
import type { JobSheet, SheetLine } from "../domain/paper.ts";
import { bundledFonts } from "./bundled-fonts.ts";
import { causesSvg } from "./causes-picture.ts";
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
/** Pictures share one row, so that the sheet stays on one or two pages. */
const PICTURE_HEIGHT = 230;
const GAP = 12;

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

interface Pictures {
  readonly pngs: readonly Uint8Array[];
  /** What the numbers of the circuit stand for; empty where none is drawn. */
  readonly notes: readonly string[];
}

async function pictures({ sheet, circuit, rightToLeft }: SheetParts): Promise<Pictures> {
  const pngs: Uint8Array[] = [];
  if (sheet.causes !== undefined && sheet.causes.bars.length > 0) {
    pngs.push(await renderPng(causesSvg({ ...sheet.causes, rightToLeft })));
  }
  if (circuit === undefined || sheet.circuit === undefined) return { pngs, notes: [] };
  const drawn = wishedCircuit(circuit, sheet.circuit);
  pngs.push(await renderPng(drawn.svg));
  return { pngs, notes: numberedReadings(circuit, drawn, sheet.circuit) };
}

async function drawPictures(scribe: Scribe, parts: SheetParts): Promise<void> {
  const { pngs, notes } = await pictures(parts);
  if (pngs.length === 0) return;
  const width = (INNER - GAP * (pngs.length - 1)) / pngs.length;
  scribe.pictures(pngs, { width, height: PICTURE_HEIGHT, gap: GAP });
  const { circuit } = parts.sheet;
  if (notes.length === 0 || circuit === undefined) return;
  await scribe.write(circuit.title, { size: TEXT, bold: true, keepWith: 2 * TEXT });
  for (const note of notes) await scribe.write(note, { size: NOTE });
}

/**
 * The job as a PDF, A4, black and white: head, pictures of the causes and of the circuit, then the
 * sections in their order. Text can be copied out of it, except in scripts that run from the right.
 */
export async function jobSheetPdf(parts: SheetParts): Promise<Uint8Array> {
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
  document.on("data", (chunk: Uint8Array) => chunks.push(chunk));
  const ended = new Promise<void>((resolve, reject) => {
    document.on("end", resolve);
    document.on("error", reject);
  });
  document.registerFont("regular", regular);
  document.registerFont("bold", bold);
  const scribe = createScribe(document, { margin: PAGE.margin, inner: INNER, rightToLeft });
  await scribe.write(sheet.title, { size: TITLE, bold: true });
  await writeLines(scribe, sheet.head);
  await drawPictures(scribe, parts);
  for (const { heading, lines } of sheet.sections) {
    if (lines.length === 0) continue;
    await scribe.write(heading, { size: HEADING, bold: true, above: 6, keepWith: 2 * TEXT });
    await writeLines(scribe, lines);
  }
  document.end();
  await ended;
  return Buffer.concat(chunks);
}
