import type { Asking, CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Arg, PlannedEffect } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import { lastStep } from "../domain/undo-step.ts";
import { advance } from "./advance.ts";
import { type Decision, line, phrase, say } from "./decision.ts";
import { handBackName, handBackOutcome, nextHandBack, untestedLines } from "./hand-back.ts";
import { slipEffects } from "./slip.ts";
import { complaintOf } from "./solved.ts";
import { type Given, goOn, put, technicianOf } from "./visit-proceed.ts";
import { causeWords, recordEffects } from "./visit-record.ts";

/** The repair, or the act, after which it ran; else the words for what it was and what was done. */
function correctionOf(state: CaseState): string {
  const cured = state.acts.findLast((act) => act.outcome === "cured")?.act;
  const repair = state.remediesDone.findLast((one) => one.ran)?.remedy;
  return repair ?? cured ?? state.confirmed?.words ?? "";
}

const toOperator = (state: CaseState, effect: () => PlannedEffect): PlannedEffect[] =>
  state.operator.chat === "" ? [] : [effect()];

/** What happened before in this turn is part of the decision. */
function prefixed(happenings: readonly CaseHappening[], decision: Decision): Decision {
  return { ...decision, happenings: [...happenings, ...decision.happenings] };
}

/** The case closes and everybody is told. */
function close(state: CaseState, given: Given): Decision {
  const { desk, heard } = given;
  const closed: CaseHappening = {
    type: "case.closed",
    end: "visit",
    complaint: complaintOf(state),
    cause: state.confirmed?.faults[0] ?? state.confirmed?.words ?? "",
    correction: correctionOf(state),
  };
  const after = advance(state, [closed], heard);
  const done = { lines: [line(phrase("visit-closed", { number: state.id }), "heading")] };
  const remedy = desk.knowledge.remedies.get(closed.correction);
  const told = {
    lines: [
      line(phrase("operator-closed", { number: state.id, cause: causeWords(state) })),
      ...(remedy === undefined
        ? []
        : [line(phrase("operator-done", { what: { know: wordKey("remedy", remedy.id) } }))]),
      ...untestedLines(state),
    ],
  };
  return {
    happenings: [closed],
    effects: [
      say(technicianOf(state), done),
      ...recordEffects(after, desk),
      ...toOperator(state, () => say(state.operator, told)),
      ...slipEffects(after, desk),
    ],
  };
}

/** Closes once everything that must be tried before giving the machine back is on record. */
function closeWhenSafe(
  state: CaseState,
  happenings: readonly CaseHappening[],
  given: Given,
): Decision {
  const after = advance(state, happenings, given.heard);
  const asking = nextHandBack(after, given.desk);
  const next = asking === null ? close(after, given) : put(after, asking, [], given.desk);
  return prefixed(happenings, next);
}

/**
 * It ran and started again: what is left is to give it back safely. Not yet: it stays open, what was
 * said to have made it run is taken back, and the plan goes on.
 */
export function ran(state: CaseState, value: string, given: Given): Decision {
  if (value === "yes") return closeWhenSafe(state, [], given);
  const of = lastStep(state);
  const on = goOn(state, of === null ? [] : [{ type: "step.undone", of }], given);
  const stays = { lines: [line(phrase("stays-open", { number: state.id }))] };
  return { ...on, effects: [say(technicianOf(state), stays), ...on.effects] };
}

type HandBack = Extract<Asking, { about: "hand-back" }>;

/** What came of trying what must not start the machine. */
export function handBackResult(
  state: CaseState,
  asking: HandBack,
  value: string,
  given: Given,
): Decision {
  const check = handBackName(asking);
  const { outcome, verdict } = handBackOutcome(asking, value, given.desk);
  if (outcome === "could-not")
    return put(state, { ...asking, about: "hand-back-why" }, [], given.desk);
  if (outcome === "fine") {
    return closeWhenSafe(state, [{ type: "hand-back.checked", check, outcome: "fine" }], given);
  }
  const unsafe: CaseHappening = { type: "hand-back.checked", check, outcome: "not-fine" };
  const after = advance(state, [unsafe], given.heard);
  const before = verdict.length > 0 ? verdict : [line(phrase("hand-back-stop"), "caution")];
  const again = put(after, asking, before, given.desk);
  return prefixed([unsafe], again);
}

/** It could not be tested, and why: on record, and told to whoever gets the machine back. */
export function couldNotTest(
  state: CaseState,
  asking: { readonly check?: string },
  why: string,
  given: Given,
): Decision {
  const check = handBackName(asking);
  return closeWhenSafe(
    state,
    [{ type: "hand-back.checked", check, outcome: "could-not", why }],
    given,
  );
}

/** The visit ends without the repair; the case stays open for a second one. */
export function cutShort(state: CaseState, missing: string, given: Given): Decision {
  const { desk, heard } = given;
  const happenings: CaseHappening[] = [{ type: "visit.cut-short", missing }];
  const after = advance(state, happenings, heard);
  const isPart = desk.knowledge.parts.has(missing);
  const what: Arg = isPart ? { know: wordKey("part", missing) } : missing;
  const kept = { lines: [line(phrase("second-visit", { number: state.id, what }), "heading")] };
  const told = { lines: [line(phrase("operator-second-visit", { what }))] };
  return {
    happenings,
    effects: [
      say(technicianOf(state), kept),
      ...toOperator(state, () => say(state.operator, told)),
      ...slipEffects(after, desk),
    ],
  };
}
