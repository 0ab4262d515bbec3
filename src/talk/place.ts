import type { CaseState } from "../domain/case-state.ts";
import type { Situation } from "../domain/evidence.ts";

/** The observation that says where the person is. */
export const AT_MACHINE = "at-machine";

const places: Readonly<Record<string, Situation["place"]>> = {
  yes: "at-machine",
  "can-go": "can-go",
  no: "not-there",
  "for-someone-else": "for-someone-else",
};

/** The state a plain report names, or null where it is spread over several or is no state. */
export function plainState(state: CaseState, observation: string): string | null {
  const found = state.answers.findLast((given) => given.report.observation === observation);
  if (found?.report.said.kind !== "states") return null;
  const best = Object.entries(found.report.said.weights).sort((a, b) => b[1] - a[1])[0];
  return best === undefined ? null : best[0];
}

/** Where the operator is, by what they last said. */
export function placeOf(state: CaseState): Situation["place"] {
  return places[plainState(state, AT_MACHINE) ?? ""] ?? "unknown";
}
