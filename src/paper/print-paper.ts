import type { CircuitNetwork } from "../domain/circuit.ts";
import type { JobSheet } from "../domain/paper.ts";
import type { WordedPaper } from "../domain/rendered.ts";
import { calendarText } from "./calendar.ts";
import { csvText } from "./csv.ts";
import { jobSheetPdf } from "./job-sheet.ts";

export interface PrintedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Makes a file of a worded paper. */
export type PrintPaper = (paper: WordedPaper) => Promise<PrintedFile>;

/** The machine whose circuit a sheet wants. */
export type DrawnMachine = NonNullable<JobSheet<string>["circuit"]>;

/** @param circuitOf the starting circuit of a machine, to be drawn on job sheets */
export function createPrinter(
  circuitOf: (machine: DrawnMachine) => CircuitNetwork | undefined = () => undefined,
): PrintPaper {
  return async ({ paper, rightToLeft }) => {
    if (paper.kind === "calendar") {
      return { name: "visit.ics", bytes: new TextEncoder().encode(calendarText(paper)) };
    }
    if (paper.kind === "table") {
      return { name: `${paper.name}.csv`, bytes: new TextEncoder().encode(csvText(paper.rows)) };
    }
    const circuit = paper.circuit === undefined ? undefined : circuitOf(paper.circuit);
    const bytes = await jobSheetPdf({
      sheet: paper,
      rightToLeft,
      ...(circuit === undefined ? {} : { circuit }),
    });
    return { name: `${paper.name}.pdf`, bytes };
  };
}
