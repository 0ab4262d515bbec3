import { describe, expect, it } from "vitest";
import { benchCommand } from "../../src/commands/bench.ts";
import { runCommand } from "../helpers/command-io.ts";

// What the parts measure has tests of its own; they take too long to run through the command here.
describe("bench", () => {
  it.each([[["everything"]], [["engine", "--colour"]]])(
    "names its parts where %j is not among them",
    async (args) => {
      const { code, stdout, stderr } = await runCommand(benchCommand, args);
      expect([code, stdout]).toEqual([2, ""]);
      expect(stderr).toContain("engine|circuit|shop");
    },
  );

  it("measures nothing on knowledge that is broken", async () => {
    const { code, stdout } = await runCommand(benchCommand, ["engine"], { root: "tests" });
    expect([code, stdout]).toEqual([1, ""]);
  });
});
