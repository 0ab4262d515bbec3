import type { Row } from "../domain/knowledge.ts";
import type { Problem } from "../domain/result.ts";
import type { FrequencyWord } from "../domain/vocabulary.ts";
import { suggestion } from "./nearest-word.ts";
import type { Often, RowText } from "./schema-words.ts";
import { type Path, type Placed, problemAt } from "./source-file.ts";

/** P(word) for each frequency word, each in [0, 1]. */
export type Frequencies = Readonly<Record<FrequencyWord, number>>;

/** Numbers that should add up to 1 may miss it by this much (rounding by hand). */
const SUM_TOLERANCE = 0.02;

/** Words are rough: together they may promise this much before it looks like a mistake. */
const PLAUSIBLE_SUM = { low: 0.5, high: 1.5 } as const;

/** What is needed to turn written rows into numbers; problems are collected here. */
export interface RowContext {
  readonly frequencies: Frequencies;
  readonly problems: Problem[];
  /** Ids that exist but cannot be read: mentioning them is no mistake. */
  readonly broken: ReadonlySet<string>;
}

/** Where a row stands: the thing it belongs to and the path below it. */
export interface RowPlace {
  readonly place: Placed<unknown>;
  readonly inside: Path;
}

/** The probability that a word or a number stands for; zero counts as "never". */
export function probabilityOf(often: Often, frequencies: Frequencies): number {
  const value = typeof often === "number" ? often : frequencies[often];
  return value === 0 ? frequencies.never : value;
}

/**
 * A written row as probabilities in the order of `states`; sums to 1 within rounding.
 * States that are not named get the weight of "never". Unknown states, numbers that do not add up
 * and words that promise far too much or too little are reported, and the row is normalised.
 */
export function distribution(
  text: RowText,
  states: readonly string[],
  at: RowPlace,
  context: RowContext,
): Row {
  const named = namedStates(text, states, at, context);
  checkSum(named, at, context);
  const never = context.frequencies.never;
  return normalised(
    states.map((state) => {
      const often = named.get(state);
      return often === undefined ? never : probabilityOf(often, context.frequencies);
    }),
  );
}

/**
 * P(member present) for a list, each on its own.
 * @param otherwise what a member gets that is not named
 */
export function presences(
  text: RowText,
  members: readonly string[],
  at: RowPlace & { readonly otherwise: Row },
  context: RowContext,
): Row {
  const named = namedStates(text, members, at, context);
  return members.map((member, index) => {
    const often = named.get(member);
    const fallback = at.otherwise[index] ?? context.frequencies.never;
    return often === undefined ? fallback : probabilityOf(often, context.frequencies);
  });
}

/** Scales non-negative weights so that they sum to 1. */
export function normalised(weights: readonly number[]): Row {
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => (sum > 0 ? weight / sum : 1 / weights.length));
}

/** Reports a state that the observation does not have. */
export function checkState(state: string, states: readonly string[], at: RowPlace): Problem[] {
  if (states.includes(state)) return [];
  return [
    problemAt(
      at.place,
      `There is no state "${state}" here.${suggestion(state, states)}`,
      at.inside,
    ),
  ];
}

function namedStates(
  text: RowText,
  states: readonly string[],
  at: RowPlace,
  context: RowContext,
): Map<string, Often> {
  const named = new Map<string, Often>();
  for (const [state, often] of Object.entries(text)) {
    if (often === undefined || (state === "source" && !states.includes(state))) continue;
    context.problems.push(...checkState(state, states, { ...at, inside: [...at.inside, state] }));
    if (states.includes(state) && isOften(often)) named.set(state, often);
  }
  return named;
}

function isOften(value: string | number): value is Often {
  return typeof value === "number" || value in orderOfWords;
}

const orderOfWords = {
  never: 0,
  rarely: 1,
  sometimes: 2,
  often: 3,
  usually: 4,
  "nearly-always": 5,
} satisfies Record<FrequencyWord, number>;

function checkSum(named: ReadonlyMap<string, Often>, at: RowPlace, context: RowContext): void {
  const values = [...named.values()];
  if (values.length === 0) {
    context.problems.push(
      problemAt(at.place, "This row names no state; say at least what is usual.", at.inside),
    );
    return;
  }
  const sum = values.reduce<number>(
    (total, often) => total + probabilityOf(often, context.frequencies),
    0,
  );
  const onlyNumbers = values.every((often) => typeof often === "number");
  if (onlyNumbers && Math.abs(sum - 1) > SUM_TOLERANCE) {
    context.problems.push(
      problemAt(
        at.place,
        `These numbers add up to ${rounded(sum)}; they must add up to 1.`,
        at.inside,
      ),
    );
  } else if (!onlyNumbers && (sum < PLAUSIBLE_SUM.low || sum > PLAUSIBLE_SUM.high)) {
    context.problems.push(
      problemAt(
        at.place,
        `These words together mean ${rounded(sum)}; all states of a row together should mean ` +
          `about 1 (0.5 to 1.5). Choose ${sum > 1 ? "rarer" : "more frequent"} words.`,
        at.inside,
      ),
    );
  }
}

function rounded(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}
