import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stringify } from "yaml";
import { parseCases, problemLines, readInput } from "../../src/commands/case-files.ts";
import type { CommandIo } from "../../src/commands/io.ts";
import { causeGroups } from "../../src/domain/vocabulary.ts";
import { loadKnowledge } from "../../src/knowledge/load.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));

function good(text: string) {
  const parsed = parseCases(text, "a.yaml");
  if (!parsed.ok) throw new Error(problemLines(parsed.problems));
  return parsed.value;
}

function bad(text: string) {
  const parsed = parseCases(text, "a.yaml");
  return parsed.ok ? [] : parsed.problems.map(({ file, line, says }) => `${file}:${line} ${says}`);
}

const whole = {
  id: "x-1",
  machine: { kind: "lawn tractor", fuel: "petrol", volts: 12, cylinders: 1, hours: 8, ageYears: 3 },
  opening: "It clicks.",
  operator: { "on-start": "one-click", "recent-event": ["charged", "tipped"] },
  technician: { "battery-rest-volts": "12.6 V", "ground-drop-volts": 0.9 },
  cause: ["earth-strap-corroded"],
  group: ["ground"],
  strict: true,
};

describe("a case file", () => {
  it("reads the same from YAML and from JSON, tabs and all", () => {
    for (const text of [
      stringify(whole),
      JSON.stringify(whole),
      JSON.stringify(whole, null, "\t"),
      `\uFEFF${stringify(whole).replaceAll("\n", "\r\n")}`,
    ]) {
      expect(good(text)).toEqual({ cases: [whole], isList: false });
    }
  });
  it("may hold a list, and says so", () => {
    expect(good("- id: a\n- id: b\n")).toMatchObject({
      cases: [{ id: "a" }, { id: "b" }],
      isList: true,
    });
    expect(good('[{"id": "a"}]').isList).toBe(true);
    expect(good("id: a").isList).toBe(false);
    expect(good("[]")).toEqual({ cases: [], isList: true });
  });
  it("needs nothing but an id", () => {
    const bare = { machine: {}, opening: "", operator: {}, technician: {}, cause: [], group: [] };
    expect(good("id: 12").cases).toEqual([{ id: "12", ...bare, strict: false }]);
  });
  it("takes an empty entry as one that is not there", () => {
    const text = `
      id: a
      machine: { kind: null, volts: ~ }
      opening:
      operator: { on-start: null, lights: [dim, null] }
      technician:
      cause: null
      strict:
    `;
    expect(good(text).cases).toEqual(good("id: a\noperator: { lights: [dim] }").cases);
  });
  it("takes one cause or group without brackets", () => {
    expect(good("id: a\ncause: x\ngroup: fuel").cases[0]).toMatchObject({
      cause: ["x"],
      group: ["fuel"],
    });
  });
  it("may hold entries that nobody knows", () => {
    const text = "id: a\nsource: me\nmachine: { colour: red }\noperator: { moon: full, owls: 3 }";
    expect(good(text).cases[0]?.operator).toEqual({ moon: "full", owls: 3 });
  });
  it("may name yes and no without their becoming true and false", () => {
    expect(good("id: a\noperator: { fuel-reaches-engine: no }").cases[0]?.operator).toEqual({
      "fuel-reaches-engine": "no",
    });
  });
});

describe("a bad case file", () => {
  it.each([
    ["a bracket left open", 'id: a\nopening: x\noperator: {lights: "dim"\n', 4],
    ["an indent that does not fit", "id: a\nmachine:\n  kind: x\n fuel: y\n", 4],
    ["a name twice", "id: a\nopening: x\nid: b\n", 3],
    ["two documents", "id: a\n---\nid: b\n", 2],
    ["JSON cut off", '{"id": "a",\n "opening": "x', 2],
    ["a name that stands for nothing", "id: a\nopening: *x\n", 2],
  ])("%s is one problem, with its line", (_, text, line) => {
    const problems = bad(text);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatch(/^a\.yaml:\d+ this is not readable as YAML or JSON: \w.*[^:]$/);
    expect(Number(problems[0]?.split(/[: ]/)[1])).toBe(line);
  });
  it("that would fill the memory with names for names is a problem as well", () => {
    const level = (name: string, of: string) => `${name}: &${name} [${Array(10).fill(of)}]\n`;
    const text = `id: x\n${level("a", "o")}${level("b", "*a")}${level("c", "*b")}${level("d", "*c")}`;
    expect(bad(text)).toHaveLength(1);
  });
  it.each([
    ["machine: mower", '"machine" must be a group of entries: kind, fuel, volts and so on'],
    ["machine: { volts: twelve }", '"machine.volts" must be a number above zero, without a unit'],
    ["machine: { volts: -6 }", '"machine.volts" must be a number above zero, without a unit'],
    ["machine: { ageYears: old }", '"machine.ageYears" must be a number'],
    ["opening: [a, b]", '"opening" must be text'],
    ["operator: [a, b]", '"operator" must be a group of entries, each with a name of its own'],
    [
      "operator: { lights: { a: b } }",
      '"operator.lights" must be text, a number or a list of these',
    ],
    ["technician: { a: [[1]] }", '"technician.a" must be text, a number or a list of these'],
    ["cause: { a: b }", '"cause" must be an id or a list of ids'],
    ["strict: perhaps", '"strict" must be true or false'],
  ])("%s is said to be of the wrong kind", (entry, says) => {
    expect(bad(`id: a\n\n${entry}\n`)).toEqual([`a.yaml:3 ${says}`]);
  });
  it("without an id is told of at the case that lacks it", () => {
    expect(bad("machine: { kind: x }")).toEqual(["a.yaml:1 every case needs an id"]);
    expect(bad("- id: a\n- opening: x\n- id: c\n")).toEqual(["a.yaml:2 every case needs an id"]);
    expect(bad('id: ""')).toEqual(["a.yaml:1 every case needs an id"]);
    expect(bad("opening: x\nid:\n")).toEqual(["a.yaml:2 every case needs an id"]);
  });
  it.each(["", "# nothing here\n", "hello", "12"])("with no case in it (%j) says so", (text) => {
    expect(bad(text)).toEqual(["a.yaml:1 a case is expected here, with at least an id"]);
  });
  it("tells every wrong entry of every case at once", () => {
    const text = "- id: a\n  opening: 5\n- id: b\n- strict: 7\n  cause: {}\n- word\n";
    expect(bad(text).map((one) => one.split(" ")[0])).toEqual([
      "a.yaml:2",
      "a.yaml:4",
      "a.yaml:5",
      "a.yaml:4",
      "a.yaml:6",
    ]);
  });
  it("never throws, whatever the text", () => {
    const piece = fc.constantFrom(
      "id: a",
      "\n",
      "- ",
      "{",
      "}",
      "[",
      "]",
      "*x",
      "&x ",
      '"',
      ": ",
      "\t",
      "|",
      "---",
    );
    fc.assert(
      fc.property(fc.array(fc.oneof(piece, fc.string())), (pieces) => {
        const parsed = parseCases(pieces.join(""), "a.yaml");
        if (!parsed.ok) expect(problemLines(parsed.problems)).toMatch(/^(a\.yaml:\d+: .+\n)+$/);
      }),
      { seed: 5, numRuns: 300 },
    );
  });
});

describe("the input of a command", () => {
  const io: CommandIo = {
    stdout: () => {},
    stderr: () => {},
    cwd: `${root}/tests/field`,
    root,
    stdin: () => Promise.resolve("id: from-stdin"),
  };
  it("is a file beside the caller, a file by its full path, or stdin", async () => {
    const near = await readInput("p01.yaml", io);
    expect(near).toContain("id: p01");
    expect(await readInput(`${root}/tests/field/p01.yaml`, io)).toBe(near);
    expect(await readInput("-", io)).toBe("id: from-stdin");
  });
});

describe("the collected cases", () => {
  const read = (folder: string) =>
    readdirSync(`${root}/tests/field/${folder}`)
      .filter((name) => name.endsWith(".yaml"))
      .flatMap((name) => {
        const text = readFileSync(`${root}/tests/field/${folder}/${name}`, "utf8");
        const parsed = parseCases(text, name);
        if (!parsed.ok) throw new Error(problemLines(parsed.problems));
        expect(parsed.value.cases.map((one) => `${one.id}.yaml`)).toEqual([name]);
        return parsed.value.cases;
      });

  it("each name the group of their cause, and faults that are of such a group", async () => {
    const knowledge = await loadKnowledge(`${root}/flows`);
    if (!knowledge.ok) throw new Error(problemLines(knowledge.problems));
    const cases = read("");
    expect(cases).toHaveLength(54);
    for (const { id, cause, group } of cases) {
      expect(group.length, id).toBeGreaterThan(0);
      expect(causeGroups, id).toEqual(expect.arrayContaining([...group]));
      for (const fault of cause) {
        expect(group, `${id} ${fault}`).toContain(knowledge.value.faults.get(fault)?.group);
      }
    }
  });
  it("with an unknown outcome name no cause", () => {
    const openings = read("openings");
    expect(openings).toHaveLength(20);
    for (const { id, cause, group, strict } of openings) {
      expect([cause, group, strict], id).toEqual([[], [], false]);
    }
  });
});
