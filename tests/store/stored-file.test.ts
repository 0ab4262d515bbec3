import { describe, expect, it } from "vitest";
import { formatRules, writeDocument } from "../../src/store/document-text.ts";
import { fileNameFor } from "../../src/store/file-name.ts";
import { isStored, readStored } from "../../src/store/stored-file.ts";
import { caseDocument } from "../helpers/documents.ts";
import { createFakeDisk } from "../helpers/fake-disk.ts";

describe("a stored file", () => {
  it("has the name of the document in it, and no draft's", () => {
    expect(isStored(fileNameFor("A1"))).toBe(true);
    expect(isStored(`.${fileNameFor("A1")}.tmp`)).toBe(false);
    expect(isStored(`${fileNameFor("A1")}.damaged-1970`)).toBe(false);
  });

  it("is the document, nothing, or a reason why it cannot be used", async () => {
    const { files } = createFakeDisk();
    await files.makeFolder("/d");
    const read = (name: string) => readStored("case", `/d/${name}`, { files, rules: formatRules });
    expect(await read("_a1.json")).toEqual({ ok: true, document: null });
    await files.write("/d/_a1.json", writeDocument(caseDocument()));
    expect(await read("_a1.json")).toMatchObject({ ok: true, document: caseDocument() });
    await files.write("/d/_b2.json", writeDocument(caseDocument()));
    expect(await read("_b2.json")).toEqual({ ok: false, why: "it belongs to _a1.json" });
  });
});
