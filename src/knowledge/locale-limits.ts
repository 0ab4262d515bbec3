import type { Problem } from "../domain/result.ts";
import type { LocaleEntry } from "./locale-entries.ts";

/** Most UTF-16 units of a whole message (Bot API, sendMessage). */
const MESSAGE = 4096;

interface Limit {
  readonly most: number;
  readonly what: string;
}

const label: Limit = { most: 64, what: "A button's label" };

/** Messages that stand on buttons. */
const LABELS = [
  "button-",
  "answer-",
  "press-",
  "more-",
  "share-",
  "fuel-",
  "urgency-",
  "equipment-",
  "outcome-",
];

/**
 * What the beginning of a key says about the room for its text. Labels are our own limit: phones
 * cut longer ones. The other two are limits of the Bot API (answerCallbackQuery, setMyCommands).
 */
const limits: readonly (readonly [string, Limit])[] = [
  ["toast-", { most: 200, what: "A short answer to a press" }],
  ["command-", { most: 256, what: "The description of a command" }],
  ...LABELS.map((start) => [start, label] as const),
];

/** Titles in the knowledge that are offered as buttons: these kinds, without a further part. */
const labelKinds = /^(state|menu|machine|flag)-/;
const longParts = /^flag-.+-say$/;

/** @returns most UTF-16 units that the text of this key may have */
export function limitOf(key: string): Limit {
  const named = limits.find(([start]) => key.startsWith(start))?.[1];
  if (named !== undefined) return named;
  if (labelKinds.test(key) && !longParts.test(key)) return label;
  return { most: MESSAGE, what: "A message" };
}

/** A problem where a text is longer than there is room for it. */
export function lengthProblem(
  place: { readonly key: string; readonly file?: string; readonly line?: number },
  length: number,
): Problem[] {
  const { most, what } = limitOf(place.key);
  if (length <= most) return [];
  const { key, ...where } = place;
  const says = `${what} has room for ${most} characters; "${key}" has ${length}.`;
  return [{ ...where, at: key, says }];
}

export function limitProblems(entries: readonly LocaleEntry[]): Problem[] {
  return entries.flatMap(({ key, file, line, length }) =>
    lengthProblem({ key, file, line }, length),
  );
}
