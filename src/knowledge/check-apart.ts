import type { Knowledge } from "../domain/knowledge.ts";
import type { Problem } from "../domain/result.ts";
import type { Gathered } from "./gather.ts";
import { createSeparator, meet } from "./separation.ts";
import { problemAt } from "./source-file.ts";

/** Two faults count as told apart when their best check doubles the odds on average (3 dB). */
export const TOLD_APART_DECIBANS = 3;

/**
 * Every two faults that one machine can have must be told apart by some check or act, or be
 * declared as not to be told apart.
 */
export function checkApart(gathered: Gathered, knowledge: Knowledge): Problem[] {
  const faults = [...knowledge.faults.values()];
  const separate = createSeparator(knowledge);
  return faults.flatMap((one, index) =>
    faults.slice(index + 1).flatMap((other): Problem[] => {
      const place = gathered.faults.get(one.id);
      if (place === undefined) return [];
      const declared = declares(gathered, one.id, other.id) || declares(gathered, other.id, one.id);
      if (!meet(one, other, knowledge)) return [];
      const { check, decibans } = separate(one.id, other.id);
      const apart = decibans >= TOLD_APART_DECIBANS;
      if (apart !== declared) return [];
      const best =
        check === ""
          ? "no check touches either"
          : `the best, "${check}", gives ${decibans.toFixed(1)} dB`;
      return [
        declared
          ? problemAt(
              place,
              `"${one.id}" and "${other.id}" are said not to be told apart, but "${check}" ` +
                `does so (${decibans.toFixed(1)} dB); remove the line "cannot-be-told-from".`,
            )
          : problemAt(
              place,
              `No check tells "${one.id}" from "${other.id}" (${best}); add a check, merge ` +
                `the two, or say "cannot-be-told-from:".`,
            ),
      ];
    }),
  );
}

function declares(gathered: Gathered, one: string, other: string): boolean {
  return gathered.faults.get(one)?.value["cannot-be-told-from"]?.includes(other) ?? false;
}
