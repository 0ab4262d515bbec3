import { describe, expect, it } from "vitest";
import { readKnowledge } from "../../src/knowledge/load.ts";
import { planted, problemsOf } from "./small-flows.ts";

describe("gathering the files", () => {
  it("refuses an id that stands in two files", () => {
    const again = {
      path: "systems/zz.yaml",
      text: "title: Z\nsource: s\nfaults: {}\nremedies:\n  charge-it: { title: Charge, by: technician, minutes: 20, tools: charger, cures: usually, text: C. }\n",
    };
    const read = readKnowledge([...planted(), again]);
    expect(read.ok ? [] : read.problems).toMatchObject([
      {
        file: "flows/systems/zz.yaml",
        line: 5,
        says: expect.stringContaining("already stands in flows/systems/starting.yaml"),
      },
    ]);
  });

  it("wants a source for every figure, once for the file or at the thing itself", () => {
    const found = problemsOf({ from: "source: invented for tests\n", to: "" });
    expect(found.length).toBeGreaterThan(15);
    expect(found[0]?.says).toContain('has figures without a source; add "source:"');
    expect(found.map(({ at }) => at)).toContain("faults.flat");
    const own = problemsOf(
      { from: "source: invented for tests\n", to: "" },
      { from: "    group: fuel", to: "    source: a book\n    group: fuel" },
    );
    expect(own.map(({ at }) => at)).not.toContain("faults.empty-tank");
  });

  it("refuses shares of machines that do not add up", () => {
    const path = "machines/atv.yaml";
    expect(problemsOf({ path, from: "petrol: 0.75", to: "petrol: 0.5" })).toMatchObject([
      {
        file: `flows/${path}`,
        line: 6,
        says: "These shares add up to 0.75; they must add up to 1.",
      },
    ]);
    expect(problemsOf({ path, from: "{ 12: 1 }", to: "{ 12: 0.6, 24: 0.6 }" })[0]?.says).toContain(
      "1.20",
    );
  });

  it("refuses a machine kind that the program does not know", () => {
    const boat = planted().find(({ path }) => path === "machines/atv.yaml");
    const read = readKnowledge([
      ...planted(),
      { path: "machines/boat.yaml", text: boat?.text ?? "" },
    ]);
    expect(read.ok ? "" : read.problems[0]?.says).toContain(
      '"boat" is not one of the machine kinds',
    );
  });
});
