import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  boundaryOf,
  MultipartError,
  parseMultipart,
} from "../../../src/rehearsal/wire/multipart.ts";

const form = (...lines: string[]) => Buffer.from(lines.join("\r\n"), "utf8");

describe("multipart bodies", () => {
  it("reads the headers grammY writes: no blank after the colon, raw file name, no quotes", () => {
    const parts = parseMultipart(
      form(
        "--B",
        'content-disposition:form-data;name="chat_id"',
        "",
        "42",
        "--B",
        'content-disposition:form-data;name="abc";filename=Prüfbericht; Teil 2 (größer).pdf',
        "content-type:application/octet-stream",
        "",
        "bytes",
        "--B--",
        "",
      ),
      "B",
    );
    expect(parts.map(({ bytes, ...part }) => ({ ...part, text: bytes.toString() }))).toEqual([
      { name: "chat_id", text: "42" },
      {
        name: "abc",
        fileName: "Prüfbericht; Teil 2 (größer).pdf",
        contentType: "application/octet-stream",
        text: "bytes",
      },
    ]);
  });

  it("reads the quoted names other clients write", () => {
    const [part] = parseMultipart(
      form(
        "--B",
        'Content-Disposition: form-data; name="photo"; filename="a \\"b\\".jpg"',
        "",
        "x",
        "--B--",
      ),
      "B",
    );
    expect(part).toMatchObject({ name: "photo", fileName: 'a "b".jpg' });
  });

  it("keeps every byte of a file and every letter of its name", () => {
    const letters = fc.constantFrom(..."abcÄöß 中🚜;,()'._-");
    const names = fc.string({ unit: letters, minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), names, (content, name) => {
        const bytes = Buffer.from(content);
        const body = Buffer.concat([
          Buffer.from(`--zzz\r\ncontent-disposition:form-data;name="f";filename=${name}\r\n\r\n`),
          bytes,
          Buffer.from("\r\n--zzz--\r\n"),
        ]);
        const parts = parseMultipart(body, "zzz");
        expect(parts.map((part) => [part.fileName, part.bytes])).toEqual([[name.trim(), bytes]]);
      }),
      { seed: 20_261_125 },
    );
  });

  it.each([
    ["no boundary at all", "no form here"],
    ["a part that is cut off", '--B\r\ncontent-disposition:form-data;name="a"\r\n\r\nhal'],
    ["a part without a name", "--B\r\ncontent-disposition:form-data\r\n\r\nx\r\n--B--"],
    ["a part without an empty line", '--B\r\ncontent-disposition:form-data;name="a"\r\n--B--'],
  ])("refuses %s", (_case, body) => {
    expect(() => parseMultipart(Buffer.from(body), "B")).toThrow(MultipartError);
  });

  it("finds the boundary quoted or not", () => {
    expect(boundaryOf("multipart/form-data; boundary=----x1")).toBe("----x1");
    expect(boundaryOf('multipart/form-data; boundary="a b"; charset=utf-8')).toBe("a b");
    expect(boundaryOf("multipart/form-data")).toBeUndefined();
  });
});
