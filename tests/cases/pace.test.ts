import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createPace } from "../../src/cases/pace.ts";

const limit = fc.record({
  count: fc.integer({ min: 1, max: 5 }),
  milliseconds: fc.integer({ min: 1, max: 500 }),
});

describe("pace", () => {
  it("never holds back where there are no limits", () => {
    const pace = createPace([]);
    pace.note(5);
    expect(pace.next(5)).toBe(5);
  });

  it("keeps every limit in every window when each next one goes as soon as it may", () =>
    fc.assert(
      fc.property(
        fc.array(limit, { minLength: 1, maxLength: 3 }),
        fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 1, maxLength: 30 }),
        (limits, idle) => {
          const pace = createPace(limits);
          const times: number[] = [];
          let now = 0;
          for (const pause of idle) {
            now = pace.next(now + pause);
            pace.note(now);
            times.push(now);
          }
          for (const { count, milliseconds } of limits) {
            for (const start of times) {
              const within = times.filter((at) => at >= start && at < start + milliseconds);
              expect(within.length).toBeLessThanOrEqual(count);
            }
          }
        },
      ),
      { seed: 3, numRuns: 200 },
    ));
});
