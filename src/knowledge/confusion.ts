import type { Row } from "../domain/knowledge.ts";
import type { Reporter } from "../domain/vocabulary.ts";
import { checkState, type RowContext } from "./row.ts";
import type { ObservationText } from "./schema-system.ts";
import { type Path, type Placed, problemAt } from "./source-file.ts";

/** How reliable a reporter is where an observation says nothing itself. */
export interface ReliabilityDefaults {
  readonly byReporter: Readonly<Record<Reporter, number>>;
  /** P(a list member is named though it is absent). */
  readonly namedFalsely: number;
}

type Told = Readonly<Record<string, number>>;

/**
 * The confusion table of one observation for each reporter: rows are true states, columns the
 * reported ones, each row sums to 1. Lists have the two rows present and absent.
 */
export function confusionRows(
  place: Placed<ObservationText>,
  states: readonly string[],
  context: RowContext & { readonly defaults: ReliabilityDefaults },
): (who: Reporter) => readonly Row[] {
  const isList = place.value.kind === "list" || place.value.kind === "text";
  return (who) => {
    const text = place.value["reported-by"]?.[who] ?? context.defaults.byReporter[who];
    const inside: Path = ["reported-by", who];
    if (isList) return listRows(text, { place, inside }, context);
    if (typeof text === "number")
      return states.map((_, index) => diagonal(index, states.length, text));
    return states
      .map((state, index) => {
        const told = text[state] ?? text["otherwise"] ?? context.defaults.byReporter[who];
        if (typeof told === "number") return diagonal(index, states.length, told);
        return spread(told, states, { place, inside: [...inside, state] }, context);
      })
      .concat(unknownStates(text, states, { place, inside }, context));
  };
}

/** The truth with probability `right`, the rest evenly over the other states. */
function diagonal(index: number, count: number, right: number): Row {
  if (count < 2) return [1];
  return Array.from({ length: count }, (_, column) =>
    column === index ? right : (1 - right) / (count - 1),
  );
}

interface At {
  readonly place: Placed<unknown>;
  readonly inside: Path;
}

/** The named states as written; what is left over spreads evenly over the others. */
function spread(told: Told, states: readonly string[], at: At, context: RowContext): Row {
  for (const state of Object.keys(told)) {
    context.problems.push(...checkState(state, states, { ...at, inside: [...at.inside, state] }));
  }
  const named = states.filter((state) => state in told);
  const sum = named.reduce((total, state) => total + (told[state] ?? 0), 0);
  const others = states.length - named.length;
  if (sum > 1 + 1e-9 || (others === 0 && Math.abs(sum - 1) > 0.02)) {
    context.problems.push(
      problemAt(
        at.place,
        `What is told instead adds up to ${sum.toFixed(2)}; it must be 1, or less if other ` +
          `states are left over.`,
        at.inside,
      ),
    );
  }
  const rest = others === 0 ? 0 : Math.max(0, 1 - sum) / others;
  const row = states.map((state) => told[state] ?? rest);
  const total = row.reduce((all, value) => all + value, 0);
  return row.map((value) => value / (total || 1));
}

/** Lists: `named-when-present` and `named-when-absent`, or one number for the former. */
function listRows(
  text: number | Readonly<Record<string, number | Told>>,
  at: At,
  context: RowContext & { readonly defaults: ReliabilityDefaults },
): Row[] {
  const figure = (key: string, otherwise: number): number => {
    const value = typeof text === "number" ? undefined : text[key];
    return typeof value === "number" ? value : otherwise;
  };
  const known = ["named-when-present", "named-when-absent"];
  for (const key of typeof text === "number" ? [] : Object.keys(text)) {
    context.problems.push(...checkState(key, known, { ...at, inside: [...at.inside, key] }));
  }
  const present = typeof text === "number" ? text : figure("named-when-present", 0.8);
  const absent = figure("named-when-absent", context.defaults.namedFalsely);
  return [
    [present, 1 - present],
    [absent, 1 - absent],
  ];
}

/** Reports keys that are no state; adds no row. */
function unknownStates(
  text: Readonly<Record<string, unknown>>,
  states: readonly string[],
  at: At,
  context: RowContext,
): Row[] {
  for (const key of Object.keys(text)) {
    if (key === "otherwise") continue;
    context.problems.push(...checkState(key, states, { ...at, inside: [...at.inside, key] }));
  }
  return [];
}
