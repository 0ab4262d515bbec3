import { describe, expect, it } from "vitest";
import { createChangeDocument, StillContended } from "../../src/cases/change-document.ts";
import { caseDocument } from "../helpers/documents.ts";
import { createOfficeParts, opening } from "../helpers/office-parts.ts";

const target = { kind: "case", id: "A1" } as const;

describe("changeDocument", () => {
  it("counts the version up and tells the directory", async () => {
    const { commit, change, directory } = await createOfficeParts();
    await commit(target, "u1", () => opening());
    const { document } = await change(target, (old) => old && { ...old, version: 99 });
    expect(document?.version).toBe(2);
    expect(directory.case("A1")).not.toBeNull();
  });

  it("leaves a document alone where the step wants nothing", async () => {
    const { change } = await createOfficeParts();
    expect(await change(target, () => null)).toEqual({ changed: false, document: null });
  });

  it("gives up with the document's name when it never gets through", async () => {
    const { commit, store, directory } = await createOfficeParts();
    await commit(target, "u1", () => opening());
    const change = createChangeDocument({ ...store, save: async () => "conflict" }, directory);
    await expect(change(target, (old) => old)).rejects.toThrow(StillContended);
    await expect(change(target, (old) => old)).rejects.toThrow("case A1");
  });

  it("knows what went through although the disk complained", async () => {
    const { store, directory } = await createOfficeParts();
    const complaining = {
      ...store,
      save: async (...write: Parameters<typeof store.save>) => {
        await store.save(...write);
        throw new Error("the folder could not be synced");
      },
    };
    const change = createChangeDocument(complaining, directory);
    await expect(change(target, () => caseDocument())).rejects.toThrow("synced");
    expect(directory.seen("u1")).toBe(true);
    expect(directory.pending("chat/-5")).toHaveLength(1);
  });
});
