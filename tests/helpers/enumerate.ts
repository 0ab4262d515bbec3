import { COINCIDENCE } from "../../src/diagnosis/hypotheses.ts";
import type { Evidence } from "../../src/domain/evidence.ts";
import type { Fault, Knowledge, Observation, Row } from "../../src/domain/knowledge.ts";
import { stages } from "../../src/domain/vocabulary.ts";

/**
 * The referee: posterior by plain enumeration of fault sets and true states, written from the
 * definitions and sharing no code with the engine. For knowledge without machine conditions,
 * latent groups, lists, readings and acts; plain operator reports in one epoch.
 */
export function enumeratePosterior(
  knowledge: Knowledge,
  evidence: Evidence,
): ReadonlyMap<string, number> {
  const joint = new Map<string, number>();
  const priors = priorOf(knowledge);
  const reported = new Map(evidence.reports.map((report) => [report.observation, report]));
  const like = (names: readonly string[], id: string): number => {
    const observation = knowledge.observations.get(id);
    const report = reported.get(id);
    if (observation === undefined || report?.said.kind !== "states") return 1;
    const { weights } = report.said;
    const truth = rowOf(knowledge, observation, names);
    let sum = 0;
    for (const [t, chance] of truth.entries()) {
      for (const [s, state] of observation.states.entries()) {
        const told = observation.confusion.operator[t]?.[s] ?? 0;
        sum += chance * told * (weights[state.id] ?? 0);
      }
    }
    return sum;
  };
  const ids = [...reported.keys()];
  let known = 0;
  for (const prior of priors.values()) known += prior.chance;
  const average = new Map(ids.map((id) => [id, 0]));
  for (const [key, { names, chance }] of priors) {
    let product = chance;
    for (const id of ids) {
      const value = like(names, id);
      product *= value;
      average.set(id, (average.get(id) ?? 0) + (chance / known) * value);
    }
    joint.set(key, product);
  }
  joint.set(
    "something else",
    knowledge.rates.somethingElse * somethingElse(knowledge, { ids, average, reported }),
  );
  const total = [...joint.values()].reduce((sum, value) => sum + value, 0);
  return new Map([...joint].map(([key, value]) => [key, value / total]));
}

function somethingElse(
  knowledge: Knowledge,
  of: {
    readonly ids: readonly string[];
    readonly average: ReadonlyMap<string, number>;
    readonly reported: ReadonlyMap<string, Evidence["reports"][number]>;
  },
): number {
  const even = (id: string): number => {
    const observation = knowledge.observations.get(id);
    const said = of.reported.get(id)?.said;
    if (observation === undefined || said?.kind !== "states") return 1;
    const size = observation.states.length;
    let sum = 0;
    for (const row of observation.confusion.operator) {
      for (const [s, state] of observation.states.entries()) {
        sum += ((row[s] ?? 0) * (said.weights[state.id] ?? 0)) / size;
      }
    }
    return sum;
  };
  const mixed = (part: number): number =>
    of.ids.reduce((p, id) => p * ((1 - part) * (of.average.get(id) ?? 1) + part * even(id)), 1);
  return 0.5 * mixed(0) + 0.05 * mixed(0.1) + 0.45 * mixed(1);
}

interface Prior {
  readonly names: readonly string[];
  readonly chance: number;
}

function priorOf(knowledge: Knowledge): ReadonlyMap<string, Prior> {
  const faults = [...knowledge.faults.values()];
  const total = faults.reduce((sum, fault) => sum + fault.share, 0);
  const weights = new Map<string, { names: string[]; weight: number }>();
  const declared = new Set<string>();
  for (const fault of faults) {
    let alone = 1;
    for (const [other, chance] of fault.brings) {
      alone -= chance;
      declared.add([fault.id, other].sort().join("+"));
      weights.set(`${fault.id}>${other}`, {
        names: [fault.id, other],
        weight: (fault.share / total) * chance,
      });
    }
    weights.set(fault.id, { names: [fault.id], weight: (fault.share / total) * alone });
  }
  for (const [i, a] of faults.entries()) {
    for (const b of faults.slice(i + 1)) {
      const weight = (COINCIDENCE * a.share * b.share) / total ** 2;
      if (weight < knowledge.rates.pairCutOff) continue;
      if (declared.has([a.id, b.id].sort().join("+"))) continue;
      weights.set(`${a.id}&${b.id}`, { names: [a.id, b.id], weight });
    }
  }
  const sum = [...weights.values()].reduce((all, { weight }) => all + weight, 0);
  const mass = 1 - knowledge.rates.nothingWrong - knowledge.rates.somethingElse;
  const priors = new Map<string, Prior>([
    ["nothing wrong", { names: [], chance: knowledge.rates.nothingWrong }],
  ]);
  for (const [key, { names, weight }] of weights) {
    priors.set(key, { names, chance: (mass * weight) / sum });
  }
  return priors;
}

function rowOf(knowledge: Knowledge, observation: Observation, names: readonly string[]): Row {
  const touching = names
    .map((name) => knowledge.faults.get(name))
    .filter((fault): fault is Fault => fault?.rows.has(observation.id) === true);
  const [a, b] = touching;
  const row = (fault: Fault): Row => fault.rows.get(observation.id) ?? [];
  if (a === undefined) return observation.usual;
  if (b === undefined) return row(a);
  const first = stages.indexOf(a.blocks);
  const second = stages.indexOf(b.blocks);
  if (first < second) return row(a);
  if (second < first) return row(b);
  return row(a).map((value, s) => (value + (row(b)[s] ?? 0)) / 2);
}

/** The engine's belief under the referee's names. */
export function namedBelief(
  hypotheses: {
    readonly faults: readonly string[];
    readonly count: number;
    readonly first: Int32Array;
    readonly second: Int32Array;
    readonly declared: Uint8Array;
  },
  probability: Float64Array,
): ReadonlyMap<string, number> {
  const names = new Map<string, number>();
  for (let h = 0; h < hypotheses.count; h++) {
    names.set(nameOf(hypotheses, h), probability[h] ?? 0);
  }
  return names;
}

function nameOf(hypotheses: Parameters<typeof namedBelief>[0], h: number): string {
  if (h === 0) return "nothing wrong";
  if (h === hypotheses.count - 1) return "something else";
  const a = hypotheses.faults[hypotheses.first[h] ?? 0] ?? "";
  const b = hypotheses.second[h] ?? -1;
  if (b < 0) return a;
  return `${a}${hypotheses.declared[h] === 1 ? ">" : "&"}${hypotheses.faults[b] ?? ""}`;
}
