import type { CaseState } from "../domain/case-state.ts";
import { MINUTE } from "./desk.ts";

/** What ends a visit, with or without the repair. */
const ends: ReadonlySet<string> = new Set(["visit.cut-short", "case.taken-back", "case.closed"]);

/**
 * Minutes at the machine over all visits of a closed case, each from its start to its end; null
 * where nobody was there or the case is still open.
 * @returns whole minutes, at least 1
 */
export function minutesOnSite(state: CaseState): number | null {
  if (state.closed === null) return null;
  let began: number | null = null;
  let sum: number | null = null;
  for (const { type, at } of state.history) {
    if (type === "visit.started") began ??= at;
    if (began === null || !ends.has(type)) continue;
    sum = (sum ?? 0) + at - began;
    began = null;
  }
  return sum === null ? null : Math.max(1, Math.round(sum / MINUTE));
}
