import PDFDocument from "pdfkit";
import type { CircuitNetwork } from "../domain/circuit.ts";
import type { JobSheet, SheetLine } from "../domain/paper.ts";
import { bundledFonts } from "./bundled-fonts.ts";
import { causesSvg } from "./causes-picture.ts";
import { drawCircuit, partsOfFault } from "./circuit-picture.ts";
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

interface Picture {
  readonly png: Uint8Array;
  readonly note?: string;
}

async function pictures({ sheet, circuit, rightToLeft }: SheetParts): Promise<Picture[]> {
  const found: Picture[] = [];
  if (sheet.causes !== undefined && sheet.causes.bars.length > 0) {
    const { title, bars } = sheet.causes;
    found.push({ png: await renderPng(causesSvg({ title, bars, rightToLeft })) });
  }
  if (circuit !== undefined && sheet.circuit !== undefined) {
    const { fault, title } = sheet.circuit;
    const wishes = fault === undefined ? {} : { marked: partsOfFault(circuit, fault) };
    const { svg, points } = drawCircuit(circuit, wishes);
    const labels = new Map(circuit.testPoints.map(({ id, label }) => [id, label]));
    const named = points.map(({ number, testPoints }) => {
      const [first = ""] = testPoints;
      return `${number} ${labels.get(first) ?? first}`;
    });
    const note = named.length === 0 ? title : `${title}: ${named.join(" · ")}`;
    found.push({ png: await renderPng(svg), note });
  }
  return found;
}

async function drawPictures(scribe: Scribe, parts: SheetParts): Promise<void> {
  const all = await pictures(parts);
  if (all.length === 0) return;
  const width = (INNER - GAP * (all.length - 1)) / all.length;
  scribe.pictures(
    all.map(({ png }) => png),
    { width, height: PICTURE_HEIGHT, gap: GAP },
  );
  for (const { note } of all)
    if (note !== undefined) await scribe.write(note, { size: TEXT - 1.5 });
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
