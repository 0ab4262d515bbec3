import type { Ambiguous, ReadingResult, Span, Understood } from "../domain/reading.ts";
import type { Answer } from "./answers.ts";
import type { Measured } from "./measures.ts";
import type { Settled } from "./settle.ts";

/** What was found in a message, with the answer to the open question. */
export interface MessageParts {
  readonly settled: Settled;
  readonly measured: Measured;
  readonly others: readonly Understood[];
  readonly answer: Answer | null;
  /** The words of the answer. */
  readonly said: Span | null;
  readonly expected: string | undefined;
}

/**
 * An answer to the open question stands before what the phrases make of the same words, and gives
 * way to what they are surer of in more words: "it cranks, fires, then dies".
 */
export function mergeAnswer({
  settled,
  measured,
  others,
  answer,
  said,
  expected,
}: MessageParts): Pick<ReadingResult, "understood" | "ambiguous"> {
  const read = [...settled.understood, ...others, ...measured.values];
  const heard = [...(answer?.states ?? []), ...(answer?.values ?? [])];
  const answered = heard.filter((one) => !givesWay(one, read, said));
  const open = [...settled.ambiguous, ...measured.ambiguous];
  if (answered.length > 0 || expected === undefined) {
    // What answers the question was not said about anything else.
    const beside = read.filter(
      (one) => one.observation !== answered[0]?.observation && !overlap(one.span, said),
    );
    const ambiguous = answered.length > 0 ? [] : open;
    return { understood: once([...answered, ...beside]), ambiguous };
  }
  const meant = open.flatMap((one) => meantBy(one, expected));
  const narrowed = open.filter((one) => meantBy(one, expected).length === 0);
  return { understood: once([...read, ...meant]), ambiguous: narrowed };
}

function givesWay(answer: Understood, read: readonly Understood[], said: Span | null): boolean {
  return read.some(
    (one) =>
      one.observation === answer.observation &&
      one.probability > answer.probability &&
      !within(one.span, said),
  );
}

function within(inner: Span, outer: Span | null): boolean {
  return outer !== null && inner[0] >= outer[0] && inner[1] <= outer[1];
}

function overlap(one: Span, other: Span | null): boolean {
  return other !== null && one[0] < other[1] && other[0] < one[1];
}

/** One reading for each thing said: signs and quantities may say the same. */
function once(readings: readonly Understood[]): readonly Understood[] {
  const said = new Map<string, Understood>();
  for (const one of readings) {
    const key = `${one.observation}=${"state" in one ? one.state : one.value}`;
    if (!said.has(key)) said.set(key, one);
  }
  return [...said.values()];
}

/** The question decides what a word of several meanings means, where one of them answers it. */
const SURE_BY_QUESTION = 0.85;

function meantBy(ambiguous: Ambiguous, expected: string): readonly Understood[] {
  const fitting = ambiguous.options.filter((option) => option.observation === expected);
  const [only] = fitting;
  if (only?.state === undefined || fitting.length > 1) return [];
  const { observation, state } = only;
  const base = { probability: SURE_BY_QUESTION, hedge: 0, source: "self" as const };
  return [{ observation, state, ...base, span: ambiguous.span }];
}
