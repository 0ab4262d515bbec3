import { describe, expect, it } from "vitest";
import type { DocumentStore } from "../../src/cases/ports.ts";
import { InvalidDocument } from "../../src/store/document-text.ts";
import { caseDocument, personDocument, shopDocument } from "../helpers/documents.ts";

async function collect<T>(items: AsyncIterable<T>): Promise<T[]> {
  const all: T[] = [];
  for await (const item of items) all.push(item);
  return all;
}

/** What every store promises; each store's test runs it and adds only what is special. */
export function storeContract(name: string, open: () => Promise<DocumentStore>): void {
  describe(`${name} keeps the contract`, () => {
    it("has nothing at first", async () => {
      const store = await open();
      expect(await store.load("case", "A1")).toBeNull();
      expect(await collect(store.all("case"))).toEqual([]);
    });

    it.each([
      ["case", caseDocument()],
      ["person", personDocument()],
      ["shop", shopDocument()],
    ] as const)("gives a %s back as it was given", async (kind, document) => {
      const store = await open();
      expect(await store.save(document, 0)).toBe("saved");
      expect(await store.load(kind, document.id)).toEqual(document);
      expect(await collect(store.all(kind))).toEqual([document]);
    });

    it("takes a write only on the version it was decided on", async () => {
      const store = await open();
      await store.save(caseDocument(1), 0);
      expect(await store.save(caseDocument(1), 0)).toBe("conflict");
      expect(await store.save(caseDocument(3), 2)).toBe("conflict");
      expect(await store.save(caseDocument(2), 1)).toBe("saved");
      expect((await store.load("case", "A1"))?.version).toBe(2);
    });

    it("lets one of several writers through who write at once", async () => {
      const store = await open();
      const writes = Array.from({ length: 8 }, () => store.save(caseDocument(1), 0));
      const outcomes = await Promise.all(writes);
      expect(outcomes.filter((outcome) => outcome === "saved")).toHaveLength(1);
    });

    it("keeps documents of one id but different kinds apart", async () => {
      const store = await open();
      await store.save({ ...caseDocument(), id: "7" }, 0);
      await store.save({ ...personDocument(), id: "7" }, 0);
      expect((await store.load("case", "7"))?.kind).toBe("case");
      expect((await store.load("person", "7"))?.kind).toBe("person");
      expect(await store.load("shop", "7")).toBeNull();
    });

    it("keeps strange ids apart", async () => {
      const store = await open();
      const ids = ["a", "A", "../a", "a/b", "a b", "-100", "", ".", "con", "ä", "_a", "=61", "😀"];
      for (const id of ids) await store.save({ ...personDocument(), id, name: `<${id}>` }, 0);
      for (const id of ids) expect((await store.load("person", id))?.name).toBe(`<${id}>`);
      expect(await collect(store.all("person"))).toHaveLength(ids.length);
    });

    it("keeps keys that it does not know", async () => {
      const store = await open();
      const document = { ...personDocument(), later: { version: ["adds", 1] } };
      await store.save(document, 0);
      expect(await store.load("person", document.id)).toEqual(document);
    });

    it("refuses to write what could not be read back, and keeps what there was", async () => {
      const store = await open();
      await store.save(caseDocument(1), 0);
      const [first] = caseDocument().events;
      if (!first) throw new Error("the sample has no event");
      const broken = { ...caseDocument(2), events: [{ ...first, at: Number.NaN }] };
      await expect(store.save(broken, 1)).rejects.toThrow(InvalidDocument);
      expect(await store.load("case", "A1")).toEqual(caseDocument(1));
    });

    it("hands out copies", async () => {
      const store = await open();
      const document = { ...personDocument(), machines: [] };
      await store.save(document, 0);
      Object.assign((await store.load("person", document.id)) ?? {}, { name: "changed" });
      Object.assign(document, { name: "changed" });
      expect((await store.load("person", document.id))?.name).toBe("Ann");
    });

    it("removes for good, and begins at version one again", async () => {
      const store = await open();
      await store.save(caseDocument(1), 0);
      await store.remove("case", "A1");
      await store.remove("case", "A1");
      expect(await store.load("case", "A1")).toBeNull();
      expect(await store.save(caseDocument(1), 0)).toBe("saved");
    });
  });
}
