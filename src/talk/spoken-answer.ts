import type { Asking } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import { ALL_CLEAR, type Choice, DONT_KNOW, LEADS_TO } from "./choices.ts";
import { phrase } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { sameWords } from "./same-words.ts";

/** Whose words they are, and how exactly they must be spelt. */
export interface Written {
  readonly state: CaseState;
  readonly desk: Desk;
  /** When a text counts as certain words; absent: where it is those very words. */
  readonly alike?: typeof sameWords;
}

/** The writer's own language first; people also write in another one of the shop's. */
const languagesOf = ({ state, desk }: Written) => [
  state.operator.language,
  ...desk.shop.languages.filter((one) => one !== state.operator.language),
];

/** The words that stand under a key with commas between them, in one language. */
const wordsOf = (key: string, language: string, { desk }: Written) =>
  desk.words(phrase(key), language).split(",");

/**
 * True where the whole text is what stands under the key, or one of the words there, in whatever
 * language.
 */
export const isWritten = (text: string, key: string, given: Written): boolean =>
  languagesOf(given).some((language) => {
    const words = wordsOf(key, language, given);
    const isIt = given.alike ?? sameWords;
    return [words.join(), ...words].some((word) => isIt(text, word));
  });

/** "2", "two", "dos": the place in a list, from 1; 0 where the text is none. */
function placeIn(text: string, given: Written): number {
  const digits = /^\W*([1-9])\W*$/u.exec(text)?.[1];
  if (digits !== undefined) return Number(digits);
  for (const language of languagesOf(given)) {
    const at = wordsOf("word-places", language, given).findIndex((word) => sameWords(text, word));
    if (at >= 0) return at + 1;
  }
  return 0;
}

/** Answers that lead to those which found no room on the screen. */
const onwards = ["page:", "families", "kinds"];

/** "None of these" where no button says so: the next list, else that it is not known. */
function noneOf(asking: Asking, choices: readonly Choice[]): string | null {
  if (asking.about === "safety") return ALL_CLEAR;
  const values = choices.map(({ value }) => value);
  const onward = values.find(
    (value) => value === "none" || onwards.some((one) => value.startsWith(`${LEADS_TO}${one}`)),
  );
  const isPassed = asking.about === "kind" || values.includes(DONT_KNOW);
  return onward ?? (isPassed ? DONT_KNOW : null);
}

/**
 * The answer on offer that is said in other words than its button's: its place in the list, "none of
 * these", and to the question about safety that all is well. Only whole messages count.
 * @param isReading true where a number is itself the answer
 * @returns the answer's value; null where the text is nothing of the kind
 */
export function spokenAnswer(
  text: string,
  {
    asking,
    choices,
    isReading,
  }: {
    readonly asking: Asking;
    readonly choices: readonly Choice[];
    readonly isReading: boolean;
  },
  given: Written,
): string | null {
  if (asking.about === "safety" && isWritten(text, "word-all-clear", given)) return ALL_CLEAR;
  const isNone = ["answer-none-of-these", "word-none-of-these"].some((key) =>
    isWritten(text, key, given),
  );
  if (isNone) return noneOf(asking, choices);
  return isReading ? null : (choices[placeIn(text, given) - 1]?.value ?? null);
}
