import fc from "fast-check";
import type {
  Act,
  Check,
  Fault,
  Knowledge,
  LatentGroup,
  Observation,
  Part,
  Rates,
  Remedy,
  Row,
} from "../../src/domain/knowledge.ts";
import { crankingStates, firingStates } from "../../src/domain/vocabulary.ts";

/** Rates of an invented shop. */
export const testRates: Rates = {
  travelMinutes: 30,
  secondTripMinutes: 90,
  collectMinutes: 200,
  operatorMinute: 0.5,
  standstillPerHour: { low: 0, normal: 10, high: 60 },
  callForHelpMinutes: 120,
  somethingElse: 0.02,
  nothingWrong: 0.02,
  repeatsItself: 0.7,
  curedByTheWay: 0,
  pairCutOff: 1,
  shareStrength: 50,
  unasked: {},
};

/** Turns the key and the engine runs at once. */
const startsRow = (states: readonly string[], state: string): Row =>
  states.map((id) => Number(id === state));

export const crankingRow = (states: Partial<Record<string, number>>): Row =>
  crankingStates.map((state) => states[state] ?? 0);
export const firingRow = (states: Partial<Record<string, number>>): Row =>
  firingStates.map((state) => states[state] ?? 0);

export function makeFault(id: string, given: Partial<Fault> = {}): Fault {
  return {
    id,
    title: id,
    system: "any",
    group: "other",
    share: 1,
    source: "invented",
    blocks: "motor",
    needs: {},
    factors: [],
    cranking: startsRow(crankingStates, "nothing"),
    firing: startsRow(firingStates, "starts"),
    rows: new Map(),
    brings: new Map(),
    remedies: [`mend-${id}`],
    explain: id,
    notYet: [],
    circuit: false,
    ...given,
  };
}

const identity = (size: number): Row[] =>
  Array.from({ length: size }, (_, t) => Array.from({ length: size }, (_, s) => Number(s === t)));

/** Reported as it is by everybody. */
export function plainConfusion(kind: Observation["kind"], size: number): Observation["confusion"] {
  const rows = kind === "list" || kind === "text" ? identity(2) : identity(size);
  return { operator: rows, "second-hand": rows, photo: rows, technician: rows };
}

/** Reported rightly with chance `right`, else one of the other states. */
export function noisyConfusion(size: number, right: number): Observation["confusion"] {
  const rows = identity(size).map((row) =>
    row.map((value) => (value === 1 ? right : (1 - right) / (size - 1))),
  );
  return { operator: rows, "second-hand": rows, photo: rows, technician: rows };
}

export function makeObservation(
  id: string,
  states: readonly string[],
  usual: Row,
  given: Partial<Observation> = {},
): Observation {
  const kind = given.kind ?? "states";
  return {
    id,
    title: id,
    kind,
    states: states.map((state) => ({ id: state, title: state })),
    scalesWithVolts: false,
    usual,
    context: false,
    confusion: plainConfusion(kind, states.length),
    combine: "precedence",
    onlyIf: [],
    needs: {},
    source: "invented",
    ...given,
  };
}

export function makeCheck(id: string, yields: string, given: Partial<Check> = {}): Check {
  return {
    id,
    title: id,
    yields,
    step: "talk",
    performers: ["operator", "technician"],
    ask: id,
    minutes: 5,
    burden: 1,
    tools: [],
    hazards: [],
    needs: {},
    onlyIf: [],
    after: [],
    atMachine: false,
    operatorHas: [],
    verdicts: [],
    menu: [],
    photo: false,
    source: "invented",
    ...given,
  };
}

export function makeAct(id: string, given: Partial<Act> = {}): Act {
  return {
    id,
    title: id,
    performers: ["operator", "technician"],
    ask: id,
    minutes: 3,
    burden: 1,
    hazards: [],
    needs: {},
    onlyIf: [],
    operatorHas: [],
    tools: [],
    cures: new Map(),
    masks: new Map(),
    makesStale: [],
    source: "invented",
    ...given,
  };
}

export function makeRemedy(id: string, given: Partial<Remedy> = {}): Remedy {
  return {
    id,
    title: id,
    performers: ["technician"],
    minutes: 20,
    parts: [],
    tools: [],
    hazards: [],
    cures: 1,
    text: id,
    source: "invented",
    ...given,
  };
}

export function makePart(id: string, given: Partial<Part> = {}): Part {
  return {
    id,
    title: id,
    alternates: [],
    universal: false,
    fit: [],
    needs: {},
    price: [1, 2],
    carryMinutes: 2,
    source: "invented",
    ...given,
  };
}

export interface KnowledgeParts {
  readonly faults: readonly Fault[];
  readonly observations?: readonly Observation[];
  readonly checks?: readonly Check[];
  readonly acts?: readonly Act[];
  /** Absent: one remedy `mend-<fault>` of 20 minutes for each fault. */
  readonly remedies?: readonly Remedy[];
  readonly parts?: readonly Part[];
  readonly latentGroups?: readonly LatentGroup[];
  readonly accessGroups?: Knowledge["accessGroups"];
  readonly machines?: Knowledge["machines"];
  readonly rates?: Partial<Rates>;
}

const byId = <T extends { readonly id: string }>(things: readonly T[] = []): Map<string, T> =>
  new Map(things.map((thing) => [thing.id, thing]));

/** A small Knowledge; whatever is not given is empty. */
export function makeKnowledge(given: KnowledgeParts): Knowledge {
  return {
    version: "test",
    faults: byId(given.faults),
    observations: byId(given.observations),
    checks: byId(given.checks),
    acts: byId(given.acts),
    remedies: byId(given.remedies ?? given.faults.map((fault) => makeRemedy(`mend-${fault.id}`))),
    parts: byId(given.parts),
    tools: new Map(),
    hazards: new Map(),
    redFlags: new Map(),
    accessGroups: given.accessGroups ?? new Map(),
    latentGroups: byId(given.latentGroups),
    systems: new Map(),
    features: new Map(),
    machines: given.machines ?? new Map(),
    rates: { ...testRates, ...given.rates },
  };
}

/** A machine of which nothing but the kind is known. */
export const someMachine = { kind: "other" } as const;

/** Positive rows that sum to 1. */
export const anyRow = (size: number): fc.Arbitrary<number[]> =>
  fc.array(fc.integer({ min: 1, max: 50 }), { minLength: size, maxLength: size }).map((weights) => {
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    return weights.map((weight) => weight / total);
  });

export interface RandomSize {
  readonly faults: number;
  readonly observations: number;
}

/**
 * Random knowledge: faults with shares, stages and rows for about half the observations; checks
 * and remedies with random minutes; noisy reporters. No starting chain.
 */
export function anyKnowledge(size: RandomSize): fc.Arbitrary<Knowledge> {
  const stage = fc.constantFrom("control", "motor", "combustion", "none");
  const observation = (index: number) =>
    fc.integer({ min: 2, max: 3 }).chain((states) =>
      fc
        .record({ usual: anyRow(states), right: fc.integer({ min: 6, max: 10 }) })
        .map(({ usual, right }) =>
          makeObservation(
            `o${index}`,
            usual.map((_, s) => `s${s}`),
            usual,
            { confusion: noisyConfusion(usual.length, right / 10) },
          ),
        ),
    );
  return fc
    .tuple(...Array.from({ length: size.observations }, (_, index) => observation(index)))
    .chain((observations) => {
      const rows = fc.tuple(
        ...observations.map((o) => fc.option(anyRow(o.states.length), { nil: undefined })),
      );
      const fault = (index: number) =>
        fc
          .record({ share: fc.integer({ min: 1, max: 30 }), blocks: stage, rows })
          .map(({ share, blocks, rows: given }) =>
            makeFault(`f${index}`, {
              share,
              blocks,
              rows: new Map(given.flatMap((row, o) => (row === undefined ? [] : [[`o${o}`, row]]))),
            }),
          );
      const minutes = fc.array(fc.integer({ min: 1, max: 60 }), {
        minLength: size.faults + size.observations,
        maxLength: size.faults + size.observations,
      });
      return fc
        .tuple(
          fc.tuple(...Array.from({ length: size.faults }, (_, index) => fault(index))),
          minutes,
          fc.integer({ min: 0, max: 9 }),
        )
        .map(([faults, times, brought]) => {
          const [first, second] = faults;
          const bringing =
            first !== undefined && second !== undefined && brought > 4
              ? [{ ...first, brings: new Map([[second.id, brought / 10]]) }, ...faults.slice(1)]
              : faults;
          return makeKnowledge({
            faults: bringing,
            observations,
            checks: observations.map((o, index) =>
              makeCheck(`look-${o.id}`, o.id, { minutes: times[size.faults + index] ?? 5 }),
            ),
            remedies: faults.map((f, index) =>
              makeRemedy(`mend-${f.id}`, { minutes: times[index] ?? 20 }),
            ),
            rates: { pairCutOff: 1e-4 },
          });
        });
    });
}
