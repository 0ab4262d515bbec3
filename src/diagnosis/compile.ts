import type { MachineFacts } from "../domain/evidence.ts";
import type { JointLikelihood } from "../domain/joint-likelihood.ts";
import type { Knowledge, Row } from "../domain/knowledge.ts";
import type { Reporter } from "../domain/vocabulary.ts";
import { buildGroups } from "./build-groups.ts";
import { withCircumstances } from "./circumstances.ts";
import { faultRepairs } from "./fault-repair.ts";
import { withFittingParts } from "./fitting-parts.ts";
import { buildHypotheses } from "./hypotheses.ts";
import { voltsOf } from "./machine-condition.ts";
import type { CompiledObservation, EvidenceGroup, Hypotheses, Model } from "./model.ts";
import { NOTHING_SEEN } from "./model.ts";

/** Confusion rows that closed cases taught, for some reporters of some observations. */
export type LearnedConfusion = ReadonlyMap<string, Partial<Record<Reporter, readonly Row[]>>>;

export interface ModelOptions {
  /** Multiplies a fault's share, by fault id: what closed cases of this machine kind taught. */
  readonly times?: ReadonlyMap<string, number>;
  readonly confusion?: LearnedConfusion;
  /**
   * Known circumstances of place and season: replaces the usual row of a context observation, for
   * example the month's typical weather over the states of `outdoors`. Moves the priors with it.
   */
  readonly circumstances?: ReadonlyMap<string, Row>;
  /** Groups of observations whose joint likelihood comes from simulated circuits. */
  readonly joint?: readonly JointLikelihood[];
  /** See `COINCIDENCE`: how often independent faults meet in one call. */
  readonly coincidence?: number;
}

/**
 * The knowledge compiled for one machine: hypotheses with priors, groups of observations with
 * their shared rows. Do it once per knowledge version and machine and keep the result.
 * @throws TurnrowError, UnknownId or OutOfRange with the id of what is wrong in the knowledge
 */
export function compileModel(
  knowledge: Knowledge,
  facts: MachineFacts,
  options: ModelOptions = {},
): Model {
  const placed = withCircumstances(knowledge, options.circumstances ?? new Map());
  const times = new Map(placed.times);
  for (const [fault, factor] of options.times ?? []) {
    times.set(fault, (times.get(fault) ?? 1) * factor);
  }
  const told = withConfusion(placed.knowledge, options.confusion ?? new Map());
  const learned = withFittingParts(told, facts);
  const hypotheses = buildHypotheses(learned, facts, {
    times,
    ...(options.coincidence === undefined ? {} : { coincidence: options.coincidence }),
  });
  const volts = voltsOf(facts, learned.machines.get(facts.kind));
  const likely = volts.reduce((a, b) => (b.share > a.share ? b : a)).volts;
  const groups = buildGroups(learned, hypotheses, { joint: options.joint ?? [], volts: likely });
  return {
    knowledge: learned,
    facts,
    hypotheses,
    groups,
    joint: options.joint ?? [],
    observations: compileObservations(learned, groups, hypotheses),
    repairs: faultRepairs(learned, hypotheses.faults),
    volts,
  };
}

function withConfusion(knowledge: Knowledge, learned: LearnedConfusion): Knowledge {
  if (learned.size === 0) return knowledge;
  const observations = new Map(
    [...knowledge.observations].map(([id, observation]) => {
      const rows = learned.get(id);
      if (rows === undefined) return [id, observation] as const;
      return [id, { ...observation, confusion: { ...observation.confusion, ...rows } }] as const;
    }),
  );
  return { ...knowledge, observations };
}

function compileObservations(
  knowledge: Knowledge,
  groups: readonly EvidenceGroup[],
  hypotheses: Hypotheses,
): ReadonlyMap<string, CompiledObservation> {
  const compiled = new Map<string, CompiledObservation>();
  for (const [group, members] of groups.entries()) {
    for (const id of members.observations) {
      const source = knowledge.observations.get(id);
      if (source === undefined) continue;
      let predictive: Float64Array | null = null;
      compiled.set(id, {
        source,
        isList: isList(source.kind),
        stateIndex: new Map(source.states.map((state, index) => [state.id, index])),
        group,
        // Only hedged words need it, and a simulated circuit takes its time to say it.
        get predictive() {
          predictive ??= priorPredictive(members, id, hypotheses);
          return predictive;
        },
      });
    }
  }
  return compiled;
}

/** Lists and free text hold members that are each present or absent. */
export function isList(kind: "states" | "number" | "list" | "text"): boolean {
  return kind === "list" || kind === "text";
}

function priorPredictive(group: EvidenceGroup, id: string, hypotheses: Hypotheses): Float64Array {
  const { width, rowOf, rows } = group.predict(NOTHING_SEEN, id);
  const massOf = new Float64Array(rows.length / width);
  let total = 0;
  for (let h = 0; h < rowOf.length; h++) {
    const row = rowOf[h] ?? 0;
    const prior = hypotheses.prior[h] ?? 0;
    massOf[row] = (massOf[row] ?? 0) + prior;
    total += prior;
  }
  const predictive = new Float64Array(width);
  for (let index = 0; index < rows.length; index++) {
    const mass = (massOf[Math.floor(index / width)] ?? 0) / total;
    predictive[index % width] = (predictive[index % width] ?? 0) + mass * (rows[index] ?? 0);
  }
  return predictive;
}
