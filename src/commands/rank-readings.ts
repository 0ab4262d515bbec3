import { expectedReading } from "../diagnosis/expected-readings.ts";
import type { Model } from "../diagnosis/model.ts";
import type { Evidence } from "../domain/evidence.ts";
import { wordKey } from "../domain/knowledge.ts";
import type { Ranking } from "../domain/triage.ts";
import type { Ranked } from "./ranked.ts";

/** The leading causes whose readings stand beside what was measured. */
const CAUSES = 3;

/** Each reading beside what a healthy machine and the leading causes would show. */
export function readingsOut(
  model: Model,
  evidence: Evidence,
  by: { readonly ranking: Ranking; readonly word: (key: string) => string },
): Ranked["readings"] {
  const [joint] = model.joint;
  if (joint === undefined) return [];
  const causes = by.ranking.causes.slice(0, CAUSES).map(({ fault }) => fault);
  return evidence.reports.flatMap(({ observation, said }) => {
    const unit = model.knowledge.observations.get(observation)?.unit;
    if (said.kind !== "value" || unit === undefined) return [];
    const found = expectedReading(model, joint, { evidence, query: { observation, causes } });
    if (found === null) return [];
    return [
      {
        ...{ observation, name: by.word(wordKey("observation", observation)), unit },
        ...{ measured: said.value, healthy: found.healthy },
        causes: found.causes.map(({ fault, range }) => ({ id: fault, expected: range })),
      },
    ];
  });
}
