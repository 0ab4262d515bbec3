import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { csvText } from "../../src/paper/csv.ts";

/** Reads CSV by the grammar of RFC 4180, knowing nothing of how it was written. */
function read(text: string): string[][] {
  const rows: string[][] = [[]];
  const cell = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n|$)/gy;
  for (
    let found = cell.exec(text);
    found !== null && found.index < text.length;
    found = cell.exec(text)
  ) {
    const [, quoted, bare = "", end] = found;
    rows.at(-1)?.push(quoted === undefined ? bare : quoted.replaceAll('""', '"'));
    if (end === "\r\n") rows.push([]);
  }
  return rows.filter((row) => row.length > 0);
}

describe("a table", () => {
  it("begins with the mark by which spreadsheets know UTF-8", () => {
    expect(csvText([["a"]]).codePointAt(0)).toBe(0xfeff);
  });

  it("gives back every text, or the same with an apostrophe in front", () => {
    const rows = fc.array(fc.array(fc.string(), { minLength: 2, maxLength: 4 }), {
      minLength: 1,
      maxLength: 4,
    });
    fc.assert(
      fc.property(rows, (table) => {
        const found = read(csvText(table).slice(1));
        expect(found.map((row) => row.length)).toEqual(table.map((row) => row.length));
        for (const [r, row] of table.entries()) {
          for (const [c, cell] of row.entries()) {
            expect([cell, `'${cell}`]).toContain(found[r]?.[c]);
          }
        }
      }),
      { seed: 11, numRuns: 300 },
    );
  });

  it.each(["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "＝1"])(
    "makes no formula of %j",
    (text) => {
      const [[cell = ""] = []] = read(csvText([[text, "x"]]).slice(1));
      expect(cell.startsWith("'")).toBe(true);
    },
  );

  it("writes numbers bare and leaves out what is no number", () => {
    expect(csvText([[-1.5, Number.NaN, null]]).slice(1)).toBe("-1.5,,\r\n");
  });
});
