import type { Asking } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Line } from "../domain/effects.ts";
import type { ReadingRange } from "../domain/joint-likelihood.ts";
import { wordKey } from "../domain/knowledge.ts";
import { line, phrase } from "./decision.ts";
import type { Desk } from "./desk.ts";

/**
 * What a healthy machine and the leading causes would read at the step's test point, where the
 * machine's circuit is simulated: the technician sees at once which of them the meter speaks for.
 */
export function expectedLines(state: CaseState, asking: Asking, desk: Desk): Line[] {
  if (asking.about !== "check") return [];
  const observation = desk.knowledge.observations.get(
    desk.knowledge.checks.get(asking.check)?.yields ?? "",
  );
  if (observation?.unit === undefined) return [];
  const found = desk.expected?.(state, observation.id) ?? null;
  if (found === null) return [];
  const { unit } = observation;
  const range = ({ median, low, high }: ReadingRange) => ({
    median: { quantity: median, unit, digits: 1 },
    low: { quantity: low, unit, digits: 1 },
    high: { quantity: high, unit, digits: 1 },
  });
  return [
    line(phrase("expected-healthy", range(found.healthy)), "bullet"),
    ...found.causes.map(({ fault, range: spread }) =>
      line(
        phrase("expected-cause", {
          cause: { know: wordKey("fault", fault) },
          ...range(spread),
        }),
        "bullet",
      ),
    ),
  ];
}
