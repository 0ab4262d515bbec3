import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readPhrases } from "../../src/knowledge/phrases.ts";

const file = "locales/en/phrases.yaml";
const shipped = readFileSync(file, "utf8");
const tap = `  tap:
    names: fuel|petrol tap
    states:
      open: open, right open ^
      shut: shut
`;

function withThings(things: string, answers = "") {
  const start = shipped.indexOf("\nthings:\n");
  const end = shipped.indexOf("\n# What people do about it");
  expect(start).toBeGreaterThan(0);
  expect(end).toBeGreaterThan(start);
  const text = `${shipped.slice(0, start)}\nthings:\n${things}${answers}${shipped.slice(end)}`;
  const { phrases, problems } = readPhrases(file, text, null);
  const signs = (phrases?.signs ?? []).filter((sign) => sign.id.startsWith("tap="));
  return { phrases, problems, signs };
}

describe("things with their states", () => {
  it("are phrases of name and state in either order", () => {
    const { signs, problems } = withThings(tap);
    expect(problems).toEqual([]);
    expect(signs.map((sign) => sign.means)).toEqual([
      [{ observation: "tap", state: "open" }],
      [{ observation: "tap", state: "shut" }],
    ]);
    const words = (sign: (typeof signs)[number] | undefined) =>
      sign?.say.map((pattern) =>
        pattern.map((piece) => (piece.kind === "words" ? piece.any.join("|") : piece.kind)),
      );
    expect(words(signs[1])).toEqual([
      ["fuel|petrol", "tap", "gap", "shut"],
      ["shut", "fuel|petrol", "tap"],
      [
        "shut",
        "gap",
        "in|on|of|at|from|under|inside|behind|round|around",
        "gap",
        "fuel|petrol",
        "tap",
      ],
    ]);
    // An edge holds for the answer alone.
    expect(words(signs[0])?.flat()).not.toContain("edge");
  });

  it("are answers and labels too, together with words only for answers", () => {
    const { phrases } = withThings(tap, "answers:\n  tap:\n    shut: closed\n");
    expect(phrases?.names.get("tap")).toHaveLength(1);
    const answers = phrases?.answers.get("tap");
    expect(answers?.get("open")).toHaveLength(2);
    expect(answers?.get("shut")).toHaveLength(2);
  });

  it("are no phrases where they may only be answers", () => {
    const { phrases, signs } = withThings(tap.replace("    states", "    only-asked: true\n$&"));
    expect(signs).toEqual([]);
    expect(phrases?.answers.get("tap")?.size).toBe(2);
  });

  it("name what the knowledge has, else it is a mistake with its line", () => {
    const known = new Map([["fuel-level", new Set(["low"])]]);
    const { problems } = readPhrases(file, shipped, known);
    expect(problems.map((problem) => problem.says)).toContain(
      'There is no observation "plug-look".',
    );
    expect(problems.every((problem) => (problem.line ?? 0) > 0)).toBe(true);
  });
});
