import { askingKey, type CaseState } from "../domain/case-state.ts";
import type { Situation } from "../domain/evidence.ts";
import type { Performer } from "../domain/vocabulary.ts";
import { placeOf } from "./place.ts";

/** Checks and acts that were passed: not to be asked of this person again. */
function refusedIds(state: CaseState): string[] {
  return state.passed
    .filter((key) => key.startsWith("check:") || key.startsWith("act:"))
    .map((key) => key.slice(key.indexOf(":") + 1));
}

function askedOf(state: CaseState, performer: Performer): string[] {
  const keys = state.askedEver
    .filter((asked) => asked.to === performer)
    .map((asked) => askingKey(asked.asking));
  const ids = keys.map((key) => key.slice(key.indexOf(":") + 1));
  return state.askedNow.filter((id) => ids.includes(id));
}

/**
 * What can be asked of this person now. What an operator passed is still open to a technician, who
 * has the tools and the eye for it.
 */
export function situationOf(
  state: CaseState,
  performer: Performer,
  travelMinutes?: number,
): Situation {
  const technician = performer === "technician";
  return {
    performer,
    place: technician ? "at-machine" : placeOf(state),
    has: technician ? ["meter", "charger", "leads", "second-person"] : (state.has ?? []),
    asked: askedOf(state, performer),
    refused: technician ? state.skippedSteps : refusedIds(state),
    urgency: state.urgency ?? "normal",
    ...(travelMinutes === undefined ? {} : { travelMinutes }),
  };
}
