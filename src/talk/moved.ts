import type { CaseState } from "../domain/case-state.ts";
import type { Line } from "../domain/effects.ts";
import type { Report } from "../domain/evidence.ts";
import { type Verdict, wordKey } from "../domain/knowledge.ts";
import type { Ranking } from "../domain/triage.ts";
import { shownChance } from "./chance.ts";
import { line, phrase } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { reportWords } from "./understand.ts";

const SHOWN = 3;

/** The state a report stands for: the one named, or the band a reading falls into at this voltage. */
function stateOf(report: Report, state: CaseState, desk: Desk): string | null {
  const { said } = report;
  const observation = desk.knowledge.observations.get(report.observation);
  if (observation === undefined) return null;
  if (said.kind === "states") {
    return Object.entries(said.weights).sort((a, b) => b[1] - a[1])[0]?.[0] ?? null;
  }
  if (said.kind !== "value") return null;
  const scale = observation.scalesWithVolts ? (state.machine.volts ?? 12) / 12 : 1;
  const at12 = said.value / scale;
  const band = observation.states.find(
    (one) => at12 >= (one.from ?? -Infinity) && at12 < (one.to ?? Infinity),
  );
  return band?.id ?? null;
}

/** Whether what a verdict depends on (how fast it turned, how cold it is) was last told so. */
function holds(verdict: Verdict, state: CaseState, desk: Desk): boolean {
  return verdict.onlyIf.every(({ observation, anyOf }) => {
    const told = state.answers.findLast(({ report }) => report.observation === observation);
    const as = told === undefined ? null : stateOf(told.report, state, desk);
    return as !== null && anyOf.includes(as);
  });
}

/** What a result means by the check's own verdicts: the first that fits what else was told. */
export function verdictLines(report: Report, state: CaseState, desk: Desk): Line[] {
  const result = stateOf(report, state, desk);
  const noted = line(
    phrase("noted", { what: { list: reportWords(report, desk.knowledge) } }),
    "heading",
  );
  if (result === null) return [noted];
  for (const check of desk.knowledge.checks.values()) {
    if (check.yields !== report.observation) continue;
    const verdict = check.verdicts.find(
      (one) => one.states.includes(result) && holds(one, state, desk),
    );
    if (verdict !== undefined) {
      return [noted, line({ know: wordKey("verdict", `${check.id}.${verdict.id}`) })];
    }
  }
  return [noted];
}

/** How the list moved: the leaders now, each with its chance before and after. */
export function movedLines(before: Ranking, after: Ranking): Line[] {
  const earlier = new Map(before.causes.map((cause) => [cause.fault, cause.probability]));
  return after.causes.slice(0, SHOWN).map((cause) =>
    line(
      phrase("moved", {
        cause: { know: wordKey("fault", cause.fault) },
        before: { quantity: shownChance(earlier.get(cause.fault) ?? 0), unit: "percent" },
        after: { quantity: shownChance(cause.probability), unit: "percent" },
      }),
      "step",
    ),
  );
}
