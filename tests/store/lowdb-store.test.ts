import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { NewerFormat } from "../../src/store/document-text.ts";
import type { Damage } from "../../src/store/lowdb-store.ts";
import { openLowdbStore } from "../../src/store/lowdb-store.ts";
import { caseDocument, personDocument } from "../helpers/documents.ts";
import { createFakeDisk, Killed } from "../helpers/fake-disk.ts";
import { storeContract } from "./store-contract.ts";

let root = "";
beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), "turnrow-store-"));
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

const options = () => {
  const damages: Damage[] = [];
  return { damages, now: () => 0, onDamage: (damage: Damage) => void damages.push(damage) };
};
const fresh = () => mkdtempSync(join(root, "x-"));

storeContract("the lowdb store", () => openLowdbStore(fresh(), options()));

describe("the lowdb store on a real disk", () => {
  it("finds everything again after a restart", async () => {
    const folder = fresh();
    await (await openLowdbStore(folder, options())).save(caseDocument(), 0);
    const again = await openLowdbStore(folder, options());
    expect(await again.load("case", "A1")).toEqual(caseDocument());
    expect(readdirSync(join(folder, "cases"))).toEqual(["_a1.json"]);
  });

  it.each([
    ["nothing at all", ""],
    ["null", "null"],
    ["half a file", '{"format":1,"kind":"case","id":"A1","ver'],
    ["a list", "[]"],
    ["no format", '{"kind":"case"}'],
    ["a wrong type", JSON.stringify({ ...caseDocument(), version: "one" })],
    ["an event nobody knows", JSON.stringify({ ...caseDocument(), events: [{ type: "x" }] })],
    ["another document", JSON.stringify({ ...caseDocument(), id: "B2" })],
    ["another kind", JSON.stringify({ ...personDocument(), id: "A1" })],
  ])("sets a file with %s aside, reports it, and never overwrites it", async (_, text) => {
    const folder = fresh();
    const { damages, ...rest } = options();
    const store = await openLowdbStore(folder, rest);
    writeFileSync(join(folder, "cases", "_a1.json"), text);
    expect(await store.load("case", "A1")).toBeNull();
    expect(damages).toHaveLength(1);
    expect(damages[0]?.file).toContain("_a1.json.damaged-1970");
    expect(await store.save(caseDocument(), 0)).toBe("saved");
    expect(readFileSync(damages[0]?.file ?? "", "utf8")).toBe(text);
    expect(damages[0]?.why).not.toContain("Ann");
  });

  it("keeps two damaged ones of the same moment", async () => {
    const folder = fresh();
    const { damages, ...rest } = options();
    const store = await openLowdbStore(folder, rest);
    for (const text of ["one", "two"]) {
      writeFileSync(join(folder, "cases", "_a1.json"), text);
      expect(await store.load("case", "A1")).toBeNull();
    }
    expect(damages.map(({ file }) => readFileSync(file, "utf8"))).toEqual(["one", "two"]);
  });

  it("goes on with the others when one is damaged", async () => {
    const folder = fresh();
    const { damages, ...rest } = options();
    const store = await openLowdbStore(folder, rest);
    await store.save(caseDocument(), 0);
    writeFileSync(join(folder, "cases", "b.json"), "{");
    const ids: string[] = [];
    for await (const { id } of store.all("case")) ids.push(id);
    expect(ids).toEqual(["A1"]);
    expect(damages).toHaveLength(1);
  });

  it("forgets a person together with damaged copies", async () => {
    const folder = fresh();
    const store = await openLowdbStore(folder, options());
    writeFileSync(join(folder, "people", "op.json"), "{");
    await store.load("person", "op");
    await store.save(personDocument(), 0);
    await store.remove("person", "op");
    expect(readdirSync(join(folder, "people"))).toEqual([]);
  });

  it("refuses data of a newer version instead of setting it aside", async () => {
    const folder = fresh();
    const { damages, ...rest } = options();
    const store = await openLowdbStore(folder, rest);
    writeFileSync(join(folder, "cases", "_a1.json"), JSON.stringify({ format: 99 }));
    await expect(store.load("case", "A1")).rejects.toThrow(NewerFormat);
    expect(damages).toEqual([]);
  });

  it("reads older formats through their migrations", async () => {
    const folder = fresh();
    await (await openLowdbStore(folder, options())).save(personDocument(), 0);
    const rules = {
      current: 3,
      migrations: {
        1: (raw: object) => ({ ...raw, name: "one" }),
        2: (raw: object) => ({ ...raw, language: "two" }),
      },
    };
    const store = await openLowdbStore(folder, { ...options(), rules });
    expect(await store.load("person", "op")).toMatchObject({
      format: 3,
      name: "one",
      language: "two",
      chat: "11",
    });
  });
});

const old = caseDocument(1);
const next = caseDocument(2);
const open = (disk: ReturnType<typeof createFakeDisk>) =>
  openLowdbStore("/d", { ...options(), files: disk.files });

async function prepared() {
  const disk = createFakeDisk();
  const store = await open(disk);
  await store.save(old, 0);
  const before = disk.operations();
  return { disk, store, before };
}

async function operationsOfASave(): Promise<number> {
  const { disk, store, before } = await prepared();
  await store.save(next, 1);
  return disk.operations() - before;
}

describe("a kill between any two file operations", () => {
  it("leaves the old document or the new one, never neither, and no litter", async () => {
    const count = await operationsOfASave();
    expect(count).toBeGreaterThanOrEqual(5);
    const seen: (number | undefined)[] = [];
    for (let allowed = 0; allowed < count; allowed++) {
      const { disk, store } = await prepared();
      disk.dieAfter(allowed);
      await expect(store.save(next, 1)).rejects.toThrow(Killed);
      disk.restart();
      const again = await open(disk);
      const document = await again.load("case", "A1");
      expect([old, next]).toContainEqual(document);
      seen.push(document?.version);
      expect(await disk.files.names("/d/cases")).toEqual(["_a1.json"]);
      expect(
        await again.save(caseDocument((document?.version ?? 0) + 1), document?.version ?? 0),
      ).toBe("saved");
    }
    expect(new Set(seen)).toEqual(new Set([1, 2]));
  });

  it("leaves nothing or the whole of a first document", async () => {
    for (let allowed = 0; allowed < 6; allowed++) {
      const disk = createFakeDisk();
      const store = await open(disk);
      disk.dieAfter(allowed);
      await store.save(old, 0).catch(() => undefined);
      disk.restart();
      expect([null, old]).toContainEqual(await (await open(disk)).load("case", "A1"));
    }
  });

  it("loses neither the damaged file nor the way on while one is set aside", async () => {
    for (let allowed = 0; allowed < 8; allowed++) {
      const disk = createFakeDisk();
      const store = await open(disk);
      await disk.files.write("/d/cases/_a1.json", "rubbish");
      disk.dieAfter(allowed);
      await store.load("case", "A1").catch(() => undefined);
      disk.restart();
      const again = await open(disk);
      expect(await again.load("case", "A1")).toBeNull();
      const names = await disk.files.names("/d/cases");
      const texts = await Promise.all(names.map((name) => disk.files.read(`/d/cases/${name}`)));
      expect(texts).toEqual(["rubbish"]);
    }
  });
});

describe("a power cut", () => {
  it.each([true, false])("after `saved` loses nothing (unsynced names kept: %s)", async (keeps) => {
    const { disk, store } = await prepared();
    expect(await store.save(next, 1)).toBe("saved");
    disk.cutPower(keeps);
    expect(await (await open(disk)).load("case", "A1")).toEqual(next);
  });

  it("at any operation leaves the old document or the new one", async () => {
    const count = await operationsOfASave();
    for (const keeps of [true, false]) {
      for (let allowed = 0; allowed <= count; allowed++) {
        const { disk, store } = await prepared();
        disk.dieAfter(allowed);
        await store.save(next, 1).catch(() => undefined);
        disk.cutPower(keeps);
        expect([old, next]).toContainEqual(await (await open(disk)).load("case", "A1"));
      }
    }
  });
});
