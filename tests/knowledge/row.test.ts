import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Problem } from "../../src/domain/result.ts";
import { frequencyWords } from "../../src/domain/vocabulary.ts";
import {
  distribution,
  presences,
  probabilityOf,
  type RowContext,
} from "../../src/knowledge/row.ts";
import type { Placed } from "../../src/knowledge/source-file.ts";

const frequencies = {
  never: 0.01,
  rarely: 0.05,
  sometimes: 0.2,
  often: 0.5,
  usually: 0.75,
  "nearly-always": 0.95,
};
const place: Placed<unknown> = {
  id: "x",
  value: {},
  path: ["faults", "x"],
  basis: "test",
  source: { file: "f.yaml", id: "f", folder: "systems", data: {}, lineOf: () => 7 },
};
const at = { place, inside: ["shows"] };

function context(): RowContext & { problems: Problem[] } {
  return { frequencies, problems: [], broken: new Set() };
}

describe("rows", () => {
  it("gives words their numbers and states that are not named the weight of never", () => {
    const row = distribution({ a: "often", b: "sometimes" }, ["a", "b", "c"], at, context());
    // 0.5 + 0.2 + 0.01 = 0.71
    expect(row).toEqual([0.5 / 0.71, 0.2 / 0.71, 0.01 / 0.71]);
  });

  it("takes zero for never, so that nothing is impossible", () => {
    expect(probabilityOf(0, frequencies)).toBe(0.01);
    expect(distribution({ a: 1, b: 0 }, ["a", "b"], at, context())[1]).toBeGreaterThan(0);
  });

  it("lets a row's source stand among its states", () => {
    const read = context();
    const row = distribution({ a: 0.4, b: 0.6, source: "a book" }, ["a", "b"], at, read);
    expect(row).toEqual([0.4, 0.6]);
    expect(read.problems).toEqual([]);
  });

  it.each([
    [{ a: 0.5, b: 0.4 }, "These numbers add up to 0.9; they must add up to 1."],
    [{ a: "nearly-always", b: "nearly-always" }, "These words together mean 1.9;"],
    [{ a: "sometimes" }, "These words together mean 0.2;"],
    [{ d: "often", a: "often" }, 'There is no state "d" here. Known: a, b, c.'],
    [{}, "This row names no state;"],
  ] as const)("reports %j", (text, says) => {
    const read = context();
    distribution(text, ["a", "b", "c"], at, read);
    expect(read.problems[0]?.says).toContain(says);
    expect(read.problems[0]).toMatchObject({ file: "f.yaml", line: 7 });
  });

  it("accepts numbers that miss 1 by rounding", () => {
    const read = context();
    distribution({ a: 0.33, b: 0.33, c: 0.33 }, ["a", "b", "c"], at, read);
    expect(read.problems).toEqual([]);
  });

  it("always sums to 1 and leaves every state possible", () => {
    const often = fc.oneof(
      fc.constantFrom(...frequencyWords),
      fc.double({ min: 0, max: 1, noNaN: true }),
    );
    const text = fc.dictionary(fc.constantFrom("a", "b", "c", "d"), often);
    fc.assert(
      fc.property(text, (row) => {
        const values = distribution(row, ["a", "b", "c", "d"], at, context());
        expect(values.reduce((sum, value) => sum + value, 0)).toBeCloseTo(1, 9);
        expect(Math.min(...values)).toBeGreaterThan(0);
      }),
      { seed: 11 },
    );
  });

  it("lets each member of a list stand for itself", () => {
    const row = presences({ b: "often" }, ["a", "b"], { ...at, otherwise: [0.3, 0.1] }, context());
    expect(row).toEqual([0.3, 0.5]);
  });
});
