import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readTable } from "../../src/knowledge/table-text.ts";
import { csvText } from "../../src/paper/csv.ts";

const cells = (text: string) => readTable(text).map((row) => row.cells);

describe("a table as text", () => {
  it("is read with commas or semicolons, with or without a mark in front", () => {
    expect(cells("part,number\nbattery,B-1\n")).toEqual([
      ["part", "number"],
      ["battery", "B-1"],
    ]);
    expect(cells("\uFEFFpart;number\r\nbattery;1,5\r\n")).toEqual([
      ["part", "number"],
      ["battery", "1,5"],
    ]);
  });

  it("keeps quotes, separators and lines inside of quotes, and names the line a row begins on", () => {
    const rows = readTable('a,b\n"one, ""two""","x\ny"\n\nlast,');
    expect(rows).toEqual([
      { cells: ["a", "b"], line: 1 },
      { cells: ['one, "two"', "x\ny"], line: 2 },
      { cells: ["last", ""], line: 5 },
    ]);
  });

  it("never fails on broken quotes", () => {
    expect(cells('a,b\n5" bolt,"open')).toEqual([
      ["a", "b"],
      ['5" bolt', "open"],
    ]);
  });

  // Another reader of the same format: the package csv-parse.
  it("reads what a second reader reads, and what we write ourselves", () => {
    const word = fc.stringMatching(/^[a-z0-9 ,;"'\n]{0,8}$/);
    const table = fc.array(fc.array(word, { minLength: 3, maxLength: 3 }), { minLength: 1 });
    fc.assert(
      fc.property(table, (rows) => {
        const text = csvText([["x", "y", "z"], ...rows]);
        const other: unknown = parse(text, { bom: true });
        const ours = readTable(text).map((row) => row.cells);
        const known = Array.isArray(other) ? other : [];
        const isWord = (row: unknown) =>
          Array.isArray(row) && row.some((one) => String(one).trim() !== "");
        expect(ours).toEqual(known.filter(isWord));
      }),
      { seed: 7, numRuns: 200 },
    );
  });
});
