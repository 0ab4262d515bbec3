import { describe, expect, it } from "vitest";
import { loadUrgency, urgencyOf } from "../../src/knowledge/urgency.ts";
import { momentIn, urgencyFacts } from "../../src/talk/urgency.ts";
import { Dialog, workshop } from "../helpers/dialog.ts";

const rules = await loadUrgency("flows", new Set(workshop.knowledge.redFlags.keys()));
if (!rules.ok) throw new Error(JSON.stringify(rules.problems));
const { value } = rules;
const first = new Dialog().say("petrol garden tractor, one click, lights stay bright");
const standing = first.desk.triage(first.state, "technician");

const call = {
  ...({ machine: { kind: "combine" }, urgency: null, flags: [], payment: null } as const),
  ...({ aftermath: "unasked", openedAt: Date.UTC(2026, 6, 31, 22, 30) } as const),
};

describe("how urgent a call is", () => {
  it("takes the month at the machine, not the one in London", () => {
    const now = Date.UTC(2026, 6, 31, 22, 30);
    expect(urgencyFacts(call, momentIn("Europe/Berlin", now)).month).toBe(8);
    expect(urgencyFacts(call, momentIn("UTC", now)).month).toBe(7);
  });

  it("grows while somebody waits", () => {
    const at = (hours: number) =>
      urgencyOf(value, urgencyFacts(call, momentIn("UTC", call.openedAt + hours * 3_600_000)))
        .points;
    expect(at(48)).toBeGreaterThan(at(5));
    expect(at(5)).toBeGreaterThan(at(0));
  });

  it("is shown on the slip with each reason", () => {
    const dialog = new Dialog("en", {
      triage: () => standing,
      urgency: (facts) => urgencyOf(value, facts),
    });
    dialog.say("petrol garden tractor, one click, it is very urgent").press("All is safe");
    dialog.press("More …").press("Talk to a person");
    const slip = dialog.shown.find((one) => one.slot === "slip-2")?.rendered.text ?? "";
    expect(slip).toContain("Very: animals, crop or road wait");
    expect(slip).toContain("The caller says that it cannot wait. (+4)");
  });
});
