import type { MachineFacts, Report } from "../domain/evidence.ts";
import type { Knowledge, Observation } from "../domain/knowledge.ts";
import { chanceHolds } from "./machine-condition.ts";

/** What hardly one machine of the kind could have tells nothing: "a pull cord" beside a combine. */
const LIKELY_ENOUGH = 0.2;
/** A state that is named less surely than this is a guess. */
const PLAIN_FROM = 0.5;

/**
 * The machine with what people have told of its own make: one that is started by cord has neither
 * lamps nor a starter. What the facts say already stands.
 * @param reports in the order told; a later one of the same observation replaces an earlier one
 * @returns the facts; the same ones where nothing was told
 */
export function withToldFeatures(
  facts: MachineFacts,
  reports: readonly Report[],
  knowledge: Knowledge,
): MachineFacts {
  const told = Object.fromEntries(
    reports.flatMap((report) => {
      const observation = knowledge.observations.get(report.observation);
      const features = observation?.tellsFeatures?.[plainState(report) ?? ""] ?? {};
      return mayApply(observation, facts, knowledge) ? Object.entries(features) : [];
    }),
  );
  if (Object.keys(told).length === 0) return facts;
  return { ...facts, features: { ...told, ...facts.features } };
}

function plainState({ said }: Report): string | null {
  if (said.kind !== "states") return null;
  return Object.entries(said.weights).find(([, weight]) => weight > PLAIN_FROM)?.[0] ?? null;
}

const mayApply = (
  observation: Observation | undefined,
  facts: MachineFacts,
  knowledge: Knowledge,
): boolean =>
  observation !== undefined &&
  chanceHolds(observation.needs, facts, knowledge.machines.get(facts.kind), 1) >= LIKELY_ENOUGH;
