import { describe, expect, it } from "vitest";
import { parsePartFile } from "../../src/knowledge/part-file.ts";

const parts = new Set(["battery", "earth-strap", "solenoid"]);
const read = (text: string) => parsePartFile(text, "parts.csv", parts);
const problems = (text: string) => {
  const result = read(text);
  return result.ok ? [] : result.problems.map(({ line, says }) => [line, says]);
};

describe("the shop's part file", () => {
  it("gives the shop's own number, stock and shelf of a generic part", () => {
    const text =
      "part;number;stock;shelf;machines;volts\n" +
      "battery;B-1204;3;A2;ride-on-mower garden-tractor;12\n" +
      "earth-strap;E-7;;;;\n";
    expect(read(text)).toEqual({
      ok: true,
      value: [
        {
          part: "battery",
          number: "B-1204",
          stock: 3,
          shelf: "A2",
          kinds: ["ride-on-mower", "garden-tractor"],
          volts: 12,
        },
        { part: "earth-strap", number: "E-7", stock: 0, kinds: [] },
      ],
    });
  });

  it("needs only part and number, in any order", () => {
    expect(read("number,part\nB-1,battery\n")).toMatchObject({
      ok: true,
      value: [{ part: "battery", number: "B-1" }],
    });
  });

  it("comes back with every mistake and its line", () => {
    const found = problems(
      "part,number,stock,machines\nbatery,B-1,3,\nbattery,,three,mower\nsolenoid,S-1,-2,\n",
    );
    expect(found.map(([line]) => line)).toEqual([2, 3, 3, 3, 4]);
    expect(found[0]?.[1]).toContain('"battery"');
    expect(found[2]?.[1]).toContain("three");
  });

  it("says which columns there are where one is missing or unknown", () => {
    expect(problems("part,stock\nbattery,3\n")[0]?.[1]).toContain('"number" is missing');
    expect(problems("part,number,colour\nbattery,B-1,red\n")[0]?.[1]).toContain('"colour"');
    expect(problems("")[0]?.[1]).toContain("part");
  });
});
