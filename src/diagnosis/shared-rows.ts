import type { Knowledge, Row } from "../domain/knowledge.ts";
import { OutOfRange } from "../domain/result.ts";
import { stages } from "../domain/vocabulary.ts";
import type { Combining, Order } from "./combine-faults.ts";
import type { Hypotheses, SharedRows } from "./model.ts";

/** Where the rows of one observation or latent state come from. */
export interface RowSource {
  readonly id: string;
  readonly width: number;
  readonly usual: Row;
  /** The row that a fault declares; absent where it does not touch the observation. */
  rowOf(fault: string): Row | undefined;
  readonly combining: Combining;
  /** Last step from a declared row to the row used, e.g. two stages into one. */
  readonly finish?: (row: Row) => Row;
  /** True where the entries are separate chances instead of one distribution. */
  readonly separate?: boolean;
}

/**
 * One row for each known hypothesis, stored once where hypotheses share it: the usual row where
 * nothing touches the observation, the fault's where one does, the combined one where both do.
 * @throws OutOfRange naming fault and observation, for a row that is no distribution
 */
export function shareRows(
  knowledge: Knowledge,
  hypotheses: Hypotheses,
  source: RowSource,
): SharedRows {
  const table = new RowTable(source);
  const declared = hypotheses.faults.map((fault) => {
    const row = source.rowOf(fault);
    if (row !== undefined) checkRow(`${fault} ${source.id}`, row, source);
    return row;
  });
  const alone = declared.map((row) =>
    row === undefined ? table.usual : table.add(source.combining.alone(row)),
  );
  const stageOf = hypotheses.faults.map((id) =>
    stages.indexOf(knowledge.faults.get(id)?.blocks ?? "none"),
  );
  const rowOf = new Int32Array(hypotheses.count - 1);
  for (let h = 1; h < rowOf.length; h++) {
    const a = hypotheses.first[h] ?? -1;
    const b = hypotheses.second[h] ?? -1;
    const rowA = declared[a];
    const rowB = declared[b];
    if (rowA !== undefined && rowB !== undefined) {
      const order = orderOf(stageOf[a] ?? 0, stageOf[b] ?? 0);
      rowOf[h] = table.add(source.combining.both(rowA, rowB, order));
    } else {
      rowOf[h] = (rowB === undefined ? alone[a] : alone[b]) ?? table.usual;
    }
  }
  return { width: table.width, rowOf, rows: table.flat() };
}

function orderOf(a: number, b: number): Order {
  if (a === b) return "same-stage";
  return a < b ? "first-earlier" : "second-earlier";
}

class RowTable {
  readonly usual: number;
  readonly width: number;
  readonly #finish: (row: Row) => Row;
  readonly #rows: Row[] = [];
  readonly #known = new Map<Row, number>();

  constructor(source: RowSource) {
    this.#finish = source.finish ?? ((row) => row);
    checkRow(source.id, source.usual, source);
    this.usual = this.add(source.usual);
    this.width = this.#rows[0]?.length ?? 0;
  }

  add(row: Row): number {
    const known = this.#known.get(row);
    if (known !== undefined) return known;
    const index = this.#rows.push(this.#finish(row)) - 1;
    this.#known.set(row, index);
    return index;
  }

  flat(): Float64Array {
    const flat = new Float64Array(this.#rows.length * this.width);
    for (const [index, row] of this.#rows.entries()) flat.set(row, index * this.width);
    return flat;
  }
}

/** Slack for rows written with a few digits. */
const SUM_SLACK = 1e-6;

function checkRow(id: string, row: Row, source: RowSource): void {
  if (row.length !== source.width) {
    throw new OutOfRange(id, row.length, `a row of ${source.width} states`);
  }
  let sum = 0;
  for (const value of row) {
    if (!(value >= 0 && value <= 1)) throw new OutOfRange(id, value, "a probability");
    sum += value;
  }
  if (source.separate !== true && Math.abs(sum - 1) > SUM_SLACK) {
    throw new OutOfRange(id, sum, "a row that sums to 1");
  }
}
