import type { TurnrowDocument } from "../domain/documents.ts";
import type { CancelIf } from "../domain/effects.ts";
import { foldCase } from "../domain/fold-case.ts";

/** Has what a waiting effect was waiting for become pointless? Only cases can tell. */
export function isCancelled(condition: CancelIf | undefined, document: TurnrowDocument): boolean {
  if (condition === undefined || document.kind !== "case") return false;
  const state = foldCase(document.id, document.events);
  if ("revisionAbove" in condition) return state.revision > condition.revisionAbove;
  if ("closed" in condition) return state.closed !== null;
  return state.flags.some(({ flag, seenBy }) => flag === condition.flagSeen && seenBy !== null);
}
