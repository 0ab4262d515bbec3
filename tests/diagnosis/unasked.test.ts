import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { rankCauses } from "../../src/diagnosis/ranking.ts";
import { toldUnasked } from "../../src/diagnosis/unasked.ts";
import type { Report, Said } from "../../src/domain/evidence.ts";
import { workshop } from "../helpers/dialog.ts";

const weighed = (...like: number[]) => ({
  rowOf: Int32Array.from(like.keys()),
  like: Float64Array.from(like),
});
const like = (chances: number[], usual: number, times: number) => [
  ...toldUnasked(weighed(...chances), usual, times).like,
];

describe("what is told unasked", () => {
  it("speaks more for what explains it, and no more against what does not", () => {
    // By hand: mentioned with 0.9 when it comes from the trouble, 0.3 when it is just so. A fault
    // that brings it about in 0.8 where 0.1 have it anyway: (0.7 · 0.9 + 0.1 · 0.3) / 0.3 = 2.2.
    const [explains, usual, against] = like([0.8, 0.1, 0.05], 0.1, 3);
    expect(explains).toBeCloseTo(2.2, 12);
    expect([usual, against]).toEqual([0.1, 0.05]);
  });

  it("keeps the order of the causes, and changes nothing when everything is mentioned", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 2, maxLength: 8 }),
        fc.double({ min: 0.001, max: 1, noNaN: true }),
        fc.double({ min: 1, max: 20, noNaN: true }),
        (chances, usual, times) => {
          const after = like(chances, usual, times);
          for (const [i, a] of chances.entries()) {
            for (const [j, b] of chances.entries()) {
              if (a > b) expect(after[i]).toBeGreaterThanOrEqual(after[j] ?? 0);
            }
          }
          expect(like(chances, usual, 1)).toEqual(chances);
        },
      ),
      { seed: 7 },
    );
  });

  it("means nothing by itself where it is so on most machines", () => {
    expect(like([0.95, 0.7, 0.2], 0.8, 14)).toEqual([0.95, 0.7, 0.2]);
    expect(like([0.95, 0.4, 0.2], 0.4, 14)[0]).toBeGreaterThan(0.95);
  });

  const model = compileModel(workshop.knowledge, { kind: "ride-on-mower", fuel: "petrol" });
  const chance = (fault: string, observation: string, said: Said, unasked: boolean) => {
    const report: Report = {
      observation,
      epoch: 0,
      reporter: "technician",
      said,
      hedge: 0,
      unasked,
    };
    const found = rankCauses(model, { reports: [report], acts: [] });
    return found.causes.find((cause) => cause.fault === fault)?.probability ?? 0;
  };

  it("counts for more in the belief than the same thing asked for", () => {
    const said: Said = { kind: "states", weights: { corroded: 1 } };
    const asked = chance("plus-clamp-corroded", "joint-look", said, false);
    expect(chance("plus-clamp-corroded", "joint-look", said, true)).toBeGreaterThan(1.2 * asked);
  });

  it("counts once where people only ever tell it unasked", () => {
    const said: Said = { kind: "members", present: ["carburettor"], absent: [] };
    const asked = chance("carburettor-blocked", "found-bad", said, false);
    expect(chance("carburettor-blocked", "found-bad", said, true)).toBe(asked);
  });

  it("says no more of the complaint itself, which everybody tells", () => {
    const said: Said = { kind: "states", weights: { "one-click": 1 } };
    const asked = chance("battery-flat", "on-start", said, false);
    expect(chance("battery-flat", "on-start", said, true)).toBe(asked);
  });
});
