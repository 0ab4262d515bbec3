import { describe, expect, it } from "vitest";
import { benchCircuit } from "../../src/commands/bench-circuit.ts";
import { buildHere } from "../../src/knowledge/bank-builder.ts";
import { workshop } from "../helpers/dialog.ts";

describe("the bench of the circuits", () => {
  it("says how much weighing whole machines is worth, for two kinds of starting circuit", async () => {
    const { circuits, knowledge } = workshop;
    const figures = await benchCircuit({
      ...{ circuits, knowledge, build: buildHere },
      ...{ machines: 60, heldOutPerFault: 1 },
    });
    expect(figures.map((one) => one.circuit)).toEqual(["garden-tractor", "compact-tractor"]);
    for (const { heldOut, speed } of figures) {
      expect(heldOut.joint.map((one) => one.answers)).toEqual([4, 8, 14]);
      expect(speed.updateMs).toBeGreaterThan(0);
      expect(speed.nextCheck.ratio).toBeGreaterThan(0);
      // What is kept weighed comes on top of the bank, for each of its machines alike.
      expect(speed.mostMegabytes).toBeGreaterThan(speed.bankMegabytes);
    }
  }, 120_000);
});
