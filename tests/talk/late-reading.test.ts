import { describe, expect, it } from "vitest";
import type { CaseState } from "../../src/domain/case-state.ts";
import { Dialog, workshop } from "../helpers/dialog.ts";

const { knowledge, reader } = workshop;
const isReading = (check: string): boolean =>
  knowledge.observations.get(knowledge.checks.get(check)?.yields ?? "")?.kind === "number";
const openReading = ({ open }: CaseState): string | null => {
  const asking = open.technician?.asking;
  return asking?.about === "check" && isReading(asking.check) ? asking.check : null;
};
const measured = ({ answers }: CaseState) =>
  answers.flatMap(({ from, report }) =>
    from === "technician" ? [[report.observation, report.said]] : [],
  );

/** A visit at which a reading is asked for. */
function atReading(): { dialog: Dialog; check: string } {
  const dialog = new Dialog("en", {
    read: (text, expecting) =>
      reader.read(text, {
        languages: ["en"],
        ...(expecting === undefined ? {} : { expecting: { observation: expecting } }),
      }),
  })
    .say("petrol garden tractor, one click, lights stay bright")
    .press("All is safe")
    .press("More …")
    .press("Talk to a person");
  dialog.press("Hand to a technician", "2").press("Ilse", "2").press("Start at the machine", "3");
  const check = skipTo(dialog, (state) => openReading(state) !== null);
  return { dialog, check };
}

/** Leaves steps out until one is open as wished. */
function skipTo(dialog: Dialog, is: (state: CaseState) => boolean): string {
  for (let n = 0; n < 15 && !is(dialog.state); n += 1) dialog.press("Could not do it, next", "3");
  if (!is(dialog.state)) throw new Error("no such step in the plan");
  return openReading(dialog.state) ?? "";
}
const titleOf = (check: string) =>
  dialogWords({ know: `observation-${knowledge.checks.get(check)?.yields}` });
const dialogWords = (phrase: { know: string }) => new Dialog().desk.words(phrase, "en");

describe("a number typed when its step has gone", () => {
  it("is asked about where it was sent before the open step was put, and goes to its own", () => {
    const { dialog, check } = atReading();
    dialog.press("Could not do it, next", "3");
    const next = skipTo(dialog, (state) => openReading(state) !== null);
    const before = measured(dialog.state);
    dialog.send({ kind: "text", text: "12,4" }, "3", -90_000);
    expect(measured(dialog.state)).toEqual(before);
    expect(dialog.last("3")).toContain("12,4: which reading is that?");
    expect(dialog.labels("3")).toEqual([titleOf(next), titleOf(check), "None of these"]);
    dialog.press(titleOf(check), "3");
    const own = knowledge.checks.get(check)?.yields;
    expect(measured(dialog.state)).toEqual([...before, [own, { kind: "value", value: 12.4 }]]);
    expect(dialog.last("3")).toContain("→");
  }, 30_000);

  it("answers the open step where it was typed after that", () => {
    const { dialog, check } = atReading();
    dialog.say("12.4 V", "3");
    expect(measured(dialog.state)).toEqual([
      [knowledge.checks.get(check)?.yields, { kind: "value", value: 12.4 }],
    ]);
  });

  it("is asked about where the open step wants no number, and is a note if it is none", () => {
    const { dialog } = atReading();
    dialog.press("Could not do it, next", "3");
    skipTo(dialog, (state) => {
      const asking = state.open.technician?.asking;
      return asking !== undefined && openReading(state) === null;
    });
    const { answers } = dialog.state;
    dialog.say("12.44 V", "3");
    expect(dialog.last("3")).toContain("which reading is that?");
    dialog.press("None of these", "3");
    expect(dialog.state.answers).toEqual(answers);
    expect(dialog.state.notes.map(({ text }) => text)).toEqual(["12.44 V"]);
  });

  it("that names what was measured needs no question, however late it comes", () => {
    const { dialog } = atReading();
    dialog.press("Could not do it, next", "3");
    dialog.send({ kind: "text", text: "battery at rest 12.4 V" }, "3", -90_000);
    expect(measured(dialog.state).map(([observation]) => observation)).toContain(
      "battery-rest-volts",
    );
  });

  it("is taken once, whatever is pressed again, and only from the technician who has the case", () => {
    const { dialog } = atReading();
    dialog.press("Could not do it, next", "3");
    skipTo(dialog, (state) => openReading(state) !== null);
    dialog.send({ kind: "text", text: "12.4" }, "3", -90_000);
    const press = dialog.pressOf(dialog.labels("3")[1] ?? "", "3");
    dialog.counter({ kind: "press", press }, "2");
    expect(measured(dialog.state)).toEqual([]);
    dialog.send({ kind: "press", press }, "3");
    const { revision } = dialog.state;
    const asked = dialog.shown.find(({ slot }) => slot?.startsWith("late-"));
    expect(asked?.rendered.buttons).toEqual([]);
    expect(asked?.rendered.text).toContain("12.4");
    dialog.send({ kind: "press", press }, "3");
    expect(measured(dialog.state)).toHaveLength(1);
    expect(dialog.state.revision).toBe(revision);
  });
});
