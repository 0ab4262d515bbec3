import { createRandom } from "../diagnosis/random.ts";
import type { Evidence } from "../domain/evidence.ts";
import type { Check, Fault, Knowledge, Observation, Remedy, Row } from "../domain/knowledge.ts";
import { crankingStates, firingStates, stages } from "../domain/vocabulary.ts";

/** The size of an invented model. */
export interface SyntheticSize {
  readonly faults: number;
  readonly observations: number;
  /** Declared pairs and independent ones, as the shipped knowledge has them. */
  readonly pairs: boolean;
  readonly seed: number;
}

/** Observations that each fault touches, as in a real system. */
const TOUCHED = 10;

/** Invented knowledge of a given size, for measuring only: the numbers mean nothing. */
export function syntheticKnowledge(size: SyntheticSize): Knowledge {
  const random = createRandom(size.seed);
  const observations = Array.from({ length: size.observations }, (_, index) =>
    observationOf(index, random),
  );
  const faults = Array.from({ length: size.faults }, (_, index) =>
    faultOf(index, { size, observations, random }),
  );
  const empty = { tools: new Map(), hazards: new Map(), redFlags: new Map(), systems: new Map() };
  return {
    ...empty,
    version: `synthetic-${size.faults}-${size.observations}-${size.seed}`,
    faults: byId(faults),
    observations: byId(observations),
    checks: byId(observations.map((observation, index) => checkOf(observation, index, random))),
    acts: new Map(),
    remedies: byId(faults.map((fault) => remedyOf(fault, random))),
    parts: byId(faults.map((fault) => partOf(fault))),
    accessGroups: byId([{ id: "cover", title: "cover", minutes: 10 }]),
    latentGroups: new Map(),
    features: new Map(),
    machines: new Map(),
    rates: {
      travelMinutes: 30,
      secondTripMinutes: 90,
      collectMinutes: 240,
      operatorMinute: 0.5,
      standstillPerHour: { low: 0, normal: 10, high: 60 },
      callForHelpMinutes: 120,
      somethingElse: 0.03,
      nothingWrong: 0.02,
      repeatsItself: 0.7,
      curedByTheWay: 0,
      pairCutOff: size.pairs ? 1e-6 : 1,
      shareStrength: 50,
      unasked: {},
    },
  };
}

/** Answers to the first observations, as an operator with a random trouble might give them. */
export function syntheticAnswers(knowledge: Knowledge, count: number, seed: number): Evidence {
  const random = createRandom(seed);
  const faults = [...knowledge.faults.values()];
  const fault = faults[Math.floor(random() * faults.length)];
  const reports = [...knowledge.observations.values()].slice(0, count).map((observation) => {
    const row = fault?.rows.get(observation.id) ?? observation.usual;
    const state = observation.states[draw(row, random())]?.id ?? "";
    return {
      observation: observation.id,
      epoch: 0,
      reporter: "operator" as const,
      said: { kind: "states" as const, weights: { [state]: 1 } },
      hedge: 0,
    };
  });
  return { reports, acts: [] };
}

/** Index of the state at a point of [0, 1) along a row. */
export function draw(row: Row, at: number): number {
  let left = at;
  for (const [index, chance] of row.entries()) {
    left -= chance;
    if (left < 0) return index;
  }
  return Math.max(0, row.length - 1);
}

function byId<T extends { readonly id: string }>(things: readonly T[]): ReadonlyMap<string, T> {
  return new Map(things.map((thing) => [thing.id, thing]));
}

function rowOf(size: number, peak: number, random: () => number): Row {
  const weights = Array.from({ length: size }, (_, s) => (s === peak ? 4 : 0.2) + random());
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / total);
}

function observationOf(index: number, random: () => number): Observation {
  const size = 2 + (index % 3);
  const right = 0.9;
  const rows = Array.from({ length: size }, (_, t) =>
    Array.from({ length: size }, (_unused, s) => (s === t ? right : (1 - right) / (size - 1))),
  );
  const id = `observation-${index}`;
  return {
    id,
    title: id,
    kind: "states",
    states: Array.from({ length: size }, (_, s) => ({ id: `state-${s}`, title: `state-${s}` })),
    scalesWithVolts: false,
    usual: rowOf(size, 0, random),
    context: false,
    confusion: { operator: rows, "second-hand": rows, photo: rows, technician: rows },
    combine: "precedence",
    onlyIf: [],
    needs: {},
    source: "synthetic",
  };
}

function faultOf(
  index: number,
  from: {
    readonly size: SyntheticSize;
    readonly observations: readonly Observation[];
    readonly random: () => number;
  },
): Fault {
  const { size, observations, random } = from;
  const rows = new Map<string, Row>();
  for (let touched = 0; touched < TOUCHED; touched++) {
    const observation = observations[Math.floor(random() * observations.length)];
    if (observation === undefined) continue;
    const count = observation.states.length;
    rows.set(observation.id, rowOf(count, Math.floor(random() * count), random));
  }
  const brings = size.pairs && index % 3 === 0 && index + 1 < size.faults;
  return {
    id: `fault-${index}`,
    title: `fault-${index}`,
    system: "any",
    group: "other",
    share: 0.2 + random(),
    source: "synthetic",
    blocks: stages[index % stages.length] ?? "motor",
    needs: {},
    factors: [],
    cranking: crankingStates.map((state) => Number(state === "turns")),
    firing: firingStates.map((state) => Number(state === "turns-no-fire")),
    rows,
    brings: brings ? new Map([[`fault-${index + 1}`, 0.3]]) : new Map(),
    remedies: [`mend-fault-${index}`],
    explain: "",
    notYet: [],
    circuit: false,
  };
}

function checkOf(observation: Observation, index: number, random: () => number): Check {
  return {
    id: `look-${observation.id}`,
    title: observation.title,
    yields: observation.id,
    step: "inspect",
    performers: ["operator", "technician"],
    ask: "",
    minutes: 2 + Math.floor(random() * 12),
    burden: 1 + random(),
    tools: [],
    ...(index % 7 === 0 ? { access: "cover" } : {}),
    hazards: [],
    needs: {},
    onlyIf: [],
    after: [],
    atMachine: false,
    operatorHas: [],
    verdicts: [],
    menu: [],
    photo: false,
    source: "synthetic",
  };
}

function remedyOf(fault: Fault, random: () => number): Remedy {
  return {
    id: `mend-${fault.id}`,
    title: fault.title,
    performers: ["technician"],
    minutes: 5 + Math.floor(random() * 60),
    parts: random() < 0.5 ? [`part-${fault.id}`] : [],
    tools: [],
    hazards: [],
    cures: 0.95,
    text: "",
    source: "synthetic",
  };
}

function partOf(fault: Fault) {
  return {
    id: `part-${fault.id}`,
    title: fault.title,
    alternates: [],
    universal: false,
    fit: [],
    needs: {},
    price: [10, 20] as const,
    carryMinutes: 3,
    source: "synthetic",
  };
}
