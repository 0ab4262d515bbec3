import { describe, expect, it } from "vitest";
import { readCase } from "../../src/cases/case-file.ts";
import { parseCases } from "../../src/commands/case-files.ts";
import { forecastsAt } from "../../src/commands/field-forecasts.ts";
import { stoppedEarly, stoppedText } from "../../src/commands/field-stopped.ts";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { workshop } from "../helpers/dialog.ts";

const CASE = `id: f1
machine: { kind: garden tractor, fuel: petrol }
opening: "it will not start"
operator: { on-start: slow, lights-at-start: dim, pattern: every-time }
cause: [battery-flat]
group: [battery]
`;

function cases() {
  const parsed = parseCases(CASE, "case.yaml");
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.value.cases.map((file) => {
    const read = readCase(file, workshop);
    return { read, model: compileModel(workshop.knowledge, read.machine) };
  });
}

describe("an interview that is broken off", () => {
  it("has put no more questions than it was let, and knows less than a whole one", () => {
    const known = cases();
    const asked = (most?: number) => forecastsAt("operator", known, most)[0]?.asked ?? 0;
    expect(asked(1)).toBe(1);
    expect(asked(3)).toBe(Math.min(3, asked()));
    const chance = (most?: number) =>
      forecastsAt("operator", known, most)[0]?.byGroup["battery"] ?? 0;
    expect(chance()).toBeGreaterThan(chance(0));
  });

  it("is scored after three, five, seven and nine questions", () => {
    const stops = stoppedEarly(cases());
    expect(stops.map(({ after }) => after)).toEqual([3, 5, 7, 9]);
    expect(stoppedText(stops)).toMatch(/stopped after 3: first +\d+ % {2}in three +\d+ %\n/);
  });
});
