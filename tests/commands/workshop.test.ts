import { cpSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { brokenFlows, openWorkshop, warmUp } from "../../src/commands/workshop.ts";
import type { Reader } from "../../src/domain/reading.ts";
import { workshop } from "../helpers/dialog.ts";

let root: string;
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), "turnrow-workshop-"));
  cpSync("flows", join(root, "flows"), { recursive: true });
  cpSync("locales", join(root, "locales"), { recursive: true });
});
afterAll(() => rmSync(root, { recursive: true }));

describe("what every command that thinks about cases needs", () => {
  it("is one knowledge, a reader for it, and the circuits", () => {
    expect(workshop.languages[0]).toBe("en");
    expect(workshop.circuits.size).toBeGreaterThan(0);
    const { understood } = workshop.reader.read("one click", { languages: ["en"] });
    const observation = understood[0]?.observation ?? "";
    expect(workshop.knowledge.observations.has(observation)).toBe(true);
  });

  it("makes every language ready when it is warmed up", () => {
    const asked: string[] = [];
    const read: Reader["read"] = (text, options) => {
      asked.push(text, ...options.languages);
      return workshop.reader.read(text, options);
    };
    warmUp({ ...workshop, reader: { read } });
    expect(asked.slice(1)).toEqual(workshop.languages);
    expect(asked[0]).not.toBe("");
  });

  it("is refused where a file is broken, with its place, and one plain sentence for the user", async () => {
    writeFileSync(join(root, "flows", "systems", "battery.yaml"), "title: [unclosed\n");
    const opened = await openWorkshop(root);
    if (opened.ok) throw new Error("It was opened.");
    expect(opened.problems[0]?.file).toContain("battery.yaml");
    expect(brokenFlows(opened.problems)).toContain("npm run flows");
    expect(brokenFlows([{ says: "x" }])).toContain("one mistake");
  }, 30_000);
});
