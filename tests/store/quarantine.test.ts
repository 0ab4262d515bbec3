import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import type { Incoming } from "../../src/domain/incoming.ts";
import { createQuarantine } from "../../src/store/quarantine.ts";

it("the quarantine keeps each update in a file of its own", async () => {
  const folder = mkdtempSync(join(tmpdir(), "turnrow-quarantine-"));
  try {
    const incoming: Incoming = {
      update: "7.1",
      sentAt: 0,
      chat: "1",
      direct: true,
      from: { id: "1", name: "Ann" },
      what: { kind: "text", text: "it clicks" },
    };
    const quarantine = createQuarantine(join(folder, "kept"));
    await quarantine.put({ incoming, at: 5, error: "TypeError: x" });
    await quarantine.put({ incoming: { ...incoming, update: "7.2" }, at: 6, error: "y" });
    const names = readdirSync(join(folder, "kept")).sort();
    expect(names).toHaveLength(2);
    const kept: unknown = JSON.parse(readFileSync(join(folder, "kept", names[0] ?? ""), "utf8"));
    expect(kept).toEqual({ incoming, at: 5, error: "TypeError: x" });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
