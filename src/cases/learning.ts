import type { ModelOptions } from "../diagnosis/compile.ts";
import { type Closing, learn, usableClosings } from "../diagnosis/learning.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import type { MachineKindId } from "../domain/vocabulary.ts";
import { type CaseFigures, comebacksIn } from "./case-figures.ts";

/** The closed cases with a confirmed cause, as the engine learns from them. */
export function closingsIn(all: readonly CaseFigures[], comebackDays: number): readonly Closing[] {
  const back = comebacksIn(all, comebackDays);
  return all.flatMap(({ id, kind, closed, confirmed, reports }) =>
    closed === null || confirmed === null || confirmed.faults.length === 0
      ? []
      : [
          {
            ...{ case: id, at: closed.at, kind, reports },
            ...{ faults: confirmed.faults, how: confirmed.how, cameBack: back.has(id) },
          },
        ],
  );
}

export interface LearningParts {
  readonly knowledge: Knowledge;
  readonly figures: () => readonly CaseFigures[];
  /** Changes whenever a closed case does. */
  readonly revision: () => number;
  readonly comebackDays: number;
}

/** What the shop has learned for one kind of machine, under a key that changes with it. */
export type Learning = (kind: MachineKindId) => {
  readonly key: string;
  readonly options: Pick<ModelOptions, "times" | "confusion">;
};

/**
 * Learns from the closed cases: everything is summed anew from them when one was closed, opened
 * again or put right, so nothing learned can outlive what it came from.
 */
export function createLearning(parts: LearningParts): Learning {
  const { knowledge, comebackDays } = parts;
  const learned = new Map<MachineKindId, ReturnType<Learning>>();
  let closings: readonly Closing[] = [];
  let known: number | null = null;
  return (kind) => {
    const revision = parts.revision();
    if (revision !== known) {
      closings = usableClosings(knowledge, closingsIn(parts.figures(), comebackDays));
      learned.clear();
      known = revision;
    }
    const before = learned.get(kind);
    if (before !== undefined) return before;
    const key = closings.length === 0 ? "" : String(revision);
    const options = closings.length === 0 ? {} : learn(knowledge, closings, kind);
    const now = { key, options };
    learned.set(kind, now);
    return now;
  };
}
