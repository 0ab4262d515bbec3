import { type Command, commands } from "../domain/reading.ts";
import type { Clauses } from "./clauses.ts";
import type { Language } from "./grammar.ts";

/** Longer messages are stories, not commands. */
const LONGEST_COMMAND = 8;

/** The command a message consists of: "back", "I don't know", "can I talk to a person". */
export function commandOf(text: Clauses, language: Language): Command | null {
  if (text.tokens.length === 0 || text.tokens.length > LONGEST_COMMAND) return null;
  const [first, ...others] = language.commands.longest(text);
  if (first === undefined || others.length > 0) return null;
  // "no rush" is no "no".
  const isBare = first.owner === "yes" || first.owner === "no";
  if (isBare && first.to - first.from < text.tokens.length) return null;
  for (let at = 0; at < text.tokens.length; at += 1) {
    const outside = at < first.from || at >= first.to;
    if (outside && !language.words.politeness.has(text.tokens[at]?.stem ?? "")) return null;
  }
  return commands.find((command) => command === first.owner) ?? null;
}
