import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fileNameFor } from "../../src/store/file-name.ts";

describe("file names", () => {
  it("leave plain ids readable", () => {
    expect(fileNameFor("123456789")).toBe("123456789.json");
    expect(fileNameFor("-1001")).toBe("-1001.json");
    expect(fileNameFor("K7-4F")).toBe("_k7-4_f.json");
  });

  it("differ for different ids, also where capitals do not count", () =>
    fc.assert(
      fc.property(fc.string({ maxLength: 300 }), fc.string({ maxLength: 300 }), (a, b) => {
        const same = fileNameFor(a).toLowerCase() === fileNameFor(b).toLowerCase();
        expect(same).toBe(Buffer.from(a).equals(Buffer.from(b)));
      }),
      { seed: 1, numRuns: 500 },
    ));

  it("never lead out of their folder and are never too long", () =>
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 400 }), (id) => {
        expect(fileNameFor(id)).toMatch(/^[a-z0-9=_-]{1,180}\.json$/);
      }),
      { seed: 1, numRuns: 500 },
    ));
});
