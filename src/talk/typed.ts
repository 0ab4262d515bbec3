import type { Asking } from "../domain/case-events.ts";
import { askingKey, type CaseState } from "../domain/case-state.ts";
import type { ReadingResult } from "../domain/reading.ts";
import { choicesFor } from "./choices.ts";
import type { Desk } from "./desk.ts";
import { wasAsked } from "./next-question.ts";
import { sameWords } from "./same-words.ts";
import { spokenAnswer, type Written } from "./spoken-answer.ts";

/** Meanings less likely than this are not worth a question. */
const WORTH_ASKING = 0.2;

/** The offered answer that was typed: its label, its number in the list, or other words for it. */
export function matchTyped(asking: Asking, text: string, given: Written): string | null {
  const choices = choicesFor(asking, given.state, given.desk.knowledge);
  const { language } = given.state.operator;
  const isIt = given.alike ?? sameWords;
  const [named, ...others] = choices.filter(({ label }) =>
    isIt(text, given.desk.words(label, language)),
  );
  // Badly spelt it may be two of them: then it is neither.
  const isClear = given.alike === undefined || others.length === 0;
  if (named !== undefined && isClear) return named.value;
  const isReading = asking.about === "check" && isNumber(given.desk, asking.check);
  return spokenAnswer(text, { asking, choices, isReading }, given);
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
