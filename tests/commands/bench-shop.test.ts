import { describe, expect, it } from "vitest";
import { openDirectory } from "../../src/cases/directory.ts";
import { benchShop } from "../../src/commands/bench-shop.ts";
import { inventedCase, inventedStore } from "../../src/commands/invented-cases.ts";
import { readDocument, writeDocument } from "../../src/store/document-text.ts";
import { workshop } from "../helpers/dialog.ts";

const { knowledge } = workshop;

describe("the bench of the shop's side", () => {
  it("invents an archive of as many cases as are asked for, which the store could hold", async () => {
    const directory = await openDirectory(inventedStore(knowledge, { open: 7, closed: 12 }));
    expect(directory.cases({ open: true })).toHaveLength(7);
    expect(directory.cases({})).toHaveLength(19);
    const document = inventedCase(knowledge, { n: 5, closed: true });
    expect(readDocument("case", writeDocument(document))).toMatchObject({ ok: true, document });
  });

  it("measures each part beside a peer that has a name", async () => {
    const figures = await benchShop(workshop, ".", { open: 30, closed: 60, repeats: 2 });
    expect(figures).toMatchObject({ open: 30, closed: 60 });
    const { firstPage, find, slip, slipAgain, causesPicture, jobSheet } = figures;
    for (const part of [firstPage, find, slip, slipAgain, causesPicture, jobSheet]) {
      expect(part.peer).not.toBe("");
      expect(part.ratio).toBeCloseTo(part.medianMs / part.peerMedianMs, 9);
      expect(part.medianMs).toBeGreaterThan(0);
    }
    // What the engine knows already it does not think about again.
    expect(slipAgain.medianMs).toBeLessThan(slip.medianMs);
  }, 60_000);
});
