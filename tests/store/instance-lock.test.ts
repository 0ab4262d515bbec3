import { spawn } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { AlreadyRunning, processMark, takeInstanceLock } from "../../src/store/instance-lock.ts";

let folder = "";
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "turnrow-lock-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** A number that no process has: it was a child's that has ended. */
async function deadPid(): Promise<number> {
  const child = spawn(process.execPath, ["-e", ""]);
  await new Promise((resolve) => child.on("exit", resolve));
  return child.pid ?? 0;
}

describe("the instance lock", () => {
  it("keeps a second one out until it is released", () => {
    const lock = takeInstanceLock(folder);
    expect(() => takeInstanceLock(folder)).toThrow(AlreadyRunning);
    expect(() => takeInstanceLock(folder)).toThrow(`process ${process.pid}`);
    lock.release();
    takeInstanceLock(folder).release();
    expect(readdirSync(folder)).toEqual([]);
  });

  it("is taken over from a process that is gone", async () => {
    const pid = await deadPid();
    expect(processMark(pid)).toBeNull();
    writeFileSync(join(folder, "turnrow.lock"), `${pid}\nwhatever\n`);
    takeInstanceLock(folder).release();
  });

  it("is taken over when another process has got the number meanwhile", () => {
    writeFileSync(join(folder, "turnrow.lock"), "1\nan earlier start\n");
    takeInstanceLock(folder, 1, () => "a later start").release();
  });

  it("is kept where it cannot be told which process it was", () => {
    writeFileSync(join(folder, "turnrow.lock"), "1\nan earlier start\n");
    expect(() => takeInstanceLock(folder, 2, () => "alive")).toThrow(AlreadyRunning);
  });

  it("is taken over when it was never written to the end", () => {
    writeFileSync(join(folder, "turnrow.lock"), "");
    takeInstanceLock(folder).release();
  });

  it("is not removed by one who no longer holds it", () => {
    const lock = takeInstanceLock(folder);
    writeFileSync(join(folder, "turnrow.lock"), "1\nother\n");
    lock.release();
    expect(readdirSync(folder)).toEqual(["turnrow.lock"]);
  });

  it("marks this process the same each time", () => {
    expect(processMark(process.pid)).toBe(processMark(process.pid));
  });
});
