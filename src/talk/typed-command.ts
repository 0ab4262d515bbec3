import { phrase } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { sameWords } from "./same-words.ts";

/**
 * The command that was written out as a word ("forget"), in the person's language or as it stands in
 * the list of commands; null where the text is none.
 * @param names commands this person has
 */
export function typedCommand(
  text: string,
  names: readonly string[],
  { desk, language }: { readonly desk: Desk; readonly language: string },
): string | null {
  const named = names.find((name) => {
    const spoken = desk.words(phrase(`word-${name}`), language).split(",");
    return [name, ...spoken].some((word) => sameWords(text, word));
  });
  return named ?? null;
}
