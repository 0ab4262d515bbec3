import type { Knowledge, Observation, Titled } from "../../src/domain/knowledge.ts";

interface Small {
  readonly tools?: Readonly<Record<string, string>>;
  /** Observation → state → title. */
  readonly states?: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

/** A knowledge with nothing in it but the words a test is about. */
export function smallKnowledge({ tools = {}, states = {} }: Small): Knowledge {
  const titled = (titles: Readonly<Record<string, string>>): Map<string, Titled> =>
    new Map(Object.entries(titles).map(([id, title]) => [id, { id, title }]));
  return {
    version: "test",
    faults: new Map(),
    observations: new Map(
      Object.entries(states).map(([id, titles]) => [id, observation(id, titles)]),
    ),
    checks: new Map(),
    acts: new Map(),
    remedies: new Map(),
    parts: new Map(),
    tools: titled(tools),
    hazards: new Map(),
    redFlags: new Map(),
    accessGroups: new Map(),
    latentGroups: new Map(),
    systems: new Map(),
    features: new Map(),
    machines: new Map(),
    rates: {
      travelMinutes: 0,
      secondTripMinutes: 0,
      collectMinutes: 0,
      operatorMinute: 0,
      standstillPerHour: { low: 0, normal: 0, high: 0 },
      callForHelpMinutes: 0,
      somethingElse: 0,
      nothingWrong: 0,
      repeatsItself: 0,
      curedByTheWay: 0,
      pairCutOff: 0,
      shareStrength: 1,
      unasked: {},
    },
  };
}

function observation(id: string, titles: Readonly<Record<string, string>>): Observation {
  return {
    id,
    title: id,
    kind: "states",
    states: Object.entries(titles).map(([state, title]) => ({ id: state, title })),
    scalesWithVolts: false,
    usual: [],
    context: false,
    confusion: { operator: [], "second-hand": [], photo: [], technician: [] },
    combine: "precedence",
    onlyIf: [],
    needs: {},
    source: "test",
  };
}
