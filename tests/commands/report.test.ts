import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { createChangeDocument } from "../../src/cases/change-document.ts";
import { createCommit } from "../../src/cases/commit.ts";
import { openDirectory } from "../../src/cases/directory.ts";
import { reportCommand } from "../../src/commands/report.ts";
import { openLowdbStore } from "../../src/store/lowdb-store.ts";
import { runCommand } from "../helpers/command-io.ts";
import { createFakeTimers } from "../helpers/fake-timers.ts";
import { opening } from "../helpers/office-parts.ts";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "turnrow-report-"));
  writeFileSync(join(folder, "shop.yaml"), 'name: X1\nphone: "555"\nemergency: "112"\n');
  vi.stubEnv("TURNROW_DATA", folder);
});
afterEach(() => {
  vi.unstubAllEnvs();
  rmSync(folder, { recursive: true });
});

async function withCases(): Promise<void> {
  const store = await openLowdbStore(folder, { now: () => 0, onDamage: () => undefined });
  const directory = await openDirectory(store);
  const change = createChangeDocument(store, directory);
  const commit = createCommit({ change, directory, clock: createFakeTimers() });
  for (const id of ["A1", "B2"]) await commit({ kind: "case", id }, id, () => opening());
  await commit({ kind: "case", id: "A1" }, "end", () => ({
    by: "op",
    happenings: [
      { type: "cause.confirmed", faults: ["pto-left-engaged"], how: "ran-after-this" },
      {
        type: "case.closed",
        end: "solved-by-chat",
        complaint: "nothing",
        cause: "pto-left-engaged",
        correction: "move-controls",
      },
    ],
    effects: [],
  }));
}

describe("report", () => {
  it("adds up a shop without cases", async () => {
    const { code, stdout } = await runCommand(reportCommand, []);
    expect(code).toBe(0);
    expect(stdout).toContain("0 cases");
    expect(stdout).not.toMatch(/NaN|undefined/);
  });

  it("counts what is open, closed and solved by chat, and changes nothing", async () => {
    await withCases();
    const { stdout } = await runCommand(reportCommand, ["--json"]);
    expect(JSON.parse(stdout)).toMatchObject({
      cases: 2,
      open: 1,
      closed: 1,
      byEnd: { "solved-by-chat": 1 },
      causes: [{ fault: "pto-left-engaged", count: 1 }],
    });
    expect((await runCommand(reportCommand, ["--json"])).stdout).toBe(stdout);
  });

  it("writes the cases as a table", async () => {
    await withCases();
    const { code, stdout } = await runCommand(reportCommand, ["--csv", "cases"]);
    expect(code).toBe(0);
    expect(stdout.trim().split("\n")).toHaveLength(3);
  });

  it.each([[["x"]], [["--colour"]], [["--csv", "all"]]])(
    "refuses %j with exit code 2",
    async (args) => {
      const { code, stdout } = await runCommand(reportCommand, args);
      expect([code, stdout]).toEqual([2, ""]);
    },
  );

  it("says what is wrong with settings it cannot use", async () => {
    writeFileSync(join(folder, "shop.yaml"), "name: 5\n");
    const { code, stderr } = await runCommand(reportCommand, []);
    expect(code).toBe(2);
    expect(stderr).toContain("shop.yaml:1");
  });
});
