import type { Problem, Result } from "../domain/result.ts";
import type { StockedPart } from "../domain/stock.ts";
import { MachineKindId } from "../domain/vocabulary.ts";
import { suggestion } from "./nearest-word.ts";
import { type Row, readTable } from "./table-text.ts";

const COLUMNS = ["part", "number", "stock", "shelf", "machines", "volts"] as const;
type Column = (typeof COLUMNS)[number];

const NEEDED: readonly Column[] = ["part", "number"];

interface Place {
  readonly file: string;
  readonly parts: ReadonlySet<string>;
}

type Cells = Readonly<Partial<Record<Column, string>>>;

function headOf(row: Row | undefined, file: string): Result<readonly Column[]> {
  const names = (row?.cells ?? []).map((cell) => cell.trim().toLowerCase());
  const found = names.map((name) => COLUMNS.find((column) => column === name));
  const says = `the first line names the columns: ${COLUMNS.join(", ")}.`;
  const missing = NEEDED.filter((column) => !found.includes(column));
  const columns = found.flatMap((column) => column ?? []);
  if (missing.length === 0 && columns.length === names.length) return { ok: true, value: columns };
  const strange = names.filter((_, i) => found[i] === undefined).map((name) => `"${name}"`);
  const what =
    missing.length > 0 ? `The column "${missing[0]}" is missing; ` : `${strange.join(", ")}: `;
  return { ok: false, problems: [{ file, line: row?.line ?? 1, says: what + says }] };
}

function kindsOf(text: string, problem: (says: string) => void): MachineKindId[] {
  return text
    .split(/[\s|]+/)
    .filter(Boolean)
    .flatMap((word) => {
      const kind = MachineKindId.safeParse(word);
      if (kind.success) return [kind.data];
      problem(`"${word}" is no kind of machine.${suggestion(word, MachineKindId.options)}`);
      return [];
    });
}

function countOf(
  text: string,
  column: Column,
  problem: (says: string) => void,
): number | undefined {
  if (text === "") return undefined;
  const number = Number(text.replace(",", "."));
  if (Number.isFinite(number) && number >= 0) return number;
  problem(`"${text}" under "${column}" is not a number of 0 or more.`);
  return undefined;
}

function stockedPart(cells: Cells, line: number, place: Place): Result<StockedPart> {
  const { file, parts } = place;
  const problems: Problem[] = [];
  const problem = (says: string) => void problems.push({ file, line, says });
  const { part = "", number = "", shelf = "" } = cells;
  if (!parts.has(part)) {
    problem(`"${part}" is no part of flows/shared/parts.yaml.${suggestion(part, [...parts])}`);
  }
  if (number === "") problem("Your own number of the part is missing.");
  const stock = countOf(cells.stock ?? "", "stock", problem) ?? 0;
  const volts = countOf(cells.volts ?? "", "volts", problem);
  const kinds = kindsOf(cells.machines ?? "", problem);
  if (problems.length > 0) return { ok: false, problems };
  const value = {
    ...{ part, number, stock, kinds },
    ...(shelf === "" ? {} : { shelf }),
    ...(volts === undefined ? {} : { volts }),
  };
  return { ok: true, value };
}

/**
 * Reads the shop's own part file: a table with commas or semicolons (RFC 4180) whose first line
 * names the columns. Every mistake comes back with its line.
 * @param parts ids of the generic parts
 */
export function parsePartFile(
  text: string,
  file: string,
  parts: ReadonlySet<string>,
): Result<readonly StockedPart[]> {
  const [first, ...rows] = readTable(text);
  const head = headOf(first, file);
  if (!head.ok) return head;
  const read = rows.map(({ cells, line }) => {
    const named = Object.fromEntries(
      head.value.map((column, i) => [column, (cells[i] ?? "").trim()]),
    );
    return stockedPart(named, line, { file, parts });
  });
  const problems = read.flatMap((one) => (one.ok ? [] : one.problems));
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, value: read.flatMap((one) => (one.ok ? [one.value] : [])) };
}
