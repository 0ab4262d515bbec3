import { describe, expect, it } from "vitest";
import { FileBook, mimeTypeOf } from "../../../src/rehearsal/world/files.ts";

const document = (text: string) =>
  ({ kind: "document", name: "a.pdf", bytes: Buffer.from(text) }) as const;

describe("file ids", () => {
  it("differ for every file and bot, while the unique id goes with the bytes", () => {
    const files = new FileBook(() => 0, "1:a");
    const others = new FileBook(() => 0, "1:b");
    const [first, same, other] = [
      files.add(document("x")),
      files.add(document("x")),
      files.add(document("y")),
    ];
    expect(first.fileId).not.toBe(same.fileId);
    expect(first.uniqueId).toBe(same.uniqueId);
    expect(first.uniqueId).not.toBe(other.uniqueId);
    const foreign = others.add(document("x"));
    expect(foreign.uniqueId).toBe(first.uniqueId);
    expect(files.get(foreign.fileId)).toBeUndefined();
    expect([files.hasMade(first.fileId), files.hasMade(foreign.fileId)]).toEqual([true, false]);
  });
});

it("types follow the ending of the name", () => {
  expect(["a.JPG", "b.ics", "c.pdf", "d", "e.xyz"].map(mimeTypeOf)).toEqual([
    "image/jpeg",
    "text/calendar",
    "application/pdf",
    "application/octet-stream",
    "application/octet-stream",
  ]);
});
