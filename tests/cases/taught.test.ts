import { describe, expect, it } from "vitest";
import { type CaseFigures, figuresOf } from "../../src/cases/case-figures.ts";
import { createLearning } from "../../src/cases/learning.ts";
import { sharesOf } from "../../src/diagnosis/hypotheses.ts";
import { stamped } from "../../src/domain/case-events.ts";
import { foldCase } from "../../src/domain/fold-case.ts";
import { Dialog, workshop } from "../helpers/dialog.ts";
import { handBackFine } from "../helpers/hand-back.ts";

const { knowledge } = workshop;
const KIND = "garden-tractor";
const [VAIN, CURE] = ["start-relay-failed", "solenoid-contacts-burnt"];
const OPENING = "petrol garden tractor, one click, lights stay bright";

/** One ranking, plan and kit for all: what is tried is what a closing teaches. */
const first = new Dialog().say(OPENING);
const standing = first.desk.triage(first.state, "technician");

function atMachine(): Dialog {
  const dialog = new Dialog("en", { triage: () => standing })
    .say(OPENING)
    .press("All is safe")
    .press("More …")
    .press("Talk to a person");
  dialog.press("Hand to a technician", "2").press("Ilse", "2");
  return dialog.press("Start at the machine", "3");
}

/** The technician names a cause and does what puts it right. */
function repair(dialog: Dialog, cause: string, outcome: "it runs" | "no change"): void {
  dialog.press("I found the cause", "3");
  const revision = dialog.state.open.technician?.revision ?? 0;
  const press = { case: dialog.state.id, revision, act: "cause", value: cause };
  dialog.send({ kind: "press", press }, "3");
  expect(dialog.state.open.technician?.asking.about).toBe("remedy");
  dialog.press(`Done – ${outcome}`, "3");
}

function finish(dialog: Dialog): Dialog {
  dialog.press("Yes, all of it", "3");
  handBackFine(dialog);
  return dialog;
}

/** How many times its shipped share each cause has after these cases. */
function timesAfter(...all: readonly CaseFigures[]): ReadonlyMap<string, number> {
  const parts = { knowledge, comebackDays: 30, figures: () => all, revision: () => 1 };
  return createLearning(parts)(KIND).options.times ?? new Map();
}

const shares = sharesOf(knowledge, { kind: KIND }, new Map());
const whole = [...shares.values()].reduce((sum, share) => sum + share, 0);
const { shareStrength: strength } = knowledge.rates;

/**
 * Dirichlet counts by hand: prior counts strength·share, the posterior mean is (prior + count) ÷
 * (strength + all counts); here as a multiple of the shipped share.
 */
function byHand(fault: string, count: number, all: number): number {
  const shipped = (shares.get(fault) ?? 0) / whole;
  return (strength * shipped + count) / (strength + all) / shipped;
}

describe("what a visit teaches", () => {
  it("is the cause after whose repair it ran; the part changed in vain only loses by it", () => {
    const dialog = atMachine();
    repair(dialog, VAIN, "no change");
    repair(dialog, CURE, "it runs");
    finish(dialog);
    expect(dialog.state.confirmed).toEqual({ faults: [CURE], how: "ran-after-this" });
    const figures = figuresOf(dialog.state);
    expect(figures.triedInVain).toBe(1);
    const times = timesAfter(figures);
    expect(times.get(CURE)).toBeCloseTo(byHand(CURE, 1, 1), 12);
    expect(times.get(VAIN)).toBeCloseTo(byHand(VAIN, 0, 1), 12);
    expect(times.get(VAIN)).toBeLessThan(1);
  }, 30_000);

  it("is half of each cause where two were put right before it ran again", () => {
    const dialog = atMachine();
    repair(dialog, CURE, "it runs");
    finish(dialog);
    const press = { case: dialog.state.id, revision: 0, act: "record", value: `cause:${VAIN}` };
    dialog.send({ kind: "press", press }, "3");
    expect(dialog.state.confirmed).toEqual({ faults: [CURE, VAIN], how: "several-at-once" });
    const times = timesAfter(figuresOf(dialog.state));
    for (const fault of [CURE, VAIN]) {
      expect(times.get(fault)).toBeCloseTo(byHand(fault, 0.5, 1), 12);
    }
  });

  it("is both causes in full where both were measured", () => {
    const dialog = atMachine();
    repair(dialog, CURE, "it runs");
    finish(dialog).press("measured", "3");
    const press = { case: dialog.state.id, revision: 0, act: "record", value: `cause:${VAIN}` };
    dialog.send({ kind: "press", press }, "3");
    const times = timesAfter(figuresOf(dialog.state));
    for (const fault of [CURE, VAIN]) {
      expect(times.get(fault)).toBeCloseTo(byHand(fault, 1, 2), 12);
    }
  });

  it("is half of a cause that stands alone where several things were done, and nothing of a guess", () => {
    const dialog = atMachine();
    repair(dialog, CURE, "it runs");
    finish(dialog).press("several things at once", "3");
    expect(timesAfter(figuresOf(dialog.state)).get(CURE)).toBeCloseTo(byHand(CURE, 0.5, 0.5), 12);
    dialog.press("a guess", "3");
    expect(timesAfter(figuresOf(dialog.state)).size).toBe(0);
  });

  it("is taken back by a comeback within the window, and by opening the case again", () => {
    const dialog = atMachine();
    repair(dialog, CURE, "it runs");
    const figures = figuresOf(finish(dialog).state);
    const { closed } = figures;
    if (closed === null) throw new Error("the case is open");
    const day = 24 * 60 * 60 * 1000;
    const again = (days: number): CaseFigures => ({
      ...figures,
      ...{ id: "AGAIN", openedAt: closed.at + days * day },
      closed: { ...closed, at: closed.at + (days + 1) * day },
      confirmed: { faults: [VAIN], how: "measured" },
    });
    const back = timesAfter(figures, again(20));
    expect(back.get(CURE)).toBeCloseTo(byHand(CURE, 0, 1), 12);
    expect(back.get(VAIN)).toBeCloseTo(byHand(VAIN, 1, 1), 12);
    const late = timesAfter(figures, again(40));
    expect(late.get(CURE)).toBeCloseTo(byHand(CURE, 1, 2), 12);
    const reopened = [
      ...dialog.events,
      stamped({ type: "case.reopened" }, { at: closed.at + 1, by: "2", update: null }),
    ];
    const opened = foldCase(dialog.state.id, [...reopenable(dialog), ...reopened]);
    expect(opened.closed).toBeNull();
    expect(timesAfter(figuresOf(opened)).size).toBe(0);
  });

  it("is nothing where nothing was found", () => {
    const dialog = atMachine();
    dialog.press("More acts …", "2").press("Close the case", "2").press("nothing found", "2");
    expect(dialog.state.closed?.end).toBe("nothing-found");
    const figures = figuresOf(dialog.state);
    expect(figures.confirmed?.faults ?? []).toEqual([]);
    expect(timesAfter(figures).size).toBe(0);
  });
});

/** How the dialog's case began; its own list of events starts after that. */
function reopenable(dialog: Dialog) {
  const { operator, opened } = dialog.state;
  const { id, name, chat, language } = operator;
  const began = {
    ...({ type: "case.opened", operator: id, name, chat, language } as const),
    ...{ knowledge: "", seed: 7 },
  };
  return [stamped(began, { at: opened.at, by: id, update: null })];
}
