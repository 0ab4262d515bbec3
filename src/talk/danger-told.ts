import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Report } from "../domain/evidence.ts";
import type { Knowledge, StateCondition } from "../domain/knowledge.ts";

function tells({ observation, said }: Report, condition: StateCondition): boolean {
  if (observation !== condition.observation) return false;
  if (said.kind === "members") return said.present.some((one) => condition.anyOf.includes(one));
  if (said.kind !== "states") return false;
  return Object.entries(said.weights).some(
    ([state, weight]) => weight > 0.5 && condition.anyOf.includes(state),
  );
}

/**
 * Dangers that an answer to a question tells of, pressed or typed; what is told unasked is read for
 * the dangers it names itself. One that was raised in this case before is not
 * raised again by an answer: whoever said that it is over is believed.
 */
export function dangersTold(
  happenings: readonly CaseHappening[],
  state: CaseState,
  { redFlags }: Knowledge,
): CaseHappening[] {
  const raised = new Set(state.flags.map(({ flag }) => flag));
  for (const one of happenings) if (one.type === "flag.raised") raised.add(one.flag);
  const reports = happenings.flatMap((one) =>
    one.type === "answer.given" && one.report.unasked !== true ? [one.report] : [],
  );
  return [...redFlags.values()]
    .filter(({ id }) => !raised.has(id))
    .filter(({ seenAs }) =>
      seenAs.some((condition) => reports.some((report) => tells(report, condition))),
    )
    .map(({ id }) => ({ type: "flag.raised", flag: id }));
}
