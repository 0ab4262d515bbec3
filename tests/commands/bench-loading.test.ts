import { cpSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { benchLoading } from "../../src/commands/bench-loading.ts";

let root: string;
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), "turnrow-bench-loading-"));
  cpSync("flows", join(root, "flows"), { recursive: true });
  const phrases = join("locales", "es", "phrases.yaml");
  cpSync(phrases, join(root, phrases));
});
afterAll(() => rmSync(root, { recursive: true }));

describe("the bench of loading", () => {
  it("compares what is kept with the texts read anew and with a parser alone, and leaves nothing", async () => {
    const found = await benchLoading(root, 1);
    expect(found.ratio).toBeCloseTo(found.anewMs / found.keptMs, 9);
    expect(found.keptMs).toBeGreaterThan(0);
    expect(found.peer.name).toBe("yaml");
    expect(found.peer.ratio).toBeGreaterThan(0);
    expect(readdirSync(root).sort()).toEqual(["flows", "locales"]);
  }, 90_000);
});
