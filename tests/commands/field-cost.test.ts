import { describe, expect, it } from "vitest";
import { readCase } from "../../src/cases/case-file.ts";
import { parseCases } from "../../src/commands/case-files.ts";
import { costOf, costText, toldIn } from "../../src/commands/field-cost.ts";
import { createCalls } from "../../src/commands/whole-call.ts";
import { speech, workshop } from "../helpers/dialog.ts";

const CASE = `id: c1
machine: { kind: ride-on mower, fuel: petrol }
opening: "it only clicks"
operator: { on-start: one-click, lights-at-start: stay-bright, recent-work: "new starter last year", battery-rest-volts: "12.6 V" }
`;

function told() {
  const parsed = parseCases(CASE, "case.yaml");
  const [file] = parsed.ok ? parsed.value.cases : [];
  if (file === undefined) throw new Error("no case");
  return toldIn(readCase(file, workshop), workshop.knowledge);
}

const call = (messages: number) => ({ messages, taps: 2, questions: 3, events: [], texts: [] });

/** The engine thinks at every question; the machine may be busy. */
const PATIENCE_MS = 60_000;

describe("what a call costs", { timeout: PATIENCE_MS }, () => {
  it("is told by the middle call and by nine of ten", () => {
    const cost = costOf(Array.from({ length: 10 }, (_, at) => call(at + 1)));
    expect(cost.messages).toEqual({ median: 5, p90: 9 });
    expect(costText(cost)).toContain("10 whole calls, to the end: messages median 5, 90 % 9");
  });

  it("comes from what the operator of the file knows", () => {
    const { kind, told: know, story } = told();
    expect(kind).toBe("ride-on-mower");
    expect(know("on-start")).toBe("one-click");
    expect(know("battery-rest-volts")).toMatch(/^12\.6/);
    expect(know("spark")).toBe("");
    expect(story).toBe("new starter last year");
  });

  it("is counted by playing the call: every message, with those that only carry a keyboard", () => {
    const played = createCalls({ workshop, speech, language: "en" })(told());
    expect(played.events.some(({ type }) => type === "interview.ended")).toBe(true);
    expect(played.messages).toBeGreaterThan(played.texts.length);
    expect(played.texts.join("\n")).toContain("case number");
    expect(played.taps).toBeGreaterThanOrEqual(played.questions - 1);
    const work = played.events.some(
      (event) => event.type === "answer.given" && event.report.observation === "recent-work",
    );
    expect(work).toBe(true);
  });
});
