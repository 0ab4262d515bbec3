import { describe, expect, it } from "vitest";
import { type CaseHappening, stamped } from "../../src/domain/case-events.ts";
import type { CaseState } from "../../src/domain/case-state.ts";
import { applyEvent, foldCase } from "../../src/domain/fold-case.ts";
import { lastStep } from "../../src/domain/undo-step.ts";
import { told } from "../helpers/told.ts";

let count = 0;
const happen = (
  state: CaseState,
  by: string,
  ...happenings: readonly CaseHappening[]
): CaseState => {
  count += 1;
  const stamp = { at: count, by, update: `u${count}` };
  return happenings.reduce((earlier, one) => applyEvent(earlier, stamped(one, stamp)), state);
};
const asked = (check: string, revision: number): CaseHappening => ({
  ...{ type: "question.asked", to: "technician", asking: { about: "check", check }, revision },
});
const reading = (observation: string, state: string): CaseHappening => ({
  type: "answer.given",
  check: `look-at-${observation}`,
  report: told(observation, state, { reporter: "technician" }),
});
const technician = { technician: "3", name: "Ilse", chat: "3", language: "en" } as const;
const onSite = () =>
  happen(
    happen(foldCase("A1", []), "2", { type: "case.assigned", ...technician }),
    "3",
    { type: "visit.started" },
    asked("look-at-joints", 1),
  );
/** What the engine and the plan are given. */
const facts = ({
  answers,
  acts,
  epoch,
  askedNow,
  skippedSteps,
  remediesDone,
  confirmed,
}: CaseState) => ({
  ...{ answers, acts, epoch, askedNow, skippedSteps, remediesDone, confirmed },
});
const undone = (state: CaseState) =>
  happen(state, "3", { type: "step.undone", of: lastStep(state) ?? "" });

const steps: readonly (readonly [string, readonly CaseHappening[]])[] = [
  ["a reading", [reading("joint-look", "corroded")]],
  ["a step that was left out", [{ type: "step.skipped", step: "look-at-joints" }]],
  [
    "a repair that changed nothing",
    [{ type: "remedy.done", remedy: "clean-clamps", fault: "x", ran: false }],
  ],
  [
    "a repair after which it ran",
    [
      { type: "remedy.done", remedy: "clean-clamps", fault: "x", ran: true },
      { type: "cause.confirmed", faults: ["x"], how: "ran-after-this" },
    ],
  ],
  ["an act", [{ type: "act.done", act: "jump", performer: "technician", outcome: "no-change" }]],
  ["a cause", [{ type: "cause.confirmed", faults: ["x"], how: "measured" }]],
  ["a hand-back check", [{ type: "hand-back.checked", check: "seat", outcome: "fine" }]],
];

describe("a step taken back", () => {
  it.each(steps)("leaves nothing of %s behind", (_, happenings) => {
    const before = happen(onSite(), "3", reading("fuse-look", "whole"), asked("next", 2));
    const after = undone(happen(before, "3", ...happenings, asked("another", 3)));
    // The question that it answered may be asked again; everything else is as it was.
    expect(facts(after)).toEqual({ ...facts(before), askedNow: ["look-at-joints"] });
    expect(after.revision).toBe(3);
    expect(after.history.at(-1)?.type).toBe("step.undone");
  });

  it("leaves what the operator and the counter did in between", () => {
    const begun = happen(onSite(), "3", reading("fuse-look", "blown"));
    const meanwhile = happen(begun, "1", {
      type: "answer.given",
      report: told("lights-on", "dim"),
    });
    const noted = happen(meanwhile, "2", { type: "note.added", text: "x", from: "dispatcher" });
    const after = undone(noted);
    expect(after.answers.map((one) => one.report.observation)).toEqual(["lights-on"]);
    expect(after.notes).toHaveLength(1);
  });

  it("brings back what a later reading had replaced", () => {
    const once = happen(onSite(), "3", reading("joint-look", "clean"));
    const twice = happen(once, "3", reading("joint-look", "corroded"));
    expect(undone(twice).answers).toEqual(once.answers);
  });

  it("is the one before it the next time, until nothing is left", () => {
    let state = onSite();
    const before = facts(state);
    for (const [, happenings] of steps) state = happen(state, "3", ...happenings, asked("q", 1));
    for (let n = 0; n < steps.length; n += 1) state = undone(state);
    expect(facts(state)).toEqual({ ...before, askedNow: [] });
    expect(lastStep(state)).toBeNull();
  });

  it("is told apart by who did it: nobody takes back what another did", () => {
    const state = happen(onSite(), "2", reading("joint-look", "corroded"));
    expect(lastStep(state)).toBeNull();
  });
});
