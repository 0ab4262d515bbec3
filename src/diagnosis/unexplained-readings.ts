import type { Evidence, Report } from "../domain/evidence.ts";
import type { ReadingEvidence } from "../domain/joint-likelihood.ts";
import type { UnexplainedReading } from "../domain/triage.ts";
import { doubtOf, standingReports } from "./arrange.ts";
import type { Model } from "./model.ts";
import { readingItem } from "./reading-item.ts";

interface Measured {
  readonly report: Report;
  readonly item: ReadingEvidence;
}

/**
 * Readings that no simulated machine can show together with the other readings, whatever is wrong
 * with it. Only readings are held against each other: what people saw and heard is too soft to
 * call a meter a liar. Readings from before and after an act are not compared.
 * @returns none where no circuit of the machine is simulated
 */
export function unexplainedReadings(
  model: Model,
  evidence: Evidence,
): readonly UnexplainedReading[] {
  const measured = standingReports(model, evidence).flatMap(({ report, since }) => {
    const item = itemOf(model, report);
    return item === null ? [] : [{ report, item, since }];
  });
  const stretches = new Map<number, Measured[]>();
  for (const { since, ...one } of measured) {
    stretches.set(since, [...(stretches.get(since) ?? []), one]);
  }
  return [...stretches.values()].flatMap((together) => oddOnes(model, together));
}

function oddOnes(model: Model, together: readonly Measured[]): UnexplainedReading[] {
  return model.joint.flatMap((joint) => {
    const known = together.filter(({ item }) => joint.weighs(item));
    const odd = new Set(joint.unexplained(known.map(({ item }) => item)));
    return known
      .filter(({ item }) => odd.has(item))
      .map(({ report }) => ({
        observation: report.observation,
        value: report.said.kind === "value" ? report.said.value : 0,
        places: joint.placesOf(report.observation),
      }));
  });
}

/** A reading of which nobody said where the probes were may have been taken at either place. */
function itemOf(model: Model, report: Report): ReadingEvidence | null {
  const { said, observation, probes = "unknown", reporter } = report;
  const known = model.observations.get(observation);
  if (said.kind !== "value" || report.hedge === 1 || known === undefined) return null;
  return readingItem(known.source, {
    value: said.value,
    probes,
    doubt: doubtOf(known, reporter),
  });
}
