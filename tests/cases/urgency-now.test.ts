import { describe, expect, it } from "vitest";
import { summariseCase } from "../../src/cases/case-summary.ts";
import { createUrgencyNow } from "../../src/cases/urgency-now.ts";
import { stamped } from "../../src/domain/case-events.ts";
import { FORMAT } from "../../src/domain/documents.ts";
import { loadUrgency, urgencyOf } from "../../src/knowledge/urgency.ts";

const HOUR = 60 * 60 * 1000;
const read = await loadUrgency("flows", null);
if (!read.ok) throw new Error(JSON.stringify(read.problems));

const started = stamped(
  {
    ...({ type: "case.opened", operator: "1", name: "Åse", chat: "1" } as const),
    ...{ language: "en", knowledge: "", seed: 1 },
  },
  { at: Date.UTC(2026, 0, 5, 8), by: "1", update: null },
);
const one = summariseCase({
  ...({ kind: "case", format: FORMAT, id: "4F7K", version: 1 } as const),
  ...{ updates: [], outbox: [], sent: {}, events: [started] },
});
const moment = (hours: number) => ({ now: one.openedAt + hours * HOUR, month: 1 });

describe("urgency at this moment", () => {
  it("says until when it stays so, and is the same at every moment before", () => {
    const now = createUrgencyNow(() => (facts) => urgencyOf(read.value, facts));
    for (const hours of [0, 3, 5, 23, 30]) {
      const { level, until } = now(one, moment(hours));
      expect(until).toBeGreaterThan(one.openedAt + hours * HOUR);
      const end = Math.min((until - one.openedAt) / HOUR, 1000);
      for (let later = hours; later < end; later += 0.5) {
        expect(now(one, moment(later)).level).toBe(level);
      }
    }
  });

  it("is what was said where the shop has no rules", () => {
    const now = createUrgencyNow(() => undefined);
    expect(now({ ...one, urgency: "high" }, moment(0)).level).toBe("high");
    expect(now(one, moment(99)).level).toBe("normal");
  });
});
