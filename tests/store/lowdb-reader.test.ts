import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createLowdbReader } from "../../src/store/lowdb-reader.ts";
import { type Damage, openLowdbStore } from "../../src/store/lowdb-store.ts";
import { caseDocument } from "../helpers/documents.ts";

let root = "";
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), "turnrow-reader-"));
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

async function readAll(folder: string) {
  const damages: Damage[] = [];
  const reader = createLowdbReader(folder, { onDamage: (one) => void damages.push(one) });
  const found = [];
  for await (const one of reader.all("case")) found.push(one);
  return { found, damages };
}

describe("reading beside the program", () => {
  it("finds what the program wrote and leaves its drafts and damaged files alone", async () => {
    const folder = mkdtempSync(join(root, "x-"));
    const store = await openLowdbStore(folder, { now: () => 0, onDamage: () => undefined });
    await store.save(caseDocument(), 0);
    writeFileSync(join(folder, "cases", "._b2.json.tmp"), "half");
    writeFileSync(join(folder, "cases", "_c3.json"), "[]");
    const before = readdirSync(join(folder, "cases"));
    const { found, damages } = await readAll(folder);
    expect(found).toEqual([caseDocument()]);
    expect(damages.map(({ file }) => file)).toEqual([join(folder, "cases", "_c3.json")]);
    expect(readdirSync(join(folder, "cases"))).toEqual(before);
  });

  it("finds nothing in a folder that is not there, and does not make it", async () => {
    const folder = mkdtempSync(join(root, "x-"));
    expect((await readAll(join(folder, "none"))).found).toEqual([]);
    expect(readdirSync(folder)).toEqual([]);
  });

  it("passes over a file that went between its name and its reading", async () => {
    const damages: Damage[] = [];
    const files = { names: async () => ["_a1.json"], read: async () => null };
    const reader = createLowdbReader("x", { files, onDamage: (one) => void damages.push(one) });
    for await (const one of reader.all("case")) expect(one).toBeNull();
    expect(damages).toEqual([]);
  });
});
