import type { CaseState } from "../domain/case-state.ts";
import type { Arg, Line } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import { line, phrase } from "./decision.ts";

/** A closed case as far as a later one about the same machine needs it. */
export interface EarlierCase {
  readonly id: string;
  /** The operator's id; empty: told by phone. */
  readonly operator: string;
  /** The machine of the operator's own list; null: none was named. */
  readonly profile: string | null;
  /** What it was; null where nothing was confirmed. */
  readonly cause: string | null;
  /** When it was closed, milliseconds since 1970 UTC. */
  readonly closedAt: number;
}

/** More are in the history of the machine. */
const SHOWN = 3;

/**
 * The closed cases of the same machine, the newest first. A machine that was told of once is
 * remembered under the number of that case.
 */
export function earlierOf(
  state: Pick<CaseState, "id" | "profile" | "operator">,
  cases: readonly EarlierCase[],
): readonly EarlierCase[] {
  const { profile, operator } = state;
  if (profile === null || operator.id === "") return [];
  return cases
    .filter((one) => one.operator === operator.id && one.id !== state.id)
    .filter((one) => one.profile === profile || one.id === profile)
    .sort((a, b) => b.closedAt - a.closedAt);
}

/** "This machine before: 4F7K (3 March, battery worn out) …"; nothing where there was none. */
export function earlierLines(earlier: readonly EarlierCase[]): Line[] {
  if (earlier.length === 0) return [];
  const list = earlier.slice(0, SHOWN).map(({ id, cause, closedAt }): Arg => {
    const day = { time: closedAt, style: "day" } as const;
    return {
      phrase:
        cause === null
          ? phrase("earlier-case", { number: id, day })
          : phrase("earlier-case-cause", {
              ...{ number: id, day, cause: { know: wordKey("fault", cause) } },
            }),
    };
  });
  return [line(phrase("earlier-cases", { list: { list } }))];
}
