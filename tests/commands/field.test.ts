import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readCase } from "../../src/cases/case-file.ts";
import { parseCases } from "../../src/commands/case-files.ts";
import { fieldCommand, stageText } from "../../src/commands/field.ts";
import { forecastsAt, type stages } from "../../src/commands/field-forecasts.ts";
import { scoreStage } from "../../src/commands/field-score.ts";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { runCommand } from "../helpers/command-io.ts";
import { workshop } from "../helpers/dialog.ts";

const CASE = `id: f1
machine: { kind: garden tractor, fuel: petrol }
opening: "it just clicks once"
operator: { on-start: one-click, pattern: every-time }
technician: { ground-drop-volts: "1.9 V", battery-rest-volts: "12.6 V" }
cause: [earth-strap-corroded]
group: [ground]
strict: true
`;

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "turnrow-field-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

function cases(text: string) {
  const parsed = parseCases(text, "case.yaml");
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.value.cases.map((file) => {
    const read = readCase(file, workshop);
    return { read, model: compileModel(workshop.knowledge, read.machine) };
  });
}

describe("field", () => {
  it("knows more at every stage: a reading at the earth makes the earth likelier", () => {
    const known = cases(CASE);
    const chance = (stage: (typeof stages)[number]) =>
      forecastsAt(stage, known)[0]?.byGroup["ground"] ?? 0;
    expect(chance("technician")).toBeGreaterThan(3 * chance("operator-all"));
  });

  it("asks at the operator's stage only, and leaves out a case without a known group", () => {
    const known = cases(CASE);
    expect(forecastsAt("operator", known)[0]?.asked).toBeGreaterThan(0);
    expect(forecastsAt("opening", known)[0]?.asked).toBe(0);
    expect(forecastsAt("opening", cases("id: x\nopening: dead\n"))).toEqual([]);
  });

  it("reads well in a terminal", () => {
    const text = stageText(scoreStage("operator", forecastsAt("operator", cases(CASE))));
    expect(text).toMatch(/^operator\n {2}all +1 cases/);
    expect(text).toContain("questions: median");
    expect(text).not.toMatch(/NaN|undefined/);
  });

  it.each([
    [[], "Use:"],
    [["tests/field", "--stage", "later"], "Use:"],
    [["no-such-folder"], "there is no such folder"],
  ])("refuses %j with exit code 2", async (args, says) => {
    const { code, stdout, stderr } = await runCommand(fieldCommand, args);
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(says);
  });

  it("says so where nothing can be scored", async () => {
    writeFileSync(join(folder, "x.yaml"), "id: x\nopening: dead\n");
    const { code, stderr } = await runCommand(fieldCommand, [folder, "--rows"]);
    expect(code).toBe(2);
    expect(stderr).toContain("names the group of its cause");
  }, 60_000);

  it("prints one stage as JSON, by rows alone where that is asked for", async () => {
    writeFileSync(join(folder, "x.yaml"), CASE);
    const args = [folder, "--rows", "--json", "--stage", "technician"];
    const { code, stdout } = await runCommand(fieldCommand, args);
    expect(code).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ stage: "technician", all: { cases: 1 } });
  }, 60_000);
});
