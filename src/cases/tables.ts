import { learnRates, usableClosings } from "../diagnosis/learning.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import type { Table } from "../domain/paper.ts";
import { type CaseFigures, comebacksIn } from "./case-figures.ts";
import { closingsIn } from "./learning.ts";

type Rows = Table["rows"];
const day = (time: number) => new Date(time).toISOString().slice(0, 10);

/** One row a case, in the order in which they were opened; nothing that tells who the person was. */
export function caseTable(all: readonly CaseFigures[], comebackDays: number): Rows {
  const back = comebacksIn(all, comebackDays);
  const head = [
    ...["case", "opened", "machine", "closed", "end", "complaint", "causes", "how", "correction"],
    ...["minutes foreseen", "minutes taken", "second trips", "missing", "came back"],
  ];
  const rows = [...all]
    .sort((a, b) => a.openedAt - b.openedAt)
    .map((one) => [
      ...[one.id, day(one.openedAt), one.kind, one.closed && day(one.closed.at)],
      ...[one.closed?.end ?? null, one.closed?.complaint ?? null],
      ...[(one.confirmed?.faults ?? []).join(" ") || (one.confirmed?.words ?? null)],
      ...[one.confirmed?.how ?? null, one.closed?.correction ?? null],
      ...[one.foreseen?.medianMinutes ?? null, one.minutes, one.cutShort.length],
      ...[one.cutShort.join("; "), back.has(one.id) ? "yes" : "no"],
    ]);
  return [head, ...rows];
}

/** How far each fault's share has moved from the shipped one, by kind of machine. */
export function rateTable(
  all: readonly CaseFigures[],
  knowledge: Knowledge,
  comebackDays: number,
): Rows {
  const closings = usableClosings(knowledge, closingsIn(all, comebackDays));
  const kinds = [...new Set(closings.map((closing) => closing.kind))].sort();
  const rows = kinds.flatMap((kind) =>
    [...learnRates(knowledge, closings, kind)]
      .sort(([, a], [, b]) => b - a)
      .map(([fault, times]) => [kind, fault, times]),
  );
  return [["machine", "cause", "times the shipped share"], ...rows];
}
