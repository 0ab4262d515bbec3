import type { Line, Phrase } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import type { RankedCause, Reason } from "../domain/triage.ts";
import { line, phrase } from "./decision.ts";

/** An answer that moves the odds by less than this is not worth a person's eye. */
const WORTH_SAYING_DECIBANS = 1;

function reasonPhrase(reason: Reason): Phrase {
  const key = reason.decibans > 0 ? "reason-for" : "reason-against";
  const isReading = /^[-\d]/.test(reason.state);
  return phrase(key, {
    what: { know: wordKey("observation", reason.observation) },
    state: isReading
      ? reason.state
      : { know: wordKey("state", `${reason.observation}.${reason.state}`) },
    weight: { quantity: Math.abs(reason.decibans), unit: "dB", digits: 0 },
  });
}

/** The strongest answers for and against a cause, strongest first. */
export function reasonLines(cause: RankedCause, most: number): Line[] {
  return cause.reasons
    .filter((reason) => Math.abs(reason.decibans) >= WORTH_SAYING_DECIBANS)
    .slice(0, most)
    .map((reason) => line(reasonPhrase(reason), "bullet"));
}
