import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { checkCircuits } from "../../src/knowledge/check-circuits.ts";
import { loadCircuits } from "../../src/knowledge/circuit-files.ts";
import { knowledgeOf } from "./small-flows.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));

describe("circuits and faults", () => {
  it("reports simulated faults that no system has, and marks without a circuit", () => {
    const { circuits } = loadCircuits(root);
    const small = knowledgeOf({ from: "group: fuel", to: "circuit: true\n    group: fuel" });
    const says = checkCircuits(small, circuits).map((one) => one.says);
    expect(says).toContain(
      'No system file has the fault "battery-flat". Known: flat, worn, empty-tank.',
    );
    expect(says).toContain('"empty-tank" says "circuit: true", but no circuit simulates it.');
  }, 60_000);

  it("says nothing where there are no circuits", () => {
    expect(checkCircuits(knowledgeOf(), new Map())).toEqual([]);
  });
});
