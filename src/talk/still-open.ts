import type { Asking } from "../domain/case-events.ts";
import type { CaseState, OpenQuestion } from "../domain/case-state.ts";
import type { Knowledge, StateCondition } from "../domain/knowledge.ts";
import { plainState } from "./place.ts";

/** True where nothing that was told speaks against the conditions of a question. */
export function holds(state: CaseState, conditions: readonly StateCondition[]): boolean {
  return conditions.every((condition) => {
    const told = plainState(state, condition.observation);
    return told === null || condition.anyOf.includes(told);
  });
}

/** What is asked once the interview is over: where to come to, and whom to ring. */
const closing: ReadonlySet<Asking["about"]> = new Set([
  "urgency",
  "where",
  "phone",
  "plate",
  "meaning",
]);

function toldSince(state: CaseState, observation: string, open: OpenQuestion): boolean {
  return state.answers.some(
    ({ report, at }) =>
      report.observation === observation && (at >= open.askedAt || report.epoch === state.epoch),
  );
}

function isUnanswered(open: OpenQuestion, state: CaseState, knowledge: Knowledge): boolean {
  const { asking } = open;
  const { machine } = state;
  switch (asking.about) {
    case "check": {
      const check = knowledge.checks.get(asking.check);
      return (
        check !== undefined && !toldSince(state, check.yields, open) && holds(state, check.onlyIf)
      );
    }
    case "meaning":
      return asking.options.every(({ observation }) => !toldSince(state, observation, open));
    case "kind":
    case "known":
      return machine.kind === undefined;
    case "fuel":
      return machine.fuel === undefined;
    default:
      return true;
  }
}

/**
 * The operator's open question, where what came in between has neither answered it nor made it
 * needless: it stays open, so that a place, a photo or a remark does not cost it.
 */
export function stillOpen(state: CaseState, knowledge: Knowledge): OpenQuestion | null {
  const open = state.open.operator;
  if (open === null || state.closed !== null) return null;
  if (state.interview === "ended" && !closing.has(open.asking.about)) return null;
  return isUnanswered(open, state, knowledge) ? open : null;
}
