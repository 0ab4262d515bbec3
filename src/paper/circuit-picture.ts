import type { CircuitNetwork } from "../domain/circuit.ts";
import { bundledFonts } from "./bundled-fonts.ts";
import { type NumberedPoint, numberPoints, shareLetters } from "./circuit-marks.ts";
import { type CircuitRow, circuitRows, type PlacedPart } from "./circuit-rows.ts";
import { circle, drawSymbol, earthSign, INK, LINE, line, PAPER } from "./circuit-symbols.ts";
import { svgText } from "./svg.ts";
import { breakLines } from "./text-block.ts";

/** What may be shown besides the circuit itself. */
export interface CircuitPictureWishes {
  /** Parts to be marked: what a fault changes. */
  readonly marked?: readonly string[];
  /** Headings of the three rows. */
  readonly headings?: Readonly<Record<CircuitRow["kind"], string>>;
}

export interface CircuitPicture {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  readonly points: readonly NumberedPoint[];
}

const MARGIN = 24;
const CELL = { cable: 70, joint: 70, other: 86 } as const;
const ROW = 120;
const HEADING = 15;
const LABEL = 12;
/** Room between the labels of two parts. */
const LABEL_GAP = 8;
const LABEL_LINES = 3;
/** Room left of a row for its letter or its earth sign. */
const LEAD = 34;

const HEADINGS = { supply: "Supply", control: "Control", power: "Power" } as const;

/**
 * Draws a starting circuit: supply, control and power from top to bottom, each row read from left
 * to right. Points that rows share carry the same letter; the earthed post the earth sign; places
 * for the red probe a number. Any circuit that loads can be drawn.
 */
export function drawCircuit(
  network: CircuitNetwork,
  wishes: CircuitPictureWishes = {},
): CircuitPicture {
  const rows = circuitRows(network);
  const points = numberPoints(network.testPoints, rows);
  const sheet: Sheet = {
    network,
    wishes,
    letters: shareLetters(rows, network.reference),
    numbers: new Map(points.map(({ point, number }) => [point, number])),
    drawn: new Set(),
  };
  const width = Math.max(...rows.map(widthOf)) + 2 * MARGIN;
  let y = MARGIN;
  const body = shelvesOf(rows, width - 2 * MARGIN).map(({ kind, first, shelf }) => {
    const heading = first ? headingOf(kind, y, wishes) : "";
    if (first) y += HEADING + 8;
    let x = MARGIN;
    const drawn = shelf.map((row) => {
      const here = x;
      x += widthOf(row);
      return drawRow(row, { x: here, y: y + 48 }, sheet);
    });
    y += ROW;
    return heading + drawn.join("");
  });
  const height = y + MARGIN / 2;
  const svg =
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" ` +
    `viewBox="0 0 ${width} ${height}">` +
    `<rect width="${width}" height="${height}" fill="${PAPER}"/>${body.join("")}</svg>`;
  return {
    svg,
    width,
    height,
    points: points.map(({ number, testPoints }) => ({ number, testPoints })),
  };
}

/** Parts to mark for a fault of the circuit: what it changes, actuators by their contact. */
export function partsOfFault(network: CircuitNetwork, fault: string): readonly string[] {
  const changes = network.faults.find(({ id }) => id === fault)?.changes ?? [];
  const motor = network.parts.find(({ sort }) => sort === "motor")?.id;
  const parts = changes
    .flatMap(({ settings }) => settings.map(({ part }) => part))
    .map((part) => {
      if (part === "engine" || part === "drive") return motor ?? part;
      return network.actuators.find(({ id }) => id === part)?.contact ?? part;
    });
  return [...new Set(parts)].filter((id) => network.parts.some((part) => part.id === id));
}

interface Shelf {
  readonly kind: CircuitRow["kind"];
  /** True where its kind begins. */
  readonly first: boolean;
  readonly shelf: readonly CircuitRow[];
}

/** Rows of one kind stand side by side as long as there is room: a drawing half empty is too small. */
function shelvesOf(rows: readonly CircuitRow[], room: number): readonly Shelf[] {
  const shelves: { kind: CircuitRow["kind"]; first: boolean; shelf: CircuitRow[] }[] = [];
  for (const row of rows) {
    const last = shelves.at(-1);
    const taken = last?.shelf.reduce((sum, one) => sum + widthOf(one), 0) ?? 0;
    if (last?.kind === row.kind && taken + widthOf(row) <= room) last.shelf.push(row);
    else shelves.push({ kind: row.kind, first: last?.kind !== row.kind, shelf: [row] });
  }
  return shelves;
}

interface Sheet {
  readonly network: CircuitNetwork;
  readonly wishes: CircuitPictureWishes;
  readonly letters: ReadonlyMap<string, string>;
  readonly numbers: ReadonlyMap<string, number>;
  /** Points whose number stands already. */
  readonly drawn: Set<string>;
}

function headingOf(kind: CircuitRow["kind"], y: number, wishes: CircuitPictureWishes): string {
  const text = (wishes.headings ?? HEADINGS)[kind];
  return svgText(text, { x: MARGIN, y: y + HEADING, size: HEADING, bold: true });
}

function drawRow(
  { parts }: CircuitRow,
  { x: left, y }: { readonly x: number; readonly y: number },
  sheet: Sheet,
): string {
  let x = left + LEAD;
  const [first] = parts;
  const start = first === undefined ? "" : drawPoint(first.from, x, y, sheet, "start");
  const cells = parts.map((placed, i) => {
    const from = x;
    x += cellOf(placed);
    const cell = drawPart(placed, { y, left: from, right: x }, sheet);
    return cell + drawPoint(placed.to, x, y, sheet, i === parts.length - 1 ? "end" : "between");
  });
  return start + cells.join("");
}

function drawPart(
  { part, from }: PlacedPart,
  place: { readonly y: number; readonly left: number; readonly right: number },
  { network, wishes }: Sheet,
): string {
  const { y, left, right } = place;
  const moved = network.actuators.some(({ contact }) => contact === part.id);
  const mark = wishes.marked?.includes(part.id) === true ? markAround(y, left, right) : "";
  const lines = wrap(part.label, right - left).map((text, i) =>
    svgText(text, {
      ...{ x: (left + right) / 2, y: y + 34 + i * (LABEL + 2), size: LABEL },
      anchor: "middle",
    }),
  );
  const plusRight = (from === part.from) === (network.earth === "negative");
  return mark + drawSymbol(part, { ...place, moved, plusRight }) + lines.join("");
}

/** Around symbol and label, below the numbers: as wide as the label may be. */
function markAround(y: number, left: number, right: number): string {
  return (
    `<rect x="${left + 1}" y="${y - 20}" width="${right - left - 2}" height="88" rx="6" ` +
    `fill="none" stroke="${INK}" stroke-width="${2 * LINE}" stroke-dasharray="7 4"/>`
  );
}

/** A point: its letter where rows meet, the earth sign, and the number of its readings. */
function drawPoint(
  point: string,
  x: number,
  y: number,
  sheet: Sheet,
  where: "start" | "between" | "end",
): string {
  const { letters, numbers, drawn, network } = sheet;
  let out = "";
  if (point === network.reference) {
    const at = where === "end" ? x + 14 : x - 14;
    out += line(Math.min(x, at), y, Math.max(x, at), y) + earthSign(at, y);
  } else {
    const letter = letters.get(point);
    if (letter !== undefined) out += letterAt(letter, x, y, where);
  }
  const number = numbers.get(point);
  if (number === undefined || drawn.has(point)) return out;
  drawn.add(point);
  const badge = { x, y: y - 32 };
  return (
    out +
    line(x, y, x, y - 24, 1) +
    `<circle cx="${badge.x}" cy="${badge.y}" r="9" fill="${INK}"/>` +
    svgText(String(number), {
      ...badge,
      y: badge.y + 4,
      size: LABEL,
      bold: true,
      anchor: "middle",
    }).replace("<text ", `<text fill="${PAPER}" `)
  );
}

function letterAt(letter: string, x: number, y: number, where: "start" | "between" | "end") {
  if (where === "between") {
    return (
      circle(x, y, 3, INK) +
      svgText(letter, { x: x - 6, y: y - 6, size: LABEL, bold: true, anchor: "right" })
    );
  }
  const at = where === "start" ? x - 14 : x + 14;
  return (
    line(Math.min(x, at), y, Math.max(x, at), y) +
    circle(at, y, 9, PAPER) +
    svgText(letter, { x: at, y: y + 4, size: LABEL, bold: true, anchor: "middle" })
  );
}

function widthOf({ parts }: CircuitRow): number {
  return parts.reduce((sum, placed) => sum + cellOf(placed), 2 * LEAD);
}

/** As wide as the longest word of its label, or two parts' labels would run together. */
function cellOf({ part: { sort, label } }: PlacedPart): number {
  const usual = sort === "cable" || sort === "joint" ? CELL[sort] : CELL.other;
  return Math.max(usual, Math.ceil(longestWord(label)) + LABEL_GAP);
}

function longestWord(label: string): number {
  const { regular } = bundledFonts();
  return Math.max(...label.split(" ").map((word) => regular.width(word) * LABEL));
}

/** Broken between words to what its part is wide. */
function wrap(label: string, room: number): readonly string[] {
  const { regular } = bundledFonts();
  const width = Math.max(room - LABEL_GAP, longestWord(label) + 1);
  return breakLines(label, { font: regular, size: LABEL, width, lines: LABEL_LINES });
}
