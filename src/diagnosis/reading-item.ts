import type { Report } from "../domain/evidence.ts";
import type { JointLikelihood, ReadingEvidence } from "../domain/joint-likelihood.ts";
import type { Observation } from "../domain/knowledge.ts";
import type { Measured, Measurements } from "./model.ts";

/** Half the last digit that people read off and tell, as a share of what is read. */
const READ_OFF = 0.01;
/** The same at least: half a tenth of a volt, or of an amp. */
const READ_OFF_LEAST = 0.05;

/**
 * What people mean who were asked and cannot say: post or clamp. Most hold the probes on what lies
 * open, and the clamp covers much of the post. Estimate.
 */
export const PLACES_UNKNOWN: Readonly<Record<string, number>> = { post: 0.6, clamp: 0.4 };

/** Whoever says nothing of it mostly held them where the check says: on the post. Estimate. */
const PLACES_UNTOLD: Readonly<Record<string, number>> = { post: 0.8, clamp: 0.2 };

/** Chance of each place the probes were, as simulated machines know it. */
export function placesOf(probes: NonNullable<Report["probes"]>): Readonly<Record<string, number>> {
  return probes === "unknown" ? PLACES_UNKNOWN : { [probes]: 1 };
}

/** A number that was told, as the narrow band it stands for. */
export function readingItem(
  { id, meterError }: Pick<Observation, "id" | "meterError">,
  { value, probes, doubt }: Measured & { readonly value: number },
): ReadingEvidence {
  const half = Math.max(READ_OFF_LEAST, READ_OFF * Math.abs(value));
  const { absolute = 0, relative = 0 } = meterError ?? {};
  return {
    kind: "reading",
    observation: id,
    low: value - half,
    high: value + half,
    meterError: Math.hypot(absolute, relative * value),
    doubt,
    places: probes === undefined ? PLACES_UNTOLD : placesOf(probes),
  };
}

/**
 * The readings of an observation whose numbers are all known, as narrow bands.
 * @returns none where any of them is known by its band only
 */
export function readingItems(
  observation: Pick<Observation, "id" | "meterError">,
  measured: Measurements | undefined,
): readonly ReadingEvidence[] {
  const told = measured?.get(observation.id) ?? [];
  const items = told.flatMap(({ value, ...rest }) =>
    value === undefined ? [] : [readingItem(observation, { ...rest, value })],
  );
  return items.length === told.length ? items : [];
}

/**
 * The fewest readings that must be mistaken for the rest to go with some machine; of two that
 * contradict each other the one told by the less reliable.
 */
export function mistakenReadings(
  joint: Pick<JointLikelihood, "unexplained">,
  readings: readonly ReadingEvidence[],
): readonly ReadingEvidence[] {
  const odd = [...joint.unexplained(readings)];
  const [worst] = odd.sort((a, b) => (b.doubt ?? 0) - (a.doubt ?? 0));
  if (worst === undefined) return [];
  return [
    worst,
    ...mistakenReadings(
      joint,
      readings.filter((one) => one !== worst),
    ),
  ];
}
