import { describe, expect, it } from "vitest";
import { summariseCase } from "../../src/cases/case-summary.ts";
import type { CaseHappening } from "../../src/domain/case-events.ts";
import { createOfficeParts, opening } from "../helpers/office-parts.ts";

async function summaryOf(...happenings: CaseHappening[]) {
  const { commit } = await createOfficeParts();
  const first = opening().happenings;
  const { document } = await commit({ kind: "case", id: "A1" }, "u1", () => ({
    by: "op",
    happenings: [...first, ...happenings],
    effects: [],
  }));
  if (document === null) throw new Error("nothing was committed");
  return summariseCase(document);
}

describe("a case's summary", () => {
  it("says whose it is and how it began", async () => {
    const summary = await summaryOf({ type: "words.said", text: "only clicks" });
    expect(summary).toMatchObject({
      id: "A1",
      operator: { id: "op", name: "Ann" },
      opening: "only clicks",
      openedAt: 1_000_000,
      alarm: false,
      closed: null,
    });
  });

  it("raises the alarm until somebody has seen the danger", async () => {
    expect((await summaryOf({ type: "flag.raised", flag: "fire" })).alarm).toBe(true);
    const seen = await summaryOf(
      { type: "flag.raised", flag: "fire" },
      { type: "flag.seen", flag: "fire" },
    );
    expect(seen.alarm).toBe(false);
  });

  it("is empty but whole for a case without an opening", () => {
    const ledger = { format: 1, id: "Q", version: 1, updates: [], outbox: [], sent: {} };
    const summary = summariseCase({ ...ledger, kind: "case", events: [] });
    expect(summary).toMatchObject({ id: "Q", opening: "", touchedAt: 0 });
  });
});
