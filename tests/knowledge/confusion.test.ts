import { describe, expect, it } from "vitest";
import { reporters } from "../../src/domain/vocabulary.ts";
import { knowledgeOf, problemsOf } from "./small-flows.ts";

const lamps = (...to: string[]) => {
  const changes = to.map((text) => ({
    from: "reported-by: { operator: { dim: { dim: 0.6, bright: 0.35 }, otherwise: 0.9 } }",
    to: text,
  }));
  return knowledgeOf(...changes).observations.get("lamps")?.confusion;
};

describe("how reliable reporters are", () => {
  it("spreads what is left over evenly over the states that are not named", () => {
    const [dead, dim, bright] = lamps()?.operator ?? [];
    expect(dead?.map((value) => Number(value.toFixed(6)))).toEqual([0.9, 0.05, 0.05]);
    expect(dim?.map((value) => Number(value.toFixed(6)))).toEqual([0.05, 0.6, 0.35]);
    expect(bright?.map((value) => Number(value.toFixed(6)))).toEqual([0.05, 0.05, 0.9]);
  });

  it("takes the shared figures where an observation says nothing", () => {
    expect(lamps()?.technician[0]?.[0]).toBe(0.98);
    expect(lamps()?.["second-hand"][0]?.[0]).toBe(0.7);
  });

  it("takes one number for every state", () => {
    expect(lamps("reported-by: { photo: 0.4 }")?.photo.map((row) => Math.max(...row))).toEqual([
      0.4, 0.4, 0.4,
    ]);
  });

  it("has the rows present and absent for a list", () => {
    const events = knowledgeOf().observations.get("events");
    expect(events?.confusion.operator).toEqual([
      [0.9, 1 - 0.9],
      [0.02, 0.98],
    ]);
    const change = {
      from: "usual: { washed: 0.1, knocked: 0.2 }\n",
      to: "usual: { washed: 0.1, knocked: 0.2 }\n    reported-by: { operator: { named-when-present: 0.7, named-when-absent: 0.1 } }\n",
    };
    expect(knowledgeOf(change).observations.get("events")?.confusion.operator).toEqual([
      [0.7, 1 - 0.7],
      [0.1, 0.9],
    ]);
  });

  it("sums to 1 in every row of the small files", () => {
    for (const observation of knowledgeOf().observations.values()) {
      for (const who of reporters) {
        for (const row of observation.confusion[who]) {
          expect(row.reduce((sum, value) => sum + value, 0)).toBeCloseTo(1, 9);
        }
      }
    }
  });

  it.each([
    ["dim: { dim: 0.6, bright: 0.6 }", "What is told instead adds up to 1.20"],
    ["dim: { dim: 0.6, birght: 0.3 }", 'There is no state "birght" here. Did you mean "bright"?'],
    ["dimm: { dim: 0.6 }", 'There is no state "dimm" here. Did you mean "dim"?'],
  ])("reports %s", (text, says) => {
    const found = problemsOf({ from: "dim: { dim: 0.6, bright: 0.35 }", to: text });
    expect(found[0]?.says).toContain(says);
  });
});
