import {
  type Command,
  commands,
  type Implausible,
  type ReaderModel,
  type ReadOptions,
  type Understood,
} from "../domain/reading.ts";
import type { Clauses } from "./clauses.ts";
import type { Language } from "./grammar.ts";
import type { Quantity } from "./numbers.ts";
import type { Scopes } from "./scopes.ts";

export interface Answer {
  readonly understood: readonly Understood[];
  readonly implausible: readonly Implausible[];
  readonly command: Command | null;
  readonly covered: readonly { readonly from: number; readonly to: number }[];
}

export interface AnswerInput {
  readonly language: Language;
  readonly model: ReaderModel;
  readonly scopes: Scopes;
  readonly options: ReadOptions;
}

/** Longer messages are stories, not commands. */
const LONGEST_COMMAND = 6;

/** Commands, and answers to the question that is open. */
export function answerTo(
  text: Clauses,
  _quantities: readonly Quantity[],
  input: AnswerInput,
): Answer {
  const command = commandOf(text, input.language);
  return { understood: [], implausible: [], command, covered: [] };
}

function commandOf(text: Clauses, language: Language): Command | null {
  if (text.tokens.length === 0 || text.tokens.length > LONGEST_COMMAND) return null;
  const whole = language.commands
    .longest(text)
    .find((match) => match.from === 0 && match.to === text.tokens.length);
  return commands.find((command) => command === whole?.owner) ?? null;
}
