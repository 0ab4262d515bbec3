import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createCallQueue } from "../../src/cases/call-queue.ts";
import type { CaseSummary } from "../../src/cases/case-summary.ts";
import { openDirectory } from "../../src/cases/directory.ts";
import { createUrgencyNow } from "../../src/cases/urgency-now.ts";
import type { CaseHappening } from "../../src/domain/case-events.ts";
import { stamped } from "../../src/domain/case-events.ts";
import type { CaseDocument } from "../../src/domain/documents.ts";
import { FORMAT } from "../../src/domain/documents.ts";
import type { Urgency, UrgencyFacts } from "../../src/domain/urgency.ts";
import { createMemoryStore } from "../../src/store/memory-store.ts";

const HOUR = 60 * 60 * 1000;
const DAY = 24 * HOUR;
const START = Date.UTC(2026, 5, 30);

/** Two points once somebody waited a day, one more for a combine in July. */
function rules({ stated, kind, month, waitedHours }: UrgencyFacts): Urgency {
  const said = { high: 3, normal: 0, low: -3 }[stated ?? "normal"];
  const points = said + (waitedHours >= 24 ? 2 : 0) + (kind === "combine" && month === 7 ? 3 : 0);
  const level = points >= 3 ? "high" : points >= 0 ? "normal" : "low";
  const untilHours = waitedHours < 24 ? 24 : Number.POSITIVE_INFINITY;
  return { level, points, reasons: [], untilHours };
}

const happenings: readonly CaseHappening[] = [
  { type: "shop.told" },
  { type: "person.wanted" },
  { type: "urgency.told", urgency: "high" },
  { type: "urgency.told", urgency: "low" },
  { type: "flag.raised", flag: "fuel-leak" },
  { type: "case.closed", end: "called-off", complaint: "", cause: "", correction: "" },
];

function opened(n: number): CaseDocument {
  const events = [
    stamped(
      {
        ...({ type: "case.opened", operator: "1", name: "Åse", chat: "1" } as const),
        ...{ language: "en", knowledge: "", seed: 1 },
      },
      { at: START + (n % 5) * HOUR, by: "1", update: null },
    ),
    stamped(
      { type: "machine.described", facts: { kind: n % 2 === 0 ? "combine" : "other" } },
      { at: START + (n % 5) * HOUR, by: "1", update: null },
    ),
  ];
  const ledger = { format: FORMAT, version: 1, updates: [], outbox: [], sent: {} };
  return { ...ledger, kind: "case", id: `C${n}`, events };
}

const monthOf = (now: number) => new Date(now).getUTCMonth() + 1;

/** The order as the rules say it, worked out from nothing. */
function fromScratch(cases: readonly CaseSummary[], now: number): readonly string[] {
  const key = (one: CaseSummary): readonly number[] => {
    const { level } = rules({
      ...{ stated: one.urgency, kind: one.machine.kind ?? "other", month: monthOf(now) },
      ...{ flags: [], comeback: false, waitedHours: (now - one.openedAt) / HOUR },
    });
    return [
      one.alarm ? 0 : 1,
      one.personWanted && one.shopSaw === null ? 0 : 1,
      ["high", "normal", "low"].indexOf(level),
      one.openedAt,
    ];
  };
  return cases
    .filter((one) => one.shopTold && one.closed === null)
    .map((one) => ({ id: one.id, key: key(one) }))
    .sort((a, b) => {
      const n = a.key.findIndex((part, at) => part !== b.key[at]);
      return n < 0 ? (a.id < b.id ? -1 : 1) : (a.key[n] ?? 0) - (b.key[n] ?? 0);
    })
    .map(({ id }) => id);
}

const step = fc.oneof(
  fc.record({ case: fc.nat(11), what: fc.nat(happenings.length - 1) }),
  fc.record({ hours: fc.integer({ min: 0, max: 30 }) }),
);

describe("the queue of calls", () => {
  it("is always in the order that the rules give, whatever happens and however time goes", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 60 }), async (steps) => {
        const directory = await openDirectory(createMemoryStore());
        const queue = createCallQueue(
          directory,
          createUrgencyNow(() => rules),
        );
        const documents = new Map<number, CaseDocument>();
        let now = START + 6 * HOUR;
        for (const one of steps) {
          if ("hours" in one) now += one.hours * HOUR;
          else {
            const known = documents.get(one.case) ?? opened(one.case);
            const happening = happenings[one.what];
            const more = happening ? [stamped(happening, { at: now, by: "1", update: null })] : [];
            const events = [...known.events, ...more];
            const changed = { ...known, version: known.version + 1, events };
            documents.set(one.case, changed);
            directory.take(changed);
          }
          const moment = { now, month: monthOf(now) };
          const ids = queue.slice(moment, 0, 100).map(({ id }) => id);
          expect(ids).toEqual(fromScratch(directory.cases({}), now));
          expect(queue.count(moment)).toBe(ids.length);
        }
      }),
      { seed: 8, numRuns: 60 },
    );
  });

  it("gives a page from the middle, drops what was forgotten and bears a clock set back", async () => {
    const directory = await openDirectory(createMemoryStore());
    const queue = createCallQueue(
      directory,
      createUrgencyNow(() => undefined),
    );
    for (let n = 0; n < 300; n += 1) {
      const told = stamped({ type: "shop.told" }, { at: START + DAY, by: "1", update: null });
      const document = opened(n);
      directory.take({ ...document, events: [...document.events, told] });
    }
    const moment = { now: START + DAY, month: 7 };
    const all = queue.slice(moment, 0, 1000).map(({ id }) => id);
    expect(all).toHaveLength(300);
    expect(queue.slice(moment, 20, 10).map(({ id }) => id)).toEqual(all.slice(20, 30));
    directory.forget({ kind: "case", id: all[20] ?? "" });
    expect(queue.slice(moment, 20, 1).map(({ id }) => id)).toEqual([all[21]]);
    expect(queue.count({ now: START, month: 6 })).toBe(299);
  });
});
