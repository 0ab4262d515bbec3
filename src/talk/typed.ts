import type { Asking } from "../domain/case-events.ts";
import { askingKey, type CaseState } from "../domain/case-state.ts";
import type { ReadingResult } from "../domain/reading.ts";
import { choicesFor } from "./choices.ts";
import type { Desk } from "./desk.ts";
import { wasAsked } from "./next-question.ts";

/** Meanings less likely than this are not worth a question. */
const WORTH_ASKING = 0.2;

const plain = (text: string) =>
  text
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[\p{P}\p{S}]/gu, " ")
    .replace(/\s+/g, " ")
    .trim();

/** True where two texts are the same words, whatever their case and marks. */
export const sameWords = (text: string, label: string) => plain(text) === plain(label);

/** The offered answer whose label was typed, or whose number in the list was; null for neither. */
export function matchTyped(
  asking: Asking,
  text: string,
  given: { readonly state: CaseState; readonly desk: Desk },
): string | null {
  const choices = choicesFor(asking, given.state, given.desk.knowledge);
  const wanted = plain(text);
  const language = given.state.operator.language;
  const named = choices.find(
    (choice) => plain(given.desk.words(choice.label, language)) === wanted,
  );
  if (named !== undefined) return named.value;
  const isReading = asking.about === "check" && isNumber(given.desk, asking.check);
  const position = /^[1-9]$/.test(wanted) && !isReading ? Number(wanted) : 0;
  return choices[position - 1]?.value ?? null;
}

function isNumber(desk: Desk, check: string): boolean {
  const yields = desk.knowledge.checks.get(check)?.yields ?? "";
  return desk.knowledge.observations.get(yields)?.kind === "number";
}

/** One short question about words with several meanings, or null where none is worth asking. */
export function ambiguousQuestion(reading: ReadingResult, state: CaseState): Asking | null {
  for (const unclear of reading.ambiguous) {
    const options = unclear.options.flatMap((option) =>
      option.state !== undefined && option.probability >= WORTH_ASKING
        ? [{ observation: option.observation, state: option.state }]
        : [],
    );
    const known = options.some((option) =>
      state.answers.some((given) => given.report.observation === option.observation),
    );
    const asking: Asking = { about: "meaning", options };
    if (options.length > 1 && !known && !wasAsked(state, askingKey(asking))) return asking;
  }
  return null;
}
