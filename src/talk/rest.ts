import type { Asking } from "../domain/case-events.ts";
import { askingKey, type CaseState } from "../domain/case-state.ts";
import type { Line } from "../domain/effects.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import { line, phrase } from "./decision.ts";
import { MINUTE } from "./desk.ts";

/** Common practice: ten seconds of cranking at most, then the starter cools for two minutes. */
export const STARTER_REST = 2 * MINUTE;

/** True where answering means turning the key. */
function isTry(asking: Asking, knowledge: Knowledge): boolean {
  if (asking.about === "act") return asking.stage === "result";
  return asking.about === "check" && knowledge.checks.get(asking.check)?.step === "try";
}

function lastTry(state: CaseState, knowledge: Knowledge): number | null {
  const tries = state.answers
    .filter((given) => knowledge.checks.get(given.check ?? "")?.step === "try")
    .map((given) => given.at);
  const all = state.actedAt === null ? tries : [...tries, state.actedAt];
  return all.length === 0 ? null : Math.max(...all);
}

/** Says from when on the starter may be used again, where it has not rested yet. */
export function restLines(
  asking: Asking,
  given: { readonly state: CaseState; readonly knowledge: Knowledge; readonly now: number },
): Line[] {
  if (!isTry(asking, given.knowledge)) return [];
  const last = lastTry(given.state, given.knowledge);
  if (last === null || given.now >= last + STARTER_REST) return [];
  // Shown times have no seconds: the next full minute, never too early.
  const from = Math.ceil((last + STARTER_REST) / MINUTE) * MINUTE;
  return [line(phrase("starter-rests", { time: { time: from, style: "hour" } }), "caution")];
}

/** How to try safely: in full the first time, in one line from then on. */
export function trySafelyLines(asking: Asking, state: CaseState): Line[] {
  const key = askingKey(asking);
  const before = state.askedEver.some(
    (asked) =>
      asked.to === "operator" &&
      asked.asking.about === "act" &&
      asked.asking.stage === "result" &&
      askingKey(asked.asking) !== key,
  );
  return [line(phrase(before ? "try-as-before" : "try-safely"))];
}
