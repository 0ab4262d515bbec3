import { type CaseHappening, stamped } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import { applyEvent } from "../domain/fold-case.ts";
import type { Heard } from "./desk.ts";

/** The case as it will be once these things have happened. */
export function advance(
  state: CaseState,
  happenings: readonly CaseHappening[],
  heard: Heard,
): CaseState {
  const stamp = {
    at: heard.incoming.sentAt,
    by: heard.incoming.from.id,
    update: heard.incoming.update,
  };
  return happenings.reduce(
    (earlier, happening) => applyEvent(earlier, stamped(happening, stamp)),
    state,
  );
}
