import type { Asking, Meanings } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { ReadingResult } from "../domain/reading.ts";
import { ON_START } from "../domain/vocabulary.ts";
import { choicesFor } from "./choices.ts";
import type { Desk } from "./desk.ts";
import { isMeaningOpen } from "./next-question.ts";
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

/**
 * What ambiguous words may mean, likely enough each to be asked about: the trouble itself first,
 * as one such question is all that is put. Null where nothing is.
 */
export function unclearIn(reading: ReadingResult, state: CaseState): Meanings | null {
  const unclear = reading.ambiguous
    .map(({ options }) =>
      options.flatMap(({ observation, state: meant, probability }) =>
        meant !== undefined && probability >= WORTH_ASKING ? [{ observation, state: meant }] : [],
      ),
    )
    .filter((options) => options.length > 1 && isMeaningOpen(options, state));
  const ofTrouble = unclear.find((options) => options.some((one) => one.observation === ON_START));
  return ofTrouble ?? unclear[0] ?? null;
}
