import { describe, expect, it } from "vitest";
import { openDirectory } from "../../src/cases/directory.ts";
import { createLists, lookedAfter } from "../../src/cases/lobby-lists.ts";
import { inventedCase, inventedStore, NOW } from "../../src/commands/invented-cases.ts";
import { stamped } from "../../src/domain/case-events.ts";
import { Dialog, speech, workshop } from "../helpers/dialog.ts";
import { shopMembers } from "../helpers/office-desk.ts";

const { knowledge } = workshop;
const { desk } = new Dialog();
const [, dispatcher, technician] = shopMembers;
if (dispatcher === undefined || technician === undefined) throw new Error("no members");
const jonas = dispatcher;
const ilse = technician;

async function opened(size: { open: number; closed: number }) {
  const directory = await openDirectory(inventedStore(knowledge, size));
  const lists = createLists(directory, () => ({ ...desk, members: shopMembers }));
  const ask = (name: string, more: { argument?: string; from?: number; lookedAt?: number } = {}) =>
    lists[name]?.({
      ...{ member: jonas, argument: "", from: 0, now: NOW, lookedAt: 0 },
      ...more,
    }) ?? { lines: [] };
  return { directory, lists, ask };
}

type Shown = ReturnType<Awaited<ReturnType<typeof opened>>["ask"]>;
const pressesOf = ({ buttons }: Shown) => (buttons ?? []).flat().map(({ press }) => press);
const cases = (shown: Shown) => pressesOf(shown).flatMap((press) => press.case ?? []);
const textOf = (message: Shown) => speech.wording.render(message, "en").text;
const labelOf = (message: Shown, n: number) =>
  speech.wording.render(message, "en").buttons.flat()[n]?.label ?? "";

describe("the lists of the shop", () => {
  it("turn over page by page until every open call was shown once, the longest wait first", async () => {
    const { ask, directory } = await opened({ open: 23, closed: 5 });
    const pages = [0, 10, 20].map((from) => cases(ask("calls", { from })));
    expect(pages.map((page) => page.length)).toEqual([10, 10, 3]);
    const waiting = [...directory.cases({ open: true })].sort((a, b) => a.openedAt - b.openedAt);
    expect(pages.flat()).toEqual(waiting.map(({ id }) => id));
    const next = (from: number) => pressesOf(ask("calls", { from })).at(-1);
    expect([next(0)?.value, next(10)?.value]).toEqual(["calls:10:", "calls:20:"]);
    expect(next(20)?.act).toBe("slip");
    expect(textOf(ask("calls"))).toContain("23");
  });

  it("mark what changed since this person looked, and nothing at their first look", async () => {
    const { ask, directory } = await opened({ open: 2, closed: 0 });
    const marked = () =>
      [0, 1].filter((n) => labelOf(ask("calls", { lookedAt: NOW }), n).startsWith("🆕"));
    expect(marked()).toEqual([]);
    const changed = inventedCase(knowledge, { n: 1, closed: false });
    const more = stamped(
      { type: "words.said", text: "it rains" },
      { at: NOW + 1, by: "p1", update: null },
    );
    directory.take({ ...changed, version: 2, events: [...changed.events, more] });
    const label = (id: string) => {
      const shown = ask("calls", { lookedAt: NOW });
      return labelOf(shown, cases(shown).indexOf(id));
    };
    expect(label("A1")).not.toBe(labelOf(ask("calls"), cases(ask("calls")).indexOf("A1")));
    expect(label("A0")).toBe(labelOf(ask("calls"), cases(ask("calls")).indexOf("A0")));
  });

  it("find closed cases too, and ask for words where there are none", async () => {
    const { ask } = await opened({ open: 3, closed: 9 });
    expect(cases(ask("find", { argument: "C7" }))).toEqual(["C7"]);
    expect(cases(ask("find", { argument: "person 2 meadow" }))).toEqual([]);
    expect(cases(ask("find", { argument: " " }))).toEqual([]);
    expect(ask("find", { argument: " " }).lines).not.toEqual([]);
    const more = pressesOf(ask("find", { argument: "only clicks" })).at(-1)?.value;
    expect(more).toBe("find:10:only clicks");
  });

  it("show technicians their own jobs alone, and no list of the counter", async () => {
    const { lists, directory } = await opened({ open: 3, closed: 0 });
    const handed = inventedCase(knowledge, { n: 2, closed: false });
    const toIlse = stamped(
      {
        ...{ type: "case.assigned" as const, technician: ilse.person, name: ilse.name },
        ...{ chat: ilse.chat, language: "en" },
      },
      { at: NOW, by: jonas.person, update: null },
    );
    directory.take({ ...handed, version: 2, events: [...handed.events, toIlse] });
    const asked = { member: ilse, argument: "", from: 0, now: NOW, lookedAt: 0 };
    const jobs = lists["jobs"]?.(asked) ?? { lines: [] };
    expect(cases(jobs)).toEqual(["A2"]);
    expect(pressesOf(jobs)[0]?.act).toBe("sheet");
    for (const name of ["calls", "find", "call", "invite", "handover", "people", "member"]) {
      const refused = lists[name]?.({ ...asked, argument: "A1" });
      expect(
        refused?.lines.map(({ say }) => say),
        name,
      ).toEqual([{ key: "not-allowed" }]);
      expect(refused?.buttons, name).toBeUndefined();
    }
    for (const name of ["report", "table"]) {
      const refused = lists[name]?.({ ...asked, argument: "cases" });
      expect(refused?.paper, name).toBeUndefined();
      expect(
        refused?.lines.map(({ say }) => say),
        name,
      ).toEqual([{ key: "not-allowed" }]);
    }
  });

  it("give both tables as papers and the report over all cases", async () => {
    const { ask } = await opened({ open: 4, closed: 6 });
    const table = (name: string) => ask("table", { argument: name }).paper;
    expect(table("cases")).toMatchObject({ kind: "table", name: "cases" });
    expect(table("rates")).toMatchObject({ kind: "table", name: "rates" });
    const rows = (paper: ReturnType<typeof table>) => (paper?.kind === "table" ? paper.rows : []);
    expect(rows(table("cases"))).toHaveLength(11);
    expect(rows(table("rates")).length).toBeGreaterThan(6);
    expect(textOf(ask("report"))).toContain("4 open, 6 closed");
  });

  it("count as looked after what a member of the shop took on and did not close", async () => {
    const { directory } = await opened({ open: 2, closed: 2 });
    expect(lookedAfter(directory, dispatcher)).toEqual([]);
    for (const closed of [false, true]) {
      const one = inventedCase(knowledge, { n: 1, closed });
      const seen = stamped({ type: "shop.saw" }, { at: NOW, by: jonas.person, update: null });
      directory.take({ ...one, version: 2, events: [...one.events, seen] });
    }
    expect(lookedAfter(directory, dispatcher).map(({ id }) => id)).toEqual(["A1"]);
  });
});
