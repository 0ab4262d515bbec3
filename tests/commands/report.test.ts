import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
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

  it("says each figure in words, with how sure it is", async () => {
    await withCases();
    const { stdout } = await runCommand(reportCommand, []);
    expect(stdout).toContain("2 cases: 1 open, 1 closed");
    // One of one: by Wilson's interval (J. Am. Stat. Assoc. 22, 1927) the share is at least
    // 1 / (1 + 1.96²) = 20.7 %.
    expect(stdout).toContain("Solved by chat: 100 % of 1 (21 % to 100 %)");
    expect(stdout).toContain("Fixed on the first visit: none yet");
  });

  it("disturbs nothing that the program at work there has just begun or cannot read", async () => {
    await withCases();
    const draft = join(folder, "cases", "._c3.json.tmp");
    writeFileSync(draft, "half a case");
    const broken = join(folder, "cases", "_d4.json");
    writeFileSync(broken, "{");
    const before = readdirSync(folder, { recursive: true });
    const { code, stderr, stdout } = await runCommand(reportCommand, []);
    expect(code).toBe(0);
    expect(stdout).toContain("2 cases");
    expect(stderr).toContain("_d4.json");
    expect(readdirSync(folder, { recursive: true })).toEqual(before);
    expect([readFileSync(draft, "utf8"), readFileSync(broken, "utf8")]).toEqual([
      ...["half a case", "{"],
    ]);
  });

  it("writes how far each cause has moved from its shipped share", async () => {
    await withCases();
    const { code, stdout } = await runCommand(reportCommand, ["--csv", "rates"]);
    expect(code).toBe(0);
    const rows = stdout.trim().split(/\r?\n/);
    expect(rows[0]).toBe("machine,cause,times the shipped share");
    const moved = rows.slice(1).map((row) => row.split(","));
    expect(moved[0]?.[1]).toBe("pto-left-engaged");
    expect(Number(moved[0]?.[2])).toBeGreaterThan(1);
  }, 60_000);

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
