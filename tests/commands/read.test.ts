import { describe, expect, it } from "vitest";
import { readCommand } from "../../src/commands/read.ts";

async function run(args: readonly string[], stdin = "") {
  let stdout = "";
  let stderr = "";
  const code = await readCommand(args, {
    stdout: (text) => {
      stdout += text;
    },
    stderr: (text) => {
      stderr += text;
    },
    cwd: ".",
    root: ".",
    stdin: () => Promise.resolve(stdin),
  });
  return { code, stdout, stderr };
}

describe("read", () => {
  it("prints what the reader makes of a text, as JSON alone", async () => {
    const { code, stdout, stderr } = await run(["one click,", "lights are bright"]);
    const result: unknown = JSON.parse(stdout);
    expect([code, stderr]).toEqual([0, ""]);
    expect(result).toMatchObject({
      language: "en",
      understood: [
        { observation: "on-start", state: "one-click", source: "self", span: [0, 9] },
        { observation: "lights-on", state: "normal", hedge: 0 },
      ],
      ambiguous: [],
      notUnderstood: [],
    });
  });

  it("reads stdin for a dash", async () => {
    const { stdout } = await run(["--lang", "en", "-"], "stone dead");
    expect(JSON.parse(stdout)).toMatchObject({ understood: [{ state: "nothing" }] });
  });

  it("takes the open question and the machine's volts", async () => {
    const { stdout } = await run(["--expecting=battery-rest-volts", "--volts", "24", "25,1"]);
    expect(JSON.parse(stdout)).toMatchObject({ understood: [{ value: 25.1, unit: "V" }] });
  });

  it.each([
    [[]],
    [["--colour", "red", "text"]],
    [["--lang", "xx", "text"]],
    [["--lang", "", "text"]],
    [["--volts", "many", "text"]],
    [["--expecting", "no-such-thing", "text"]],
  ])("refuses %j in one plain sentence", async (args) => {
    const { code, stdout, stderr } = await run(args);
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr.trim().split("\n")).toHaveLength(1);
  });
});
