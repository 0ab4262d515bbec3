import { describe, expect, it } from "vitest";
import { isRecord, Params } from "../../../src/rehearsal/wire/params.ts";

const params = (values: Record<string, unknown>) => new Params(new Map(Object.entries(values)));

describe("arguments of a call", () => {
  it("give numbers and truth values as text, and text as numbers", () => {
    const given = params({ a: 12, b: "-7", c: true, d: "1.5", e: "x" });
    expect([given.text("a"), given.text("c"), given.text("missing")]).toEqual(["12", "true", ""]);
    expect([given.integer("a"), given.integer("b"), given.integer("d")]).toEqual([
      12,
      -7,
      undefined,
    ]);
    expect([given.number("d"), given.number("e"), given.number("missing")]).toEqual([
      1.5,
      undefined,
      undefined,
    ]);
  });

  it("take true, yes and 1 in any case for yes", () => {
    const given = params({ a: true, b: "Yes", c: "1", d: "no", e: 0 });
    expect(["a", "b", "c", "d", "e", "missing"].map((name) => given.flag(name))).toEqual([
      true,
      true,
      true,
      false,
      false,
      false,
    ]);
  });

  it("take structured values as JSON or as JSON text", () => {
    const given = params({ a: { x: 1 }, b: '{"x":1}', c: "", d: null });
    expect(given.json("a")).toEqual({ x: 1 });
    expect(given.json("b")).toEqual({ x: 1 });
    expect([given.json("c"), given.json("d"), given.json("missing")]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    expect(() => params({ a: "{" }).json("a")).toThrow(SyntaxError);
  });

  it("are kept as plain data, files by name and size only", () => {
    const file = { name: "a.pdf", bytes: Buffer.from("abc") };
    const given = new Params(new Map<string, unknown>([["x", 1]]), new Map([["f", file]]));
    expect(given.plain()).toEqual({ x: 1, f: { file: "a.pdf", bytes: 3 } });
    expect([given.has("x"), given.has("f")]).toEqual([true, false]);
    expect(given.file("f")?.bytes.toString()).toBe("abc");
  });

  it("an array and null are no records", () => {
    expect([isRecord({}), isRecord([]), isRecord(null)]).toEqual([true, false, false]);
  });
});
