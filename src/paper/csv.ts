import type { Table } from "../domain/paper.ts";

type Cell = Table["rows"][number][number];

/**
 * A text that begins with one of these is a formula to a spreadsheet, and a formula can call out.
 * Source: OWASP, "CSV Injection".
 */
const FORMULA = /^[=+\-@\t\r\n＝＋－＠]/;

function written(cell: Cell): string {
  if (cell === null) return "";
  if (typeof cell === "number") return Number.isFinite(cell) ? String(cell) : "";
  // An apostrophe in front makes it plain text; spreadsheets do not show it.
  const safe = FORMULA.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]|^'|^\s|\s$/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/**
 * A table as CSV (RFC 4180), with a mark in front by which spreadsheets know UTF-8.
 * @param rows the first one names the columns
 */
export function csvText(rows: Table["rows"]): string {
  return `\uFEFF${rows.map((row) => `${row.map(written).join(",")}\r\n`).join("")}`;
}
