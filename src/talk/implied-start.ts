import type { Report } from "../domain/evidence.ts";
import type { Knowledge, StateCondition } from "../domain/knowledge.ts";
import { ON_START } from "../domain/vocabulary.ts";

/**
 * How little it tells: people do look at the spark of an engine that will not crank, turned by hand
 * or with a pulley. Engineering estimate.
 */
const HEDGE = 0.35;

/**
 * What it says of the start that somebody looked at something at all: whoever judges the spark, the
 * smoke or the jets has an engine that turns, or they would have said that it does not. One report
 * for all such looks together, and none where the start itself was spoken of.
 */
export function impliedStart(reports: readonly Report[], knowledge: Knowledge): Report | null {
  if (reports.some(({ observation }) => tellsOfStart(observation, knowledge))) return null;
  const looks = reports.flatMap((report) => {
    const states = report.said.kind === "unknown" ? null : startsFor(report.observation, knowledge);
    return states === null ? [] : [{ report, states }];
  });
  const [first] = looks;
  const possible = first?.states.filter((state) =>
    looks.every((one) => one.states.includes(state)),
  );
  if (first === undefined || possible === undefined || possible.length === 0) return null;
  // The first of them is the plainest, and the one to be shown as a reason.
  const share = 1 / (possible.length + 1);
  const weights = Object.fromEntries(
    possible.map((state, index) => [state, index === 0 ? 2 * share : share]),
  );
  const { epoch, reporter } = first.report;
  return {
    observation: ON_START,
    epoch,
    reporter,
    said: { kind: "states", weights },
    hedge: HEDGE,
  };
}

/** The start itself, or another view of it. */
function tellsOfStart(observation: string, knowledge: Knowledge): boolean {
  const seen = knowledge.observations.get(observation);
  return observation === ON_START || seen?.follows?.observation === ON_START;
}

/** The starts after which anybody looks for it; null where it does not depend on them. */
function startsFor(observation: string, knowledge: Knowledge): readonly string[] | null {
  const checks = [...knowledge.checks.values()].filter(({ yields }) => yields === observation);
  const needed = [knowledge.observations.get(observation), ...checks];
  const states = needed.map((one) => startIn(one?.onlyIf ?? []));
  const own = states[0] ?? null;
  if (own !== null || checks.length === 0) return own;
  const asked = states.slice(1);
  return asked.some((one) => one === null) ? null : [...new Set(asked.flatMap((one) => one ?? []))];
}

function startIn(conditions: readonly StateCondition[]): readonly string[] | null {
  return conditions.find(({ observation }) => observation === ON_START)?.anyOf ?? null;
}
