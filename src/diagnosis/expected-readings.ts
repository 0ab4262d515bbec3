import type { Evidence } from "../domain/evidence.ts";
import type { JointLikelihood, ReadingRange } from "../domain/joint-likelihood.ts";
import { crankingStates, firingStates, ON_START } from "../domain/vocabulary.ts";
import { seenNow } from "./channel.ts";
import { EvidenceTranslator, TURNS } from "./joint-evidence.ts";
import type { Model, Seen } from "./model.ts";

/** What a test point would read on this machine, before it is measured. */
export interface ExpectedReading {
  /** A machine of this kind with nothing wrong. */
  readonly healthy: ReadingRange;
  /** This machine, by all that is known of it, with each of the causes asked about. */
  readonly causes: readonly { readonly fault: string; readonly range: ReadingRange }[];
}

/** Where a simulated machine is asked about one test point. */
export interface ReadingQuery {
  /** The observation that the reading answers; it is also the test point's name. */
  readonly observation: string;
  /** Faults, the leading ones first. */
  readonly causes: readonly string[];
}

/** What is said of cranking alone: all that follows once the engine turns counts as turning. */
function crankingSaid(model: Model, seen: Seen): Record<string, number> | null {
  const likelihood = seen.get(ON_START);
  const index = model.observations.get(ON_START)?.stateIndex;
  if (likelihood === undefined || index === undefined) return null;
  const chance = (state: string) => likelihood[index.get(state) ?? -1] ?? 0;
  const turning = Math.max(...firingStates.map(chance));
  return Object.fromEntries(
    crankingStates.map((state) => [state, Math.min(1, state === TURNS ? turning : chance(state))]),
  );
}

/**
 * The readings to expect at a test point, from the simulated machines that fit everything else
 * that is known.
 * @returns null where no circuit of this machine has that test point
 */
export function expectedReading(
  model: Model,
  joint: JointLikelihood,
  given: { readonly evidence: Evidence; readonly query: ReadingQuery },
): ExpectedReading | null {
  const { observation, causes } = given.query;
  const [sound] = joint.hypotheses;
  if (!joint.observations.has(observation) || sound === undefined) return null;
  const known = new Map(
    [...seenNow(model, given.evidence).values()]
      .flatMap((seen) => [...seen])
      .filter(([id]) => id !== observation && joint.observations.has(id)),
  );
  const likely = model.volts.reduce((a, b) => (b.share > a.share ? b : a)).volts;
  const translator = new EvidenceTranslator(joint, model.knowledge.observations, likely);
  const { items } = translator.translate(known, crankingSaid(model, known));
  const [healthy] = joint.expected([], observation, [sound]);
  if (healthy === undefined) return null;
  const simulated = causes.filter((fault) => joint.hypotheses.includes(fault));
  const ranges = joint.expected(items, observation, simulated);
  return {
    healthy,
    causes: simulated.flatMap((fault, index) => {
      const range = ranges[index];
      return range === undefined ? [] : [{ fault, range }];
    }),
  };
}
