import { evidenceOf } from "../cases/case-evidence.ts";
import type { ReadCase } from "../cases/case-file.ts";
import { simulateInterview } from "../cases/simulated-interview.ts";
import type { Model } from "../diagnosis/model.ts";
import { rankCauses } from "../diagnosis/ranking.ts";
import type { Evidence } from "../domain/evidence.ts";
import type { GroupForecast } from "./field-score.ts";

export const stages = ["opening", "operator", "operator-all", "technician"] as const;
export type Stage = (typeof stages)[number];

export const isStage = (name: string): name is Stage => stages.some((stage) => stage === name);

interface Told {
  readonly evidence: Evidence;
  readonly asked: number;
  readonly answered: number;
}

/** A case with the model of its machine. */
export interface FieldCase {
  readonly read: ReadCase;
  readonly model: Model;
}

/** What is known of a case at a stage. */
function toldAt(stage: Stage, { read, model }: FieldCase, most?: number): Told {
  const quiet = { asked: 0, answered: 0 };
  switch (stage) {
    case "opening":
      return { evidence: evidenceOf(read, "opening", model.knowledge), ...quiet };
    case "operator": {
      const { evidence, asked, answered } = simulateInterview(read, model, most);
      return { evidence, asked, answered };
    }
    case "operator-all":
      return { evidence: evidenceOf(read, "operator", model.knowledge), ...quiet };
    case "technician":
      return { evidence: evidenceOf(read, "technician", model.knowledge), ...quiet };
  }
}

function byGroup(model: Model, evidence: Evidence): Record<string, number> {
  const sums: Record<string, number> = {};
  for (const { group, probability } of rankCauses(model, evidence).causes) {
    sums[group] = (sums[group] ?? 0) + probability;
  }
  return sums;
}

/**
 * One forecast per case at a stage; cases without a known group are left out.
 * @param most the interview is broken off after this many questions
 */
export function forecastsAt(
  stage: Stage,
  cases: readonly FieldCase[],
  most?: number,
): GroupForecast[] {
  return cases
    .filter(({ read }) => read.file.group.length > 0)
    .map((one) => {
      const { file } = one.read;
      const { evidence, asked, answered } = toldAt(stage, one, most);
      return {
        id: file.id,
        strict: file.strict,
        truth: file.group,
        byGroup: byGroup(one.model, evidence),
        priors: byGroup(one.model, { reports: [], acts: [] }),
        asked,
        answered,
      };
    });
}
