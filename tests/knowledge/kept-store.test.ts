import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { serialize } from "node:v8";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { keptKey, packKept, unpackKept } from "../../src/knowledge/kept-file.ts";
import { type KeptStore, openKeptStore } from "../../src/knowledge/kept-store.ts";

type Counts = ReadonlyMap<string, ReadonlySet<number>>;
const isCounts = (value: unknown): value is Counts => value instanceof Map;
const counts: Counts = new Map([["a", new Set([1, 2])]]);

let folder: string;
let made = 0;
beforeEach(() => {
  folder = join(mkdtempSync(join(tmpdir(), "turnrow-kept-")), "below");
  made = 0;
});
afterEach(() => rmSync(join(folder, ".."), { recursive: true }));

const open = (program = "one") => openKeptStore(folder, program);
const path = () => join(folder, "counts.kept");

async function counted(store: KeptStore, from: readonly string[] = ["text"]): Promise<number> {
  const before = made;
  const make = async () => {
    made += 1;
    return { ok: true, value: counts } as const;
  };
  const got = await store.get({ name: "counts", from, is: isCounts, make });
  expect(got).toEqual({ ok: true, value: counts });
  return made - before;
}

describe("what was made of texts", () => {
  it("is made once and then read back as it was", async () => {
    expect(await counted(open())).toBe(1);
    expect(await counted(open())).toBe(0);
    expect(readdirSync(folder)).toEqual(["counts.kept"]);
  });

  it("is made anew where a text, its place, their number or the program is another one", async () => {
    await counted(open());
    expect(await counted(open(), ["texts"])).toBe(1);
    expect(await counted(open(), ["text", "s"])).toBe(1);
    expect(await counted(open(), ["s", "text"])).toBe(1);
    expect(await counted(open("two"), ["s", "text"])).toBe(1);
    expect(await counted(open("two"), ["s", "text"])).toBe(0);
  });

  it("is made anew where the file is empty, cut short, changed, or of an older kind", async () => {
    await counted(open());
    const whole = readFileSync(path());
    const changed = Buffer.from(whole);
    changed[changed.length - 3] = (changed[changed.length - 3] ?? 0) ^ 1;
    const broken = [
      Buffer.alloc(0),
      whole.subarray(0, 20),
      whole.subarray(0, whole.length - 1),
      Buffer.concat([whole, Buffer.from("x")]),
      Buffer.concat([Buffer.from("some-older-kind\n"), whole.subarray(13)]),
      changed,
      serialize(counts),
    ];
    for (const bytes of broken) {
      writeFileSync(path(), bytes);
      expect(await counted(open()), bytes.toString("latin1").slice(0, 30)).toBe(1);
      expect(readFileSync(path()).equals(whole)).toBe(true);
    }
  });

  it("is made anew where what was kept is something else", async () => {
    await counted(open());
    writeFileSync(path(), packKept(keptKey(["one", "counts", "text"]), ["no counts"]));
    expect(await counted(open())).toBe(1);
    expect(await counted(open())).toBe(0);
  });

  it("is made every time where nothing can be written", async () => {
    writeFileSync(folder, "a file where the folder would be");
    expect(await counted(open())).toBe(1);
    expect(await counted(open())).toBe(1);
  });

  it("is found where it was kept, whoever made it", async () => {
    const thing = { name: "counts", from: ["text"], is: isCounts };
    expect(open().find(thing)).toBeUndefined();
    open().keep(thing, counts);
    expect(open().find(thing)).toEqual(counts);
    expect(await counted(open())).toBe(0);
  });

  it("is not kept where it is a mistake", async () => {
    const problems = [{ says: "no" }];
    const make = async () => ({ ok: false, problems }) as const;
    const got = await open().get({ name: "counts", from: ["text"], is: isCounts, make });
    expect(got).toEqual({ ok: false, problems });
    expect(await counted(open())).toBe(1);
  });

  it("is read whole while other programs keep it at the same time", async () => {
    await Promise.all(Array.from({ length: 8 }, () => counted(open())));
    expect(readdirSync(folder)).toEqual(["counts.kept"]);
    expect(await counted(open())).toBe(0);
  });
});

describe("a kept file", () => {
  it("gives back Maps, Sets, gaps and which parts are one and the same", () => {
    const part = { words: new Set(["a"]), none: undefined, upTo: Number.POSITIVE_INFINITY };
    const key = keptKey(["x"]);
    const back = unpackKept(key, packKept(key, new Map([["one", [part, part]]])));
    expect(back).toEqual(new Map([["one", [part, part]]]));
    const list: unknown = back instanceof Map ? back.get("one") : undefined;
    expect(Array.isArray(list) && list[0] === list[1]).toBe(true);
  });

  it("opens with its own key alone", () => {
    const bytes = packKept(keptKey(["x"]), 1);
    expect(unpackKept(keptKey(["x"]), bytes)).toBe(1);
    expect(unpackKept(keptKey(["y"]), bytes)).toBeUndefined();
  });
});
