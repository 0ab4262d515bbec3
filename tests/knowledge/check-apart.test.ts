import { describe, expect, it } from "vitest";
import { readKnowledge } from "../../src/knowledge/load.ts";
import { nearestNeighbours } from "../../src/knowledge/separation.ts";
import { knowledgeOf, planted, problemsOf } from "./small-flows.ts";

const alike = [
  { from: "    shows: { rest-volts: { good: nearly-always } }\n", to: "" },
  { from: "    cured-by: { charge: 0.1 }\n    hidden-by: { charge: 0.2 }\n", to: "" },
];
const declared = {
  from: "    like: flat\n",
  to: "    like: flat\n    cannot-be-told-from: flat\n",
};

describe("faults that nobody can tell apart", () => {
  it("are reported, with the best check there is", () => {
    const found = problemsOf(...alike);
    expect(found).toHaveLength(1);
    expect(found[0]?.says).toMatch(
      /^No check tells "flat" from "worn" \(no check touches either\)/,
    );
  });

  it("may be declared so", () => {
    expect(problemsOf(...alike, declared)).toEqual([]);
  });

  it("must not be declared so where a check does tell them apart", () => {
    expect(problemsOf(declared)[0]?.says).toMatch(/are said not to be told apart, but "/);
  });

  it("counts an act that cures the one and not the other", () => {
    const rows = { from: "    shows: { rest-volts: { good: nearly-always } }\n", to: "" };
    const hidden = { from: "    hidden-by: { charge: 0.2 }\n", to: "" };
    expect(problemsOf(rows, hidden)).toEqual([]);
    const nearest = nearestNeighbours(knowledgeOf(rows, hidden));
    expect(nearest.find(({ fault }) => fault === "flat")).toMatchObject({
      neighbour: "worn",
      check: "charge",
    });
  });

  it("are no reason not to work with the knowledge: only whoever writes it must know", () =>
    expect(readKnowledge(planted(...alike), "usable").ok).toBe(true));

  it("are not looked for on machines that cannot have both", () => {
    const diesel = { from: "    like: flat\n", to: "    like: flat\n    needs: { fuels: gas }\n" };
    const found = problemsOf(...alike, diesel).map((one) => one.says);
    expect(found.join()).not.toContain("No check tells");
  });
});
