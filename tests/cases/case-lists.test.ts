import { describe, expect, it } from "vitest";
import { pressing, search } from "../../src/cases/case-lists.ts";
import { type CaseSummary, summariseCase } from "../../src/cases/case-summary.ts";
import { stamped } from "../../src/domain/case-events.ts";
import { FORMAT } from "../../src/domain/documents.ts";

function summary(id: string, more: Partial<CaseSummary> = {}): CaseSummary {
  const opened = {
    ...({ type: "case.opened", operator: "1", name: "Åse Müller", chat: "1" } as const),
    ...{ language: "en", knowledge: "", seed: 1 },
  };
  const events = [stamped(opened, { at: 5, by: "1", update: null })];
  const ledger = { format: FORMAT, id, version: 1, updates: [], outbox: [], sent: {} };
  return { ...summariseCase({ ...ledger, kind: "case", events }), ...more };
}

describe("the list of calls", () => {
  it("has danger first, then the wish for a person, then urgency", () => {
    const list = [
      pressing(summary("DANGER", { alarm: true }), "low"),
      pressing(summary("PERSON", { personWanted: true }), "low"),
      pressing(summary("HIGH"), "high"),
      pressing(summary("NORMAL", { personWanted: true, shopSaw: "2" }), "normal"),
      pressing(summary("LOW"), "low"),
    ];
    expect(list).toEqual([...list].sort((a, b) => b - a));
    expect(new Set(list).size).toBe(list.length);
  });
});

describe("looking for a case", () => {
  const list = [
    summary("4F7K", { machine: { kind: "combine" }, opening: "only clicks" }),
    summary("8KQ2", { where: { words: "lower meadow" } }),
  ];
  const find = (words: string) =>
    search(list, words, (kind) => `a ${kind} of ours`).map((one) => one.id);

  it.each([
    ["4f7k", ["4F7K"]],
    ["muller", ["4F7K", "8KQ2"]],
    ["combine", ["4F7K"]],
    ["MEADOW müller", ["8KQ2"]],
    ["clicks meadow", []],
    ["  ", []],
  ])("finds %s", (words, ids) => {
    expect(find(words)).toEqual(ids);
  });
});
