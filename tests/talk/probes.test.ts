import { describe, expect, it } from "vitest";
import { createEngineRoom } from "../../src/cases/engine-room.ts";
import type { UnexplainedReading } from "../../src/domain/triage.ts";
import { Dialog, workshop } from "../helpers/dialog.ts";

const room = createEngineRoom({ knowledge: workshop.knowledge });
const odd: UnexplainedReading = {
  observation: "battery-start-volts",
  value: 13,
  places: ["clamp"],
};

/** A technician at a machine on which 13 V while starting goes with nothing else. */
function atMachine(): Dialog {
  const triage: typeof room.triage = (state, performer) => {
    const found = room.triage(state, performer);
    const told = state.answers.some(({ report }) => report.observation === odd.observation);
    return { ...found, ranking: { ...found.ranking, unexplained: told ? [odd] : [] } };
  };
  return new Dialog("en", { triage })
    .say("petrol garden tractor, one click, lights stay bright")
    .press("All is safe")
    .press("More …")
    .press("Talk to a person")
    .press("Hand to a technician", "2")
    .press("Ilse", "2")
    .press("Start at the machine", "3");
}

const asked = (dialog: Dialog) =>
  dialog.shown.filter(({ slot }) => slot?.startsWith("probes-") === true);
const reading = (dialog: Dialog) =>
  dialog.state.answers.findLast(({ report }) => report.observation === odd.observation)?.report;

describe("where the probes were", () => {
  it("is asked when a reading goes with no machine that shows the others, and the reading stays", () => {
    const dialog = atMachine().say("battery 13 V while cranking", "3");
    const [question] = asked(dialog);
    expect(question?.to).toBe("3");
    expect(question?.rendered.text).toContain("does not go with the other readings");
    expect(reading(dialog)?.said).toEqual({ kind: "value", value: 13 });
    expect(reading(dialog)?.probes).toBeUndefined();
  });

  it("is kept with the reading when it is told", () => {
    const dialog = atMachine().say("battery 13 V while cranking", "3").press("On the clamps", "3");
    expect(reading(dialog)).toMatchObject({ said: { kind: "value", value: 13 }, probes: "clamp" });
    expect(dialog.toast).toContain("Noted where you measured");
  });

  it("is not asked about anything else", () => {
    expect(asked(atMachine().say("battery 12.6 V at rest", "3"))).toEqual([]);
  });
});
