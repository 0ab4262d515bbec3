import type { Arg, Line, Phrase } from "../domain/effects.ts";
import { type Knowledge, wordKey } from "../domain/knowledge.ts";
import type { RankedCause, Reason } from "../domain/triage.ts";
import { line, phrase } from "./decision.ts";

/** An answer that moves the odds by less than this is not worth a person's eye. */
const WORTH_SAYING_DECIBANS = 1;

/** What a list's denied member begins with. */
const DENIED = "not ";

/** The state in words: a reading as it stands, an act's outcome, or a state of the knowledge. */
function stateArg({ observation, state }: Reason, isAct: boolean): Arg {
  if (/^[-\d]/.test(state)) return state;
  if (isAct) return { phrase: phrase(`outcome-${state}`) };
  const denied = state.startsWith(DENIED);
  const id = denied ? state.slice(DENIED.length) : state;
  const word: Arg = { know: wordKey("state", `${observation}.${id}`) };
  return denied ? { phrase: phrase("reason-not", { state: word }) } : word;
}

function reasonPhrase(reason: Reason, knowledge: Knowledge): Phrase {
  const { acts, remedies } = knowledge;
  const id = reason.observation;
  const kind = acts.has(id) ? "act" : remedies.has(id) ? "remedy" : "observation";
  return phrase(reason.decibans > 0 ? "reason-for" : "reason-against", {
    what: { know: wordKey(kind, id) },
    state: stateArg(reason, kind !== "observation"),
    weight: { quantity: Math.abs(reason.decibans), unit: "dB", digits: 0 },
  });
}

/** The strongest answers for and against a cause, strongest first. */
export function reasonLines(cause: RankedCause, most: number, knowledge: Knowledge): Line[] {
  return cause.reasons
    .filter((reason) => Math.abs(reason.decibans) >= WORTH_SAYING_DECIBANS)
    .slice(0, most)
    .map((reason) => line(reasonPhrase(reason, knowledge), "bullet"));
}
