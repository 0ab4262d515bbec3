import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import type { CaseFigures } from "../../src/cases/case-figures.ts";
import { caseTable, rateTable } from "../../src/cases/tables.ts";
import { sharesOf } from "../../src/diagnosis/hypotheses.ts";
import { csvText } from "../../src/paper/csv.ts";
import { shippedKnowledge } from "../helpers/shipped.ts";

const knowledge = await shippedKnowledge();

/** The rows of a file as an independent reader takes them, by the names in its first row. */
function readBack(rows: ReturnType<typeof caseTable>): Record<string, string>[] {
  return parse(csvText(rows), { bom: true, columns: true });
}

const figures = (id: string, more: Partial<CaseFigures> = {}): CaseFigures => ({
  ...{ id, operator: id, kind: "garden-tractor", profile: null, triedInVain: 0, minutes: 30 },
  ...{ openedAt: Date.UTC(2026, 2, 2, 8), reports: [], toldOfComeback: false, cutShort: [] },
  ...{ foreseen: { causes: [], medianMinutes: 40, p90Minutes: 90 } },
  closed: {
    ...({ end: "visit", complaint: "one-click", cause: "battery-flat" } as const),
    ...{ at: Date.UTC(2026, 2, 3, 8), correction: "charge-battery" },
  },
  confirmed: { faults: ["battery-flat"], how: "measured" },
  ...more,
});

describe("the table of cases, read back by another program", () => {
  it("holds what is known of each case under its heading", () => {
    const [row, second] = readBack(
      caseTable([figures("A1"), figures("B2", { closed: null, confirmed: null })], 30),
    );
    expect(row).toEqual({
      ...{ case: "A1", opened: "2026-03-02", machine: "garden-tractor", closed: "2026-03-03" },
      ...{ end: "visit", complaint: "one-click", causes: "battery-flat", how: "measured" },
      ...{ correction: "charge-battery", "minutes foreseen": "40", "minutes taken": "30" },
      ...{ "second trips": "0", missing: "", "came back": "no" },
    });
    expect(second).toMatchObject({ case: "B2", closed: "", end: "", causes: "" });
  });

  it.each([
    '=HYPERLINK("http://x.example","here")',
    "+1+1",
    "-2+3",
    "@SUM(1;2)",
    "\t=1",
    "\r=1",
    "\n=1",
    "＝1+1",
  ])("makes no formula of what somebody wrote: %j", (words) => {
    const confirmed = { faults: [], how: "guess", words } as const;
    const [row] = readBack(caseTable([figures("A1", { confirmed, cutShort: [words] })], 30));
    expect(row?.["causes"]).toBe(`'${words}`);
    expect(row?.["missing"]).toBe(`'${words}`);
    expect(row?.["came back"]).toBe("no");
  });

  it("keeps quotes, commas, line breaks and scripts inside their cell", () => {
    const words = 'wire "chewed", left; right\nÅse 🚜 سلك';
    const confirmed = { faults: [], how: "guess", words } as const;
    expect(readBack(caseTable([figures("A1", { confirmed })], 30))[0]?.["causes"]).toBe(words);
  });
});

describe("the table of what was learned, read back by another program", () => {
  const table = (all: readonly CaseFigures[]) =>
    readBack(rateTable(all, knowledge, 30)).map((row) => ({
      ...{ machine: row["machine"] ?? "", cause: row["cause"] ?? "" },
      times: Number(row["times the shipped share"]),
    }));

  it("has no row as long as nothing was closed with a cause that is known to hold", () => {
    expect(table([])).toEqual([]);
    expect(
      table([figures("A", { confirmed: { faults: [], how: "guess", words: "mice" } })]),
    ).toEqual([]);
  });

  it("raises what was found by as much as its count says, and first of all, and lowers the rest", () => {
    const found = ["A", "B", "C"].map((id) => figures(id));
    const rows = table(found);
    const shares = sharesOf(knowledge, { kind: "garden-tractor" }, new Map());
    const whole = [...shares.values()].reduce((sum, one) => sum + one, 0);
    const shipped = (cause: string) => (shares.get(cause) ?? 0) / whole;
    const strength = knowledge.rates.shareStrength;
    const p = shipped("battery-flat");
    expect(rows[0]).toMatchObject({ machine: "garden-tractor", cause: "battery-flat" });
    expect(rows[0]?.times).toBeCloseTo((strength * p + 3) / (strength + 3) / p, 9);
    expect(rows[1]?.times).toBeLessThan(1);
    // Shares stay shares: what one cause gains the others lose.
    const sum = rows.reduce((all, { cause, times }) => all + shipped(cause) * times, 0);
    expect(sum).toBeCloseTo(1, 9);
  });

  it("learns for each kind of machine by itself, and nothing from a guess or what came back", () => {
    const guess = figures("G", {
      kind: "atv",
      confirmed: { faults: ["tank-empty"], how: "guess" },
    });
    const back = figures("H", { kind: "combine", toldOfComeback: true });
    const rows = table([figures("A"), guess, back]);
    expect(new Set(rows.map(({ machine }) => machine))).toEqual(new Set(["garden-tractor"]));
  });
});
