import { inflateSync } from "node:zlib";
import { extractText, getDocumentProxy } from "unpdf";
import { describe, expect, it } from "vitest";
import type { JobSheet } from "../../src/domain/paper.ts";
import { jobSheetPdf } from "../../src/paper/job-sheet.ts";
import { createPrinter } from "../../src/paper/print-paper.ts";
import { jobSheet } from "../../src/talk/job-sheet.ts";
import { Dialog, speech, workshop } from "../helpers/dialog.ts";

interface Pdf {
  readonly pages: number;
  readonly text: string;
}

/** The streams of a PDF, unpacked; ISO 32000-1, 7.3.8 and 7.4.4. */
function streams(bytes: Uint8Array): string[] {
  const file = Buffer.from(bytes);
  const found: string[] = [];
  for (let at = file.indexOf("stream\n"); at >= 0; at = file.indexOf("stream\n", at + 7)) {
    if (file.subarray(at - 3, at).toString() === "end") continue;
    const end = file.indexOf("endstream", at);
    try {
      found.push(inflateSync(file.subarray(at + 7, end)).toString("latin1"));
    } catch {
      found.push("");
    }
  }
  return found;
}

/** What an independent program copies out of a PDF. */
async function read(bytes: Uint8Array): Promise<Pdf> {
  const { totalPages, text } = await extractText(await getDocumentProxy(new Uint8Array(bytes)));
  return { pages: totalPages, text: text.join("\n") };
}

const dialog = new Dialog()
  .say("diesel compact tractor, one click, lights stay bright")
  .press("All is safe");
const worded = speech.wording.render(
  { lines: [], paper: jobSheet(dialog.state, dialog.desk) },
  "en",
).paper;
if (worded === undefined) throw new Error("the job sheet was not worded");
const circuit = workshop.circuits.get("compact-tractor");

describe("the job sheet", () => {
  it("says case, complaint, causes' plan, parts and cautions on one or two pages", async () => {
    const { name, bytes } = await createPrinter(() => circuit)(worded);
    const { pages, text } = await read(bytes);
    expect(name).toBe("case-4F7K.pdf");
    expect(Buffer.from(bytes).subarray(0, 5).toString()).toBe("%PDF-");
    expect(pages).toBeGreaterThan(0);
    expect(pages).toBeLessThan(3);
    for (const words of ["4F7K", "One click", "Plan", "To load", "⚠ "]) {
      expect(text).toContain(words);
    }
  });

  it("draws the starting circuit as a picture, with its points in words under it", async () => {
    const printed = async (more: boolean) =>
      (await createPrinter(() => (more ? circuit : undefined))(worded)).bytes;
    const images = (bytes: Uint8Array) =>
      (
        Buffer.from(bytes)
          .toString("latin1")
          .match(/\/Subtype \/Image/g) ?? []
      ).length;
    expect(circuit).toBeDefined();
    const drawn = await printed(true);
    expect(images(drawn)).toBeGreaterThan(images(await printed(false)));
    expect((await read(drawn)).text).toContain("solenoid's small terminal");
  });

  it("draws the causes as bars as long as they are likely, the texts beside them", async () => {
    const bars = [0.5, 0.25].map((share, i) => ({
      ...{ name: `cause ${i}`, share, shareText: `${share * 100}%`, reason: "one click" },
    }));
    const paper = { ...sheet("x"), causes: { title: "Causes", bars } };
    const bytes = await jobSheetPdf({ sheet: paper, rightToLeft: false });
    // A rectangle is x y width height re, filled by f: ISO 32000-1, 8.5.2.1 and 8.5.3.1.
    const lines = streams(bytes).flatMap((one) => one.split("\n"));
    const filled = lines.flatMap((one, i) => {
      const width = / re$/.test(one) ? Number(one.split(" ")[2]) : null;
      const painted = lines.slice(i + 1).find((next) => /^(S|f)$/.test(next));
      return width === null || painted !== "f" ? [] : [width];
    });
    const [longer = 0, shorter = 1] = filled;
    expect(longer / shorter).toBeCloseTo(2, 2);
    expect((await read(bytes)).text).toContain("cause 1");
  });

  it("is the same file for the same sheet", async () => {
    const print = createPrinter();
    const once = Buffer.from((await print(worded)).bytes);
    expect(once.equals(Buffer.from((await print(worded)).bytes))).toBe(true);
  });

  const sheet = (words: string): JobSheet<string> => ({
    ...{ kind: "sheet", name: "x", made: 0, title: words, head: [{ words }] },
    sections: [{ heading: words, lines: [{ words, style: "tick" }] }],
  });

  it("draws scripts that run from the right as pictures, a line each", async () => {
    const bytes = await jobSheetPdf({ sheet: sheet("المصهر محترق"), rightToLeft: true });
    const file = Buffer.from(bytes).toString("latin1");
    expect((file.match(/\/Subtype \/Image/g) ?? []).length).toBeGreaterThanOrEqual(4);
    expect((await read(bytes)).text.trim()).toBe("");
  });

  it("goes on to further pages where a person wrote very much", async () => {
    const lines = Array.from({ length: 200 }, (_, i) => ({ words: `line ${i}` }));
    const long = { ...sheet("long"), sections: [{ heading: "all", lines }] };
    const { pages, text } = await read(await jobSheetPdf({ sheet: long, rightToLeft: false }));
    expect(pages).toBeGreaterThan(2);
    expect(text).toContain("line 199");
  });
});
