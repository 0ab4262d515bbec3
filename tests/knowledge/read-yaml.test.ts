import { describe, expect, it } from "vitest";
import { readYaml } from "../../src/knowledge/read-yaml.ts";

const read = (text: string) => readYaml("flows/systems/x.yaml", "systems", text);
const found = (text: string) => read(text).problems.map(({ line, says }) => `${line}: ${says}`);

describe("reading YAML", () => {
  it("gives the data, the id from the file's name, and the lines", () => {
    const { source } = read("title: A\nfaults:\n  one:\n    remedies:\n      - b\n      - c\n");
    expect(source.id).toBe("x");
    expect(source.data).toEqual({ title: "A", faults: { one: { remedies: ["b", "c"] } } });
    expect(source.lineOf(["faults", "one"])).toBe(3);
    expect(source.lineOf(["faults", "one", "remedies", 1])).toBe(6);
    expect(source.lineOf(["faults", "one", "missing"])).toBe(3);
    expect(source.lineOf([])).toBe(1);
  });

  it("keeps yes, no, on, off and times as the texts that people mean", () => {
    const data = read("a: yes\nb: no\nc: on\nd: 12:30\n").source.data;
    expect(data).toEqual({ a: "yes", b: "no", c: "on", d: "12:30" });
  });

  it("refuses text that would be cut off at a hash", () => {
    expect(found("a: Pull fuse #3\n")).toEqual([
      '1: The text after "#" is thrown away here ("#3"); put the whole text in quotes, or the remark on a line of its own.',
    ]);
    expect(found("a: 1\nb: Pull the fuse # carefully\n")[0]).toMatch(/^2: The text after "#"/);
    expect(found("a: #1 fuse\n")[0]).toMatch(/^1: The text after "#"/);
    expect(found("- #1 fuse\n- b\n")[0]).toMatch(/^1: /);
  });

  it("lets remarks stand behind numbers, ids and on lines of their own", () => {
    expect(found("# head\na: 12 # of a hundred\nb: operator # or both\nc: 'x y' # said\n")).toEqual(
      [],
    );
  });

  it("refuses numbers that would lose their zeros or be read in another base", () => {
    expect(found("a: 012\nb: 0x1F\nc: .inf\n").map((says) => says.slice(0, 8))).toEqual([
      '1: "012"',
      '2: "0x1F',
      '3: ".inf',
    ]);
    expect(found("1.10: a\n")).toEqual(['1: "1.10" would be read as 1.1; put it in quotes.']);
    expect(found("a: 0.50\nb: 0\nc: -0.5\n")).toEqual([]);
  });

  it("refuses copies from one place to another", () => {
    expect(found("a: &name text\nb: *name\n").map((says) => says.slice(0, 10))).toEqual([
      '1: "&name"',
      '2: "*name"',
    ]);
    expect(found("a: *nowhere\n")).not.toEqual([]);
  });

  it("finds a forgotten quote on the line where it was opened, not at the end of the file", () => {
    expect(found('a: 1\nb: "Key out\nc: 2\nd: 3\n')).toEqual([
      "2: The closing quote is missing here.",
    ]);
    expect(found('a: "say \\" so"\nb: "Key out\nc: 2\n')).toEqual([
      "2: The closing quote is missing here.",
    ]);
  });

  it("refuses keys that stand twice, and tabs", () => {
    expect(found("a: 1\na: 2\n")).toEqual([
      "2: The same key stands twice in one place; remove one of the two.",
    ]);
    expect(found("a:\n\tb: 1\n")).toEqual(["2: A tab is used for indenting; use spaces."]);
  });

  it("says in plain words what is wrong, once for each mistake", () => {
    expect(found("ask: Fuse: is it whole?\n")).toEqual([
      '1: There are two colons in this line; put the text in quotes if it holds ": ".',
    ]);
    expect(found('a: "open\nb: 1\n')).toHaveLength(1);
    expect(found("a: > 12.4 V\n")).toHaveLength(1);
  });

  it("names what a file that cannot be read would have defined", () => {
    expect(read("faults:\n  one: {}\n  one: {}\n").ids).toEqual(["x", "faults", "one"]);
    expect(read("faults:\n  one: {}\n").ids).toEqual([]);
  });
});
