import type { CaseState } from "../domain/case-state.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import type { Next } from "../domain/triage.ts";
import type { Desk } from "./desk.ts";
import { placeOf } from "./place.ts";

/** What an operator may have that opens further checks and acts. */
export const equipment = ["meter", "leads", "charger", "second-person", "hand-tools"] as const;

/** Closes the list of what was ticked. */
export const THAT_IS_ALL = "all";

function thingsFor(id: string, knowledge: Knowledge): readonly string[] {
  return (knowledge.checks.get(id) ?? knowledge.acts.get(id))?.operatorHas ?? [];
}

/**
 * True where it would decide what comes next whether the operator has a meter, leads and so on: the
 * best question to somebody who had everything needs one of these things, and is worth more.
 */
export function equipmentDecides(state: CaseState, next: Next, desk: Desk): boolean {
  const place = placeOf(state);
  if (state.has !== null || place === "not-there" || place === "for-someone-else") return false;
  const wish = desk.next({ ...state, has: equipment }, "operator");
  if (wish.kind === "stop" || thingsFor(wish.check, desk.knowledge).length === 0) return false;
  return next.kind === "stop" || wish.valueMinutes > next.valueMinutes;
}

/** The list with one thing ticked or unticked. */
export function ticked(has: readonly string[], thing: string): readonly string[] {
  return has.includes(thing) ? has.filter((one) => one !== thing) : [...has, thing];
}
