import { describe, expect, it } from "vitest";
import { type CaseFile, readCase } from "../../src/cases/case-file.ts";
import type { MachineKind } from "../../src/domain/knowledge.ts";
import type { MachineHints, Reader, ReadingResult, Understood } from "../../src/domain/reading.ts";
import { readerModel } from "../../src/reading/reader-model.ts";
import { makeAct, makeKnowledge, makeObservation } from "../helpers/knowledge-maker.ts";

const even = (size: number) => Array.from({ length: size }, () => 1 / size);
const stated = (id: string, states: string) =>
  makeObservation(id, states.split(" "), even(states.split(" ").length));

const mower: MachineKind = {
  id: "ride-on-mower",
  title: "Ride-on mower",
  synonyms: ["lawn tractor", "riding mower"],
  fuels: { petrol: 1 },
  volts: [{ volts: 12, share: 1 }],
  systems: [],
  features: new Map(),
  circuits: {},
  offer: 1,
  family: "garden",
  source: "invented",
};
const knowledge = makeKnowledge({
  faults: [],
  observations: [
    stated("on-start", "nothing one-click slow starts"),
    stated("lights-on", "dead dim normal"),
    stated("lights-at-start", "stay-bright go-out"),
    stated("jump-start", "not-tried cured no-change"),
    stated("controls-moved", "no-change then-started"),
    makeObservation("recent-event", ["tipped", "charged", "welded"], even(3), { kind: "list" }),
    makeObservation("battery-rest-volts", ["low", "good"], even(2), {
      kind: "number",
      unit: "V",
      plausible: [0, 15],
      scalesWithVolts: true,
    }),
  ],
  acts: [
    makeAct("give-a-jump", { yields: "jump-start" }),
    makeAct("move-everything", { yields: "controls-moved" }),
    makeAct("charge-it", { makesStale: ["on-start"] }),
  ],
  machines: new Map([["ride-on-mower", mower]]),
});

const nothingRead: ReadingResult = {
  language: "en",
  understood: [],
  ambiguous: [],
  notUnderstood: [],
  denied: [],
  earlier: [],
  acts: [],
  implausible: [],
  replaced: [],
  components: [],
  machine: { certainty: 0 },
  urgency: null,
  redFlags: [],
  command: null,
  afterwards: false,
};

interface Heard {
  readonly probability?: number;
  readonly hedge?: number;
  readonly source?: "self" | "other";
}
const says = (observation: string, what: string | number, heard: Heard = {}): Understood => {
  const base = {
    observation,
    probability: 1,
    hedge: 0,
    source: "self" as const,
    span: [0, 1] as const,
    ...heard,
  };
  return typeof what === "number"
    ? { ...base, value: what, unit: "V", spread: 0 }
    : { ...base, state: what };
};

/** A reader that knows the given phrases and nothing else, and keeps what it was asked. */
function readerOf(phrases: Readonly<Record<string, Partial<ReadingResult>>>) {
  const asked: { readonly text: string; readonly volts: number | undefined }[] = [];
  const reader: Reader = {
    read: (text, options) => {
      asked.push({ text, volts: options.volts });
      const known = Object.entries(phrases).filter(([phrase]) => text.includes(phrase));
      const whole = text === "" ? [] : [[0, text.length] as const];
      if (known.length === 0) return { ...nothingRead, notUnderstood: whole };
      const understood = known.flatMap(([, said]) => said.understood ?? []);
      const acts = known.flatMap(([, said]) => said.acts ?? []);
      return { ...nothingRead, ...known[0]?.[1], understood, acts };
    },
  };
  return { reader, asked };
}

const empty: CaseFile = {
  id: "x",
  machine: {},
  opening: "",
  operator: {},
  technician: {},
  cause: [],
  group: [],
  strict: false,
};

function read(
  file: Partial<CaseFile>,
  phrases: Readonly<Record<string, Partial<ReadingResult>>> = {},
) {
  const { reader, asked } = readerOf(phrases);
  const model = readerModel(knowledge);
  const found = readCase({ ...empty, ...file }, { knowledge, reader, model, languages: ["en"] });
  return { ...found, asked };
}

const hinted = (hints: Partial<MachineHints>) => ({ machine: { certainty: 1, ...hints } });

describe("the machine of a case file", () => {
  it("is found by its free words, with what else is given", () => {
    const { machine } = read({
      machine: { kind: "Lawn tractor, 15 hp", fuel: "petrol", volts: 12, cylinders: 1, hours: 9 },
    });
    expect(machine).toEqual({
      kind: "ride-on-mower",
      fuel: "petrol",
      volts: 12,
      cylinders: 1,
      hours: 9,
      words: "Lawn tractor, 15 hp",
    });
  });
  it("is `other` when its words name none, or a kind the knowledge lacks", () => {
    expect(read({ machine: { kind: "space rocket" } }).machine.kind).toBe("other");
    expect(read({}).machine).toEqual({ kind: "other" });
  });
  it("takes a fuel that is none of ours as unknown, and one from the words of the kind", () => {
    expect(read({ machine: { fuel: "unstated" } }).machine.fuel).toBeUndefined();
    expect(read({ machine: { kind: "diesel lawn tractor" } }).machine.fuel).toBe("diesel");
  });
  it("takes from the opening what the entries leave out, and nothing else", () => {
    const said = {
      mine: hinted({ kind: "ride-on-mower", volts: 6, ageYears: 60, fuel: "diesel" }),
    };
    expect(read({ opening: "mine" }, said).machine).toEqual({
      kind: "ride-on-mower",
      fuel: "diesel",
      volts: 6,
      ageYears: 60,
    });
    const told = read({ opening: "mine", machine: { fuel: "petrol", volts: 12 } }, said).machine;
    expect([told.fuel, told.volts]).toEqual(["petrol", 12]);
  });
  it("has its volts read with the facts, also when only the opening names them", () => {
    const { asked } = read(
      { opening: "mine", technician: { "battery-rest-volts": "5 V" } },
      { mine: hinted({ volts: 6 }) },
    );
    expect(asked.map((one) => one.volts)).toEqual([undefined, 6]);
  });
});

describe("the facts of a case file", () => {
  it("are plain where a state's id is given", () => {
    const { operator, asked } = read({ operator: { "on-start": "slow" } });
    expect(operator).toEqual([
      {
        observation: "on-start",
        epoch: 0,
        reporter: "operator",
        said: { kind: "states", weights: { slow: 1 } },
        hedge: 0,
        unasked: true,
      },
    ]);
    expect(asked.map((one) => one.text)).toEqual([""]);
  });
  it("go to the reader as numbers with their unit", () => {
    const { technician } = read(
      { technician: { "battery-rest-volts": "12.6 V" } },
      { "12.6 V": { understood: [says("battery-rest-volts", 12.6, { probability: 0.9 })] } },
    );
    expect(technician).toHaveLength(1);
    expect(technician[0]).toMatchObject({
      observation: "battery-rest-volts",
      reporter: "technician",
      said: { kind: "value", value: 12.6 },
    });
    expect(technician[0]?.hedge).toBeCloseTo(0.1, 12);
  });
  it("of a list make one report of all its members", () => {
    const { operator } = read({ operator: { "recent-event": ["tipped", "charged", "tipped"] } });
    expect(operator.map((report) => report.said)).toEqual([
      { kind: "members", present: ["tipped", "charged"], absent: [] },
    ]);
  });
  it("of one list in several entries are still one report", () => {
    const { operator } = read(
      { operator: { "recent-event": "tipped", "last spring": "we welded it" } },
      { welded: { understood: [says("recent-event", "welded", { probability: 0.8 })] } },
    );
    expect(operator.map((report) => report.said)).toEqual([
      { kind: "members", present: expect.arrayContaining(["tipped", "welded"]), absent: [] },
    ]);
  });
  it("under `lights` are those with the key on, or at the start, by their state", () => {
    const { operator } = read({ operator: { lights: ["dim", "go-out"] } });
    expect(operator.map((report) => report.observation)).toEqual(["lights-on", "lights-at-start"]);
  });
  it("that nothing can be made of are listed, key and text, and are no error", () => {
    const { operator, technician, notUnderstood } = read({
      opening: "blah",
      operator: { "blade-lever": "engaged", "on-start": "sings" },
      technician: { meter: ["odd", "very odd"] },
    });
    expect([operator, technician]).toEqual([[], []]);
    expect(notUnderstood).toEqual([
      "blah",
      "blade-lever: engaged",
      "on-start: sings",
      "meter: odd",
      "meter: very odd",
    ]);
  });
  it("that were read are not listed as not understood", () => {
    const phrases = { "dead as": { understood: [says("on-start", "nothing")] } };
    expect(read({ operator: { noise: "dead as stone" } }, phrases).notUnderstood).toEqual([]);
  });
  it("are worth less the less surely they were said and read", () => {
    const heard = says("on-start", "slow", { probability: 0.8, hedge: 0.5 });
    const [report] = read({ opening: "drags" }, { drags: { understood: [heard] } }).opening;
    expect(report?.hedge).toBeCloseTo(0.6, 12);
  });
  it("told from hearsay by the operator are second-hand; the technician's stay the technician's", () => {
    const phrases = {
      husband: { understood: [says("on-start", "slow", { source: "other" })] },
    };
    expect(read({ opening: "my husband" }, phrases).opening[0]?.reporter).toBe("second-hand");
    const { technician } = read({ technician: { note: "the husband" } }, phrases);
    expect(technician[0]?.reporter).toBe("technician");
  });
  it("are the surest of their kind: a state named outright stands over words about it", () => {
    const phrases = { hum: { understood: [says("on-start", "slow", { probability: 0.9 })] } };
    const { operator } = read({ operator: { "on-start": "nothing", noise: "a hum" } }, phrases);
    expect(operator.map((one) => one.said)).toEqual([{ kind: "states", weights: { nothing: 1 } }]);
  });
  it("that are denied leave the other states, unless the opening told more", () => {
    const denied = ["normal", "dim"].map((state) => ({
      observation: "lights-on",
      state,
      probability: 1,
      hedge: 0,
      source: "self" as const,
      span: [0, 1] as const,
    }));
    const lamps = { operator: { lamps: "not bright" } };
    const phrases = { "not bright": { denied: denied.slice(0, 1) } };
    expect(read(lamps, phrases).operator.map((one) => one.said)).toEqual([
      { kind: "states", weights: { dead: 0.5, dim: 0.5 } },
    ]);
    const said = { ...phrases, gloomy: { understood: [says("lights-on", "dim")] } };
    expect(read({ ...lamps, opening: "gloomy" }, said).operator).toEqual([]);
  });
  it("leave out readings that the knowledge has no place for", () => {
    const phrases = {
      odd: { understood: [says("shoe-size", "large"), says("on-start", "sings")] },
    };
    expect(read({ opening: "odd" }, phrases).opening).toEqual([]);
  });
  it("raise each red flag of the opening once", () => {
    const redFlags = [
      { id: "fuel-leak", span: [0, 1] as const },
      { id: "fuel-leak", span: [2, 3] as const },
    ];
    expect(read({ opening: "drip drip" }, { drip: { redFlags } }).redFlags).toEqual(["fuel-leak"]);
  });
});

describe("the acts of a case file", () => {
  it("are kept apart from the facts about the time before", () => {
    const { operator, acts } = read({ operator: { "jump-start": "cured", "on-start": "slow" } });
    expect(operator.map((report) => report.observation)).toEqual(["on-start"]);
    expect(acts.map(({ act, outcome }) => [act, outcome])).toEqual([["give-a-jump", "unknown"]]);
    expect(acts[0]?.report?.said).toEqual({ kind: "states", weights: { cured: 1 } });
  });
  it.each([
    ["then-started", "cured"],
    ["no-change", "no-change"],
  ])("moved controls, %s: the outcome is %s", (state, outcome) => {
    const { acts } = read({ operator: { "controls-moved": state } });
    const by = { by: "operator", toldIn: "operator" };
    expect(acts).toEqual([{ act: "move-everything", outcome, report: null, ...by }]);
  });
  it("found in free words are acts as well", () => {
    const phrases = { leads: { understood: [says("jump-start", "no-change")] } };
    expect(read({ operator: { tried: "leads, same" } }, phrases).acts).toHaveLength(1);
  });
  it("told twice were done once", () => {
    const phrases = {
      leads: { understood: [says("jump-start", "no-change", { probability: 0.7 })] },
    };
    const { acts } = read({ operator: { "jump-start": "cured", tried: "leads" } }, phrases);
    expect(acts.map(({ report }) => report?.said)).toEqual([
      { kind: "states", weights: { cured: 1 } },
    ]);
  });
  it("are the technician's where the technician tells them", () => {
    const { acts, technician } = read({ technician: { "controls-moved": "then-started" } });
    expect(technician).toEqual([]);
    expect(acts).toMatchObject([{ act: "move-everything", by: "technician", outcome: "cured" }]);
  });
  it("with an outcome in words are kept where the knowledge has them", () => {
    const acts = ["charge-it", "dance"].map((act) => ({
      act,
      outcome: "no-change" as const,
      span: [0, 1] as const,
    }));
    const found = read({ operator: { charger: "hummed" } }, { hummed: { acts } });
    expect(found.acts.map(({ act, outcome }) => [act, outcome])).toEqual([
      ["charge-it", "no-change"],
    ]);
  });
  it("after which it was so do not count as found", () => {
    const lamps = {
      afterwards: true,
      understood: [says("lights-on", "dim"), says("on-start", "slow")],
    };
    const phrases = { glow: lamps };
    const told = (file: Partial<CaseFile>) => read(file, phrases);
    const operator = told({ operator: { "after charging": "glow" } }).operator;
    expect(operator.map((one) => one.observation)).toEqual(["lights-on"]);
    expect(told({ technician: { "after charging": "glow" } }).technician).toEqual([]);
  });
  it("that helped once do not end the trouble that an opening tells of", () => {
    const acts = [{ act: "charge-it", outcome: "cured" as const, span: [0, 1] as const }];
    expect(read({ opening: "hummed" }, { hummed: { acts } }).acts).toEqual([]);
  });
  it("of the opening are done before those of the entries", () => {
    const phrases = { leads: { understood: [says("jump-start", "no-change")] } };
    const found = read({ opening: "leads", operator: { "controls-moved": "no-change" } }, phrases);
    expect(found.acts.map(({ act, toldIn }) => [act, toldIn])).toEqual([
      ["give-a-jump", "opening"],
      ["move-everything", "operator"],
    ]);
    expect(found.opening).toEqual([]);
  });
  it("that were not tried are no acts", () => {
    expect(read({ operator: { "jump-start": "not-tried" } }).acts).toEqual([]);
  });
  it("that the knowledge lacks stay facts, so that no unknown act reaches the engine", () => {
    const { reader } = readerOf({});
    const bare = { ...knowledge, acts: new Map() };
    const file = { ...empty, operator: { "controls-moved": "then-started" } };
    const parts = { knowledge: bare, reader, model: readerModel(bare), languages: [] };
    const found = readCase(file, parts);
    expect(found.acts).toEqual([]);
    expect(found.operator.map((one) => one.observation)).toEqual(["controls-moved"]);
  });
});
