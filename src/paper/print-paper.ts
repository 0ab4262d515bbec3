import type { CircuitNetwork } from "../domain/circuit.ts";
import type { CircuitWish } from "../domain/paper.ts";
import type { WordedPaper } from "../domain/rendered.ts";
import { calendarText } from "./calendar.ts";
import { drawCauses } from "./causes-picture.ts";
import { drawCircuitCard } from "./circuit-card.ts";
import { csvText } from "./csv.ts";

export interface PrintedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Pictures are looked at in the chat; everything else is kept as a file. */
export const isPicture = ({ name }: PrintedFile): boolean => name.endsWith(".png");

/** Makes a file of a worded paper. */
export type PrintPaper = (paper: WordedPaper) => Promise<PrintedFile>;

/** The machine whose circuit a sheet wants. */
export type DrawnMachine = CircuitWish<string>;

/** @param circuitOf the starting circuit of a machine in a language's words, to be drawn on job sheets */
export function createPrinter(
  circuitOf: (machine: DrawnMachine, language: string) => CircuitNetwork | undefined = () =>
    undefined,
): PrintPaper {
  return async ({ paper, language, rightToLeft }) => {
    if (paper.kind === "calendar") {
      return { name: "visit.ics", bytes: new TextEncoder().encode(calendarText(paper)) };
    }
    if (paper.kind === "table") {
      return { name: `${paper.name}.csv`, bytes: new TextEncoder().encode(csvText(paper.rows)) };
    }
    if (paper.kind === "sticker") {
      const { stickerPdf } = await import("./sticker.ts");
      return { name: `${paper.name}.pdf`, bytes: await stickerPdf(paper, rightToLeft) };
    }
    if (paper.kind === "causes") {
      return { name: `${paper.name}.png`, bytes: await drawCauses({ ...paper, rightToLeft }) };
    }
    const circuit = paper.circuit === undefined ? undefined : circuitOf(paper.circuit, language);
    if (paper.kind === "circuit") {
      // A machine without a circuit of its own still gets an answer in words.
      const { title } = paper.circuit;
      const bytes =
        circuit === undefined
          ? await drawCauses({ title, bars: [], rightToLeft })
          : await drawCircuitCard(circuit, paper.circuit, rightToLeft);
      return { name: `${paper.name}.png`, bytes };
    }
    // What writes PDF is large; a start does not wait for it.
    const { jobSheetPdf } = await import("./job-sheet.ts");
    const bytes = await jobSheetPdf({
      sheet: paper,
      rightToLeft,
      ...(circuit === undefined ? {} : { circuit }),
    });
    return { name: `${paper.name}.pdf`, bytes };
  };
}
