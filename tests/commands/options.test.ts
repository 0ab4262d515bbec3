import { describe, expect, it } from "vitest";
import { commandLine, optionValue } from "../../src/commands/options.ts";

const known = { flags: ["json"], valued: ["stage"] };

describe("a command line", () => {
  it("tells words, flags and options with a value apart, in any order", () => {
    const line = commandLine(["a", "--stage", "opening", "--json", "b"], known);
    expect(line).toEqual({
      words: ["a", "b"],
      options: { stage: "opening", json: true },
      unknown: [],
    });
    expect(commandLine(["--stage=opening=x"], known).options).toEqual({ stage: "opening=x" });
  });

  it("names what the command does not have", () =>
    expect(commandLine(["--jsno", "-"], known)).toMatchObject({
      words: ["-"],
      unknown: ["--jsno"],
    }));

  it("falls back where an option was left out or left empty", () => {
    expect(optionValue(commandLine([], known), "stage", "all")).toBe("all");
    expect(optionValue(commandLine(["--stage"], known), "stage", "all")).toBe("all");
    expect(optionValue(commandLine(["--stage", "x"], known), "stage", "all")).toBe("x");
  });
});
