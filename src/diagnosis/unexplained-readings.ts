import type { ReadingEvidence } from "../domain/circuit.ts";
import type { Evidence, Report } from "../domain/evidence.ts";
import type { UnexplainedReading } from "../domain/triage.ts";
import { standingReports } from "./arrange.ts";
import { PLACES_UNKNOWN, placesOf } from "./joint-evidence.ts";
import type { Model } from "./model.ts";

/** Half the last digit that people read off and tell, as a share of what is read. */
const READ_OFF = 0.01;
/** The same at least: half a tenth of a volt, or of an amp. */
const READ_OFF_LEAST = 0.05;

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

function itemOf(model: Model, report: Report): ReadingEvidence | null {
  const { said, observation, probes } = report;
  if (said.kind !== "value" || report.hedge === 1) return null;
  const half = Math.max(READ_OFF_LEAST, READ_OFF * Math.abs(said.value));
  return {
    kind: "reading",
    observation,
    low: said.value - half,
    high: said.value + half,
    meterError: model.observations.get(observation)?.source.meterError?.absolute ?? 0,
    places: probes === undefined ? PLACES_UNKNOWN : placesOf(probes),
  };
}
