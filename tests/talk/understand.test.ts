import { describe, expect, it } from "vitest";
import { factsIn, notedLines } from "../../src/talk/understand.ts";
import { Dialog, speech, workshop } from "../helpers/dialog.ts";

const { state } = new Dialog();
const facts = (text: string) =>
  factsIn(workshop.reader.read(text, { languages: ["en"] }), {
    state,
    knowledge: workshop.knowledge,
    reporter: "operator",
  });
const reports = (text: string) =>
  facts(text).flatMap((one) => (one.type === "answer.given" ? [one.report] : []));
const reportOf = (text: string, observation: string) =>
  reports(text).find((one) => one.observation === observation);

describe("facts in free words", () => {
  it("are the machine, the symptom and a reading with its unit", () => {
    const found = facts("ride-on mower, one click, battery at rest 12.4 V");
    expect(found).toContainEqual({ type: "machine.described", facts: { kind: "ride-on-mower" } });
    expect(reportOf("one click", "on-start")?.said).toEqual({
      kind: "states",
      weights: { "one-click": 1 },
    });
    expect(reportOf("battery at rest 12.4 V", "battery-rest-volts")?.said).toEqual({
      kind: "value",
      value: 12.4,
    });
  });

  it("count for less when hedged or told by somebody else", () => {
    const plain = reportOf("it cranks slowly", "on-start");
    const hedged = reportOf("i think it cranks slowly", "on-start");
    expect(hedged?.hedge ?? 1).toBeGreaterThan(plain?.hedge ?? 1);
    expect(reportOf("my son says it cranks slowly", "on-start")?.reporter).toBe("second-hand");
  });

  it("never turn a denial into what was denied", () => {
    const said = reportOf("there is not a click", "on-start")?.said;
    const weight = said?.kind === "states" ? (said.weights["one-click"] ?? 0) : 0;
    expect(weight).toBe(0);
  });

  it("are said back in one line", () => {
    const [line] = notedLines(facts("garden tractor, one click"), workshop.knowledge);
    const text = line === undefined ? "" : speech.wording.phrase(line.say, "en");
    expect(text).toContain("Garden tractor");
    expect(text).toContain("One click");
    expect(text).not.toContain(" and ");
    const [lights] = notedLines(facts("the lights stay bright"), workshop.knowledge);
    const named = lights === undefined ? "" : speech.wording.phrase(lights.say, "en");
    expect(named).toBe("Noted: Lights while the key is on START: They stay bright.");
    expect(notedLines(facts("good morning"), workshop.knowledge)).toEqual([]);
  });
});
