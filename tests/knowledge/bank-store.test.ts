import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import { NOTHING_WRONG } from "../../src/circuit/bank.ts";
import type { BankRequest } from "../../src/circuit/bank-build.ts";
import {
  type BankBuilder,
  buildHere,
  createWorkerBuilder,
} from "../../src/knowledge/bank-builder.ts";
import { bankBytes, bankKey, packBlocks, unpackBlocks } from "../../src/knowledge/bank-file.ts";
import { openBankStore } from "../../src/knowledge/bank-store.ts";
import { circuitNamed } from "../helpers/circuits.ts";

/** Covers banks on disk, in workers and in memory. */
const network = circuitNamed("walk-behind");
const request: BankRequest = { band: "mild", seed: 1, machines: 6, pairs: [] };
const folder = mkdtempSync(join(tmpdir(), "bank-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function counted(): { build: BankBuilder; count: () => number } {
  let builds = 0;
  const build: BankBuilder = (...args) => {
    builds += 1;
    return buildHere(...args);
  };
  return { build, count: () => builds };
}

describe("a bank file", () => {
  it("gives back what was put in, and nothing when cut short or changed", async () => {
    const blocks = await buildHere(network, request);
    const bytes = packBlocks(blocks);
    expect(unpackBlocks(bytes)).toEqual(blocks);
    expect(unpackBlocks(bytes.subarray(0, bytes.length - 1))).toBeUndefined();
    const changed = Buffer.from(bytes);
    changed[bytes.length - 3] = (changed[bytes.length - 3] ?? 0) ^ 1;
    expect(unpackBlocks(changed)).toBeUndefined();
    expect(unpackBlocks(Buffer.from("turnrow"))).toBeUndefined();
  });

  it("has another key for another circuit, seed, band or size", () => {
    const key = bankKey(network, request);
    expect(bankKey(network, { ...request })).toBe(key);
    expect(bankKey(network, { ...request, seed: 2 })).not.toBe(key);
    expect(bankKey(network, { ...request, band: "frost" })).not.toBe(key);
    expect(bankKey({ ...network, volts: 24 }, request)).not.toBe(key);
  });

  it("stays under 30 MB a machine kind and band at 2,000 machines", async () => {
    const blocks = await buildHere(circuitNamed("zero-turn"), { ...request, machines: 2 });
    expect(bankBytes(blocks) * 1000).toBeLessThan(30e6);
  });
});

describe("the bank store", () => {
  it("builds once, then reads from memory, then from disk", async () => {
    const { build, count } = counted();
    const store = openBankStore({ folder, build });
    expect(store.now(network, request)).toBeUndefined();
    const [one, other] = await Promise.all([
      store.ready(network, request),
      store.ready(network, request),
    ]);
    expect(one).toBe(other);
    expect(store.now(network, request)).toBe(one);
    const again = await openBankStore({ folder, build }).ready(network, request);
    expect(again).toEqual(one);
    expect(count()).toBe(1);
    expect(again.blocks.get(NOTHING_WRONG)?.[0]?.machines).toBe(6);
  });

  it("builds anew where the file is damaged", async () => {
    const { build, count } = counted();
    const [name = ""] = readdirSync(folder).filter((one) => one.startsWith("walk-behind-mild-"));
    const bytes = readFileSync(join(folder, name));
    writeFileSync(join(folder, name), bytes.subarray(0, 100));
    await openBankStore({ folder, build }).ready(network, request);
    expect(count()).toBe(1);
    expect(readFileSync(join(folder, name))).toEqual(bytes);
  });

  it("drops the file of an older circuit, and keeps other bands", async () => {
    const store = openBankStore({ folder, build: buildHere });
    await store.ready(network, { ...request, band: "frost" });
    await store.ready({ ...network, title: "changed" }, request);
    const names = readdirSync(folder);
    expect(names.filter((one) => one.startsWith("walk-behind-mild-"))).toHaveLength(1);
    expect(names.filter((one) => one.startsWith("walk-behind-frost-"))).toHaveLength(1);
  });

  it("forgets the bank used least recently when memory is short", async () => {
    const bytes = bankBytes(await buildHere(network, request));
    const store = openBankStore({ folder, build: buildHere, memoryBytes: 2 * bytes });
    const bands = ["mild", "frost", "hot"] as const;
    await store.ready(network, { ...request, band: "mild" });
    await store.ready(network, { ...request, band: "frost" });
    store.now(network, { ...request, band: "mild" });
    await store.ready(network, { ...request, band: "hot" });
    const held = bands.filter((band) => store.now(network, { ...request, band }) !== undefined);
    expect(held).toEqual(["mild", "hot"]);
  });

  it("works without a disk that can be written", async () => {
    const file = join(folder, "a-file");
    writeFileSync(file, "");
    const store = openBankStore({ folder: join(file, "below"), build: buildHere });
    expect((await store.ready(network, request)).blocks.size).toBeGreaterThan(30);
  });

  it("passes a failed build on and tries again next time", async () => {
    let fail = true;
    const build: BankBuilder = (...args) =>
      fail ? Promise.reject(new Error("worker died")) : buildHere(...args);
    const store = openBankStore({ folder: join(folder, "other"), build });
    await expect(store.ready(network, request)).rejects.toThrow("worker died");
    fail = false;
    expect((await store.ready(network, request)).blocks.size).toBeGreaterThan(30);
  });
});

describe("worker threads", () => {
  it("give the same bank as this thread, in the same order", async () => {
    const worker = pathToFileURL(join(process.cwd(), ".build/knowledge/bank-worker.js"));
    expect(existsSync(worker), "npm test builds the program before it tests").toBe(true);
    const build = createWorkerBuilder(worker);
    expect(build).not.toBe(buildHere);
    expect(await build(network, request)).toEqual(await buildHere(network, request));
  });

  it("are not used where there is no compiled worker", () => {
    expect(createWorkerBuilder(pathToFileURL(join(folder, "none.js")))).toBe(buildHere);
  });
});
