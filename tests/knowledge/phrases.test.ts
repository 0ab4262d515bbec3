import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { loadKnowledge } from "../../src/knowledge/load.ts";
import { knownStates, loadPhrases, readPhrases } from "../../src/knowledge/phrases.ts";
import { parsePattern } from "../../src/knowledge/phrases-pattern.ts";

const file = "locales/en/phrases.yaml";
const shipped = readFileSync(file, "utf8");
const known = new Map([["on-start", new Set(["nothing", "one-click"])]]);
const classes = new Map([["fuel", ["petrol", "diesel"]]]);

/** The problems after one piece of the shipped file was replaced. */
function problemsWith(from: string, to: string, states: typeof known | null = null) {
  expect(shipped).toContain(from);
  return readPhrases(file, shipped.replace(from, to), states).problems;
}

const lineOf = (text: string) => shipped.slice(0, shipped.indexOf(text)).split("\n").length;

describe("the shipped phrases", async () => {
  // Loaded before the test, as that takes longer than most of them.
  const loaded = await loadKnowledge("flows");
  if (!loaded.ok) throw new Error(loaded.problems[0]?.says);
  const phrases = loadPhrases(".", knownStates(loaded.value));

  it("name only states, observations and red flags that exist", () => {
    if (!phrases.ok) throw new Error(JSON.stringify(phrases.problems, null, 1));
    expect(phrases.value[0]?.language).toBe("en");
    for (const one of phrases.value) {
      const flags = [...one.redFlags.keys()].filter((id) => id !== "none");
      expect(flags.filter((id) => !loaded.value.redFlags.has(id))).toEqual([]);
    }
  });
});

describe("mistakes in a phrases file", () => {
  const sign = "  nothing:\n    means: on-start=nothing\n";

  it("are all reported with file and line", () => {
    const problems = problemsWith(sign, "  nothing:\n    means: on-start=nothin\n", known);
    const mine = problems.find((problem) => problem.says.includes("nothin"));
    expect(mine).toMatchObject({ file, line: lineOf(sign) + 1 });
    expect(mine?.says).toBe('The observation "on-start" has no state "nothin".');
    expect(problems.length).toBeGreaterThan(1);
  });

  it.each([
    ["means: on-start=nothing", "means: on-start nothing", "is not written as"],
    ["say: $click\n", "say: $clack\n", 'no class "$clack"'],
    ["say: $click\n", "say: .. click\n", "must not begin or end"],
    ["say: $click\n", "say: a .. b .. c .. d\n", "more than 2 gaps"],
    ["say: $click\n", "say: click?\n", "at least one word"],
    ["say: $click\n", "say: cl*ck\n", "is not a word"],
    ['{ when: "fires, dies"', '{ when: "fires, dyes"', 'no sign "dyes"'],
    [
      "states: fires-then-dies below 0.02",
      "states: fires-then-dies under 0.02",
      "is not written as",
    ],
    ["    gives-way: true", "    gives-ways: true", "gives-ways"],
    ["stemmer: english", "stemer: english", "stemer"],
    ["language: en", "language: english", "language"],
  ])("%s → %s", (from, to, says) => {
    const problems = problemsWith(from, to);
    const all = problems.map((problem) => `${problem.at ?? ""} ${problem.says}`);
    expect(
      all.some((one) => one.includes(says)),
      all.join("\n"),
    ).toBe(true);
    for (const problem of problems) {
      expect(problem.file).toBe(file);
      expect(problem.line).toBeGreaterThan(0);
    }
  });

  it("in YAML itself are reported alone", () => {
    const problems = readPhrases(file, "language: en\nlanguage: en\n", null).problems;
    expect(problems).toMatchObject([{ file, line: 2 }]);
  });
});

describe("loading every language", () => {
  it("reads each folder that has phrases, English first, and collects all mistakes", () => {
    const root = mkdtempSync(join(tmpdir(), "phrases-"));
    try {
      for (const language of ["aa", "en", "zz"]) {
        mkdirSync(join(root, "locales", language), { recursive: true });
        const text = shipped.replace("language: en", `language: ${language}`);
        if (language !== "zz") writeFileSync(join(root, "locales", language, "phrases.yaml"), text);
      }
      const loaded = loadPhrases(root, null);
      expect(loaded.ok && loaded.value.map((one) => one.language)).toEqual(["en", "aa"]);
      writeFileSync(join(root, "locales", "zz", "phrases.yaml"), "language: [");
      writeFileSync(join(root, "locales", "aa", "phrases.yaml"), "language: aa\n");
      const broken = loadPhrases(root, null);
      const files = broken.ok ? [] : broken.problems.map((problem) => problem.file);
      expect(new Set(files)).toEqual(
        new Set(["locales/aa/phrases.yaml", "locales/zz/phrases.yaml"]),
      );
    } finally {
      rmSync(root, { recursive: true });
    }
  });
});

describe("a pattern", () => {
  it("is read piece by piece", () =>
    expect(parsePattern("^ no|not a? $fuel|like-oil .. in", classes)).toEqual({
      mistakes: [],
      pattern: [
        { kind: "edge" },
        { kind: "words", any: ["no", "not"], optional: false },
        { kind: "words", any: ["a"], optional: true },
        { kind: "words", any: ["petrol", "diesel", "like-oil"], optional: false },
        { kind: "gap", upTo: 3 },
        { kind: "words", any: ["in"], optional: false },
      ],
    }));

  it("reports every mistake at once", () =>
    expect(parsePattern(".. $oil w*rd", classes).mistakes).toHaveLength(3));
});
