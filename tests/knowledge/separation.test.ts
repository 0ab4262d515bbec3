import { describe, expect, it } from "vitest";
import {
  createSeparator,
  meet,
  nearestNeighbours,
  sumUpApartness,
} from "../../src/knowledge/separation.ts";
import { knowledgeOf } from "./small-flows.ts";

describe("how well a check tells two faults apart", () => {
  it("is the smaller of the two expected weights of evidence, in decibans", () => {
    // Only volts at rest differ: flat [0.95, 0.01]/0.96 low, worn the other way round, each blurred
    // by a technician who is right 98 times in a hundred.
    const same = {
      from: "    cured-by: { charge: 0.1 }\n    hidden-by: { charge: 0.2 }\n",
      to: "",
    };
    const one = 0.95 / 0.96;
    const p = one * 0.98 + (1 - one) * 0.02;
    const expected = (10 / Math.LN10) * (2 * p - 1) * Math.log(p / (1 - p));
    const { check, decibans } = createSeparator(knowledgeOf(same))("flat", "worn");
    expect(check).toBe("read-rest");
    expect(decibans).toBeCloseTo(expected, 9);
  });

  it("is the same in both directions", () => {
    const separate = createSeparator(knowledgeOf());
    expect(separate("flat", "empty-tank").decibans).toBeCloseTo(
      separate("empty-tank", "flat").decibans,
      12,
    );
  });

  it("names one neighbour for every fault", () => {
    const rows = nearestNeighbours(knowledgeOf());
    expect(rows.map(({ fault }) => fault)).toEqual(["flat", "worn", "empty-tank"]);
    for (const { fault, neighbour, decibans } of rows) {
      expect(neighbour).not.toBe(fault);
      expect(decibans).toBeGreaterThan(0);
    }
  });

  it("is summed up by the median and by the closest pairs, each once", () => {
    const row = (fault: string, neighbour: string, decibans: number) =>
      ({ fault, neighbour, decibans, check: "c" }) as const;
    const rows = [row("c", "a", 9), row("a", "b", 2), row("b", "a", 2), row("d", "c", 4)];
    const { median, closest } = sumUpApartness(rows, 2);
    expect(median).toBe(3);
    expect(closest.map(({ fault, neighbour }) => fault + neighbour)).toEqual(["ab", "dc"]);
    expect(sumUpApartness(rows.slice(1), 9).median).toBe(2);
    expect(sumUpApartness(rows, 9).closest).toHaveLength(3);
  });

  it("knows which faults can meet on one machine", () => {
    const knowledge = knowledgeOf({
      from: "    like: flat\n",
      to: "    like: flat\n    needs: { fuels: diesel }\n",
    });
    const fault = (id: string) => {
      const found = knowledge.faults.get(id);
      if (found === undefined) throw new Error(id);
      return found;
    };
    expect(meet(fault("flat"), fault("worn"), knowledge)).toBe(true);
    expect(meet(fault("worn"), fault("empty-tank"), knowledge)).toBe(false);
  });
});
