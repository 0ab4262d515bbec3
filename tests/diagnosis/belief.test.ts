import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { updateBelief } from "../../src/diagnosis/belief.ts";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { decibans } from "../../src/diagnosis/marginals.ts";
import type { Evidence, Report } from "../../src/domain/evidence.ts";
import type { Fault, Knowledge } from "../../src/domain/knowledge.ts";
import { OutOfRange, TurnrowError, UnknownId } from "../../src/domain/result.ts";
import { enumeratePosterior, namedBelief } from "../helpers/enumerate.ts";
import {
  anyKnowledge,
  crankingRow,
  firingRow,
  makeFault,
  makeKnowledge,
  makeObservation,
  noisyConfusion,
  someMachine,
} from "../helpers/knowledge-maker.ts";
import { named, read, told } from "../helpers/told.ts";

const given = (...reports: readonly Report[]): Evidence => ({ reports, acts: [] });

/** Soft reports of some of the observations o0 … o3. */
const anyReports: fc.Arbitrary<Report[]> = fc
  .array(fc.option(fc.tuple(fc.nat(1), fc.integer({ min: 1, max: 10 })), { nil: undefined }), {
    minLength: 4,
    maxLength: 4,
  })
  .map((said) =>
    said.flatMap((report, o) => {
      if (report === undefined) return [];
      const [state, surety] = report;
      const weights = { [`s${state}`]: surety / 10, [`s${1 - state}`]: 1 - surety / 10 };
      return [{ ...told(`o${o}`, ""), said: { kind: "states", weights } }];
    }),
  );

const beliefOf = (knowledge: Knowledge, evidence: Evidence) => {
  const model = compileModel(knowledge, someMachine);
  return namedBelief(model.hypotheses, updateBelief(model, evidence).probability);
};

describe("belief", () => {
  it("agrees with enumeration of fault sets and true states", () => {
    fc.assert(
      fc.property(
        anyKnowledge({ faults: 4, observations: 4 }),
        anyReports,
        (knowledge, reports) => {
          const own = beliefOf(knowledge, given(...reports));
          const referee = enumeratePosterior(knowledge, given(...reports));
          expect([...own.keys()].sort()).toEqual([...referee.keys()].sort());
          for (const [name, p] of referee) expect(own.get(name)).toBeCloseTo(p, 10);
        },
      ),
      { seed: 31, numRuns: 200 },
    );
  });

  it("sums to 1, and the order of answers within an epoch does not matter", () => {
    fc.assert(
      fc.property(
        anyKnowledge({ faults: 5, observations: 4 }),
        anyReports,
        (knowledge, reports) => {
          const model = compileModel(knowledge, someMachine);
          const { probability } = updateBelief(model, given(...reports));
          const backwards = updateBelief(model, given(...[...reports].reverse())).probability;
          expect(probability.reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 11);
          for (const [h, p] of probability.entries()) expect(backwards[h]).toBeCloseTo(p, 12);
        },
      ),
      { seed: 32, numRuns: 100 },
    );
  });

  it("does not depend on names or on the order of the knowledge", () => {
    fc.assert(
      fc.property(
        anyKnowledge({ faults: 4, observations: 4 }),
        anyReports,
        (knowledge, reports) => {
          const turned = {
            ...knowledge,
            faults: new Map([...knowledge.faults].reverse()),
            observations: new Map([...knowledge.observations].reverse()),
          };
          const sorted = (belief: ReadonlyMap<string, number>) =>
            new Map([...belief].map(([name, p]) => [name.split("&").sort().join("&"), p]));
          const one = sorted(beliefOf(knowledge, given(...reports)));
          const other = sorted(beliefOf(turned, given(...reports)));
          for (const [name, p] of one) expect(other.get(name)).toBeCloseTo(p, 11);
        },
      ),
      { seed: 33, numRuns: 100 },
    );
  });

  it("is not changed by a fault that this machine cannot have", () => {
    fc.assert(
      fc.property(
        anyKnowledge({ faults: 4, observations: 4 }),
        anyReports,
        (knowledge, reports) => {
          const more = {
            ...knowledge,
            faults: new Map([
              ["ghost", makeFault("ghost", { needs: { kinds: ["combine"] }, remedies: [] })],
              ...knowledge.faults,
            ]),
          };
          const one = beliefOf(knowledge, given(...reports));
          const other = beliefOf(more, given(...reports));
          for (const [name, p] of one) expect(other.get(name)).toBeCloseTo(p, 12);
        },
      ),
      { seed: 34, numRuns: 60 },
    );
  });

  it("moves something else by less than 3 dB through thirty ordinary answers", () => {
    const ids = Array.from({ length: 30 }, (_, k) => `o${k}`);
    const knowledge = makeKnowledge({
      faults: ["a", "b", "c"].map((id, k) =>
        makeFault(id, { rows: new Map([[`o${k}`, [0.3, 0.3, 0.4]]]) }),
      ),
      observations: ids.map((id) =>
        makeObservation(id, ["usual", "odd", "odder"], [0.9, 0.06, 0.04]),
      ),
      rates: { nothingWrong: 0 },
    });
    const model = compileModel(knowledge, someMachine);
    const ordinary = ids.slice(3).map((id) => told(id, "usual"));
    const after = updateBelief(model, given(...ordinary)).probability;
    const other = model.hypotheses.count - 1;
    const before = model.hypotheses.prior[other] ?? 0;
    expect(Math.abs(decibans(after[other] ?? 0, before))).toBeLessThan(3);
  });

  it("puts something else first when three answers contradict each other", () => {
    const ids = ["a", "b", "c"];
    const knowledge = makeKnowledge({
      faults: ids.map((id) => makeFault(id, { rows: new Map([[`only-${id}`, [0.02, 0.98]]]) })),
      observations: ids.map((id) => makeObservation(`only-${id}`, ["no", "yes"], [0.99, 0.01])),
    });
    const model = compileModel(knowledge, someMachine);
    const belief = updateBelief(model, given(...ids.map((id) => told(`only-${id}`, "yes"))));
    const other = belief.probability[model.hypotheses.count - 1] ?? 0;
    expect(other).toBeGreaterThan(Math.max(...belief.probability.slice(0, -1)));
  });

  it("never gives NaN, and says so when no known fault can be", () => {
    const knowledge = makeKnowledge({
      faults: [
        makeFault("a", {
          rows: new Map([
            ["o", [1, 0]],
            ["p", [0, 1]],
          ]),
        }),
        makeFault("b", {
          rows: new Map([
            ["o", [0, 1]],
            ["p", [1, 0]],
          ]),
        }),
      ],
      observations: [
        makeObservation("o", ["x", "y"], [0, 1]),
        makeObservation("p", ["x", "y"], [1, 0]),
      ],
    });
    const model = compileModel(knowledge, someMachine);
    const belief = updateBelief(model, given(told("o", "x"), told("p", "x")));
    expect(belief.knownExcluded).toBe(true);
    expect(belief.probability[model.hypotheses.count - 1]).toBe(1);
    expect(belief.probability.every(Number.isFinite)).toBe(true);
  });

  it("lets a technician's word weigh more than an operator's, but not alone", () => {
    const confusion = {
      ...noisyConfusion(2, 0.7),
      technician: noisyConfusion(2, 0.95).technician,
    };
    const knowledge = makeKnowledge({
      faults: [
        makeFault("a", { rows: new Map([["o", [0.9, 0.1]]]) }),
        makeFault("b", { rows: new Map([["o", [0.1, 0.9]]]) }),
      ],
      observations: [makeObservation("o", ["x", "y"], [0.5, 0.5], { confusion })],
    });
    const model = compileModel(knowledge, someMachine);
    const p = (...reports: Report[]) => updateBelief(model, given(...reports)).probability[1] ?? 0;
    const both = p(told("o", "x"), told("o", "y", { reporter: "technician" }));
    const technician = p(told("o", "y", { reporter: "technician" }));
    expect(both).toBeLessThan(0.5);
    expect(both).toBeGreaterThan(technician);
  });

  it("takes a fully hedged answer and a don't-know for no information", () => {
    const knowledge = makeKnowledge({
      faults: [makeFault("a", { rows: new Map([["o", [0.9, 0.1]]]) }), makeFault("b")],
      observations: [makeObservation("o", ["x", "y"], [0.5, 0.5])],
    });
    const model = compileModel(knowledge, someMachine);
    const p = (report: Report) => updateBelief(model, given(report)).probability;
    const silent = updateBelief(model, given()).probability;
    const unknown: Report = { ...told("o", "x"), said: { kind: "unknown" } };
    for (const said of [told("o", "x", { hedge: 1 }), unknown]) {
      for (const [h, value] of p(said).entries()) expect(value).toBeCloseTo(silent[h] ?? 0, 12);
    }
    const [, full = 0] = p(told("o", "x"));
    const [, half = 0] = p(told("o", "x", { hedge: 0.5 }));
    const [, none = 0] = silent;
    expect(half).toBeLessThan(full);
    expect(half).toBeGreaterThan(none);
  });

  it("weighs unknown system volts as one unknown of the whole case", () => {
    const bands = [
      { id: "low", title: "low", to: 11 },
      { id: "full", title: "full", from: 11 },
    ];
    const volts = (id: string) =>
      makeObservation(id, ["low", "full"], [0.2, 0.8], {
        kind: "number",
        states: bands,
        scalesWithVolts: true,
        meterError: { absolute: 0.05, relative: 0 },
        confusion: noisyConfusion(2, 0.99),
      });
    const machines: Knowledge["machines"] = new Map([
      [
        "old-tractor",
        {
          id: "old-tractor",
          title: "old",
          synonyms: [],
          fuels: { petrol: 1 },
          volts: [
            { volts: 6, share: 0.5 },
            { volts: 12, share: 0.5 },
          ],
          systems: [],
          features: new Map(),
          circuits: {},
          offer: 1,
          family: "tractors",
          source: "invented",
        },
      ],
    ]);
    const knowledge = makeKnowledge({
      faults: [makeFault("flat", { rows: new Map([["v1", [0.95, 0.05]]]) }), makeFault("other")],
      observations: [volts("v1"), volts("v2")],
      machines,
    });
    const model = compileModel(knowledge, { kind: "old-tractor" });
    const p = (...reports: Report[]) => updateBelief(model, given(...reports)).probability[1] ?? 0;
    // 6.3 V is a full 6 V battery or a dead 12 V one; what is read elsewhere tells the system.
    expect(p(read("v1", 6.3), read("v2", 12.6))).toBeGreaterThan(p(read("v1", 6.3)));
    expect(p(read("v1", 6.3), read("v2", 6.3))).toBeLessThan(p(read("v1", 6.3)));
    const sure = compileModel(knowledge, { kind: "old-tractor", volts: 6 });
    const { probability } = updateBelief(sure, given(read("v1", 6.3)));
    expect(probability[1]).toBeLessThan(probability[2] ?? 0);
  });

  it("does not let what needs a turning engine speak against a fault that stops it", () => {
    const states = ["nothing", "turns-no-fire", "starts"];
    const knowledge = makeKnowledge({
      faults: [
        makeFault("no-crank", { cranking: crankingRow({ nothing: 1 }) }),
        makeFault("no-fire", {
          blocks: "combustion",
          cranking: crankingRow({ turns: 1 }),
          firing: firingRow({ "turns-no-fire": 1 }),
          rows: new Map([["smoke", [0.5, 0.5]]]),
        }),
      ],
      observations: [
        makeObservation("on-start", states, [0, 0, 1]),
        makeObservation("smoke", ["none", "white"], [0.95, 0.05], {
          onlyIf: [{ observation: "on-start", anyOf: ["turns-no-fire", "starts"] }],
        }),
      ],
      rates: { nothingWrong: 0 },
    });
    const model = compileModel(knowledge, someMachine);
    const before = updateBelief(model, given()).probability;
    const smoke = updateBelief(model, given(told("smoke", "white"))).probability;
    expect(smoke[1]).toBeCloseTo(before[1] ?? 0, 9);
    const none = updateBelief(model, given(told("on-start", "nothing"), told("smoke", "none")));
    const alone = updateBelief(model, given(told("on-start", "nothing")));
    expect(none.probability[1]).toBeCloseTo(alone.probability[1] ?? 0, 9);
  });

  it("takes list members each for itself and silence for nothing", () => {
    const knowledge = makeKnowledge({
      faults: [makeFault("a", { rows: new Map([["events", [0.9, 0.1]]]) }), makeFault("b")],
      observations: [makeObservation("events", ["rain", "mice"], [0.1, 0.1], { kind: "list" })],
      rates: { nothingWrong: 0, somethingElse: 0 },
    });
    const model = compileModel(knowledge, someMachine);
    const p = (report: Report) => updateBelief(model, given(report)).probability[1] ?? 0;
    expect(p(named("events", ["rain"]))).toBeCloseTo(0.9, 12);
    expect(p(named("events", ["mice"]))).toBeCloseTo(0.5, 12);
    expect(p(named("events", [], ["rain"]))).toBeCloseTo(0.1, 12);
  });
});

describe("belief refuses what programmers get wrong", () => {
  const knowledge = makeKnowledge({
    faults: [makeFault("a", { rows: new Map([["o", [0.9, 0.1]]]) })],
    observations: [makeObservation("o", ["x", "y"], [0.5, 0.5])],
  });
  const model = compileModel(knowledge, someMachine);
  it.each([
    ["an unknown observation", given(told("nowhere", "x")), UnknownId, "nowhere"],
    ["an unknown state", given(told("o", "z")), UnknownId, "z"],
    ["a hedge above 1", given(told("o", "x", { hedge: 2 })), OutOfRange, "o"],
    ["an epoch that is no number", given(told("o", "x", { epoch: Number.NaN })), OutOfRange, "o"],
    [
      "an unknown act",
      { reports: [], acts: [{ act: "dance", epoch: 1, by: "operator", outcome: "cured" }] },
      UnknownId,
      "dance",
    ],
  ] as const)("refuses %s", (_name, evidence, kind, id) => {
    expect(() => updateBelief(model, evidence)).toThrow(kind);
    expect(() => updateBelief(model, evidence)).toThrow(id);
  });
  it("refuses a model with no fault, with a bad share or with a bad row", () => {
    const observations = [...knowledge.observations.values()];
    const compile = (faults: readonly Fault[]) => () =>
      compileModel(makeKnowledge({ faults, observations }), someMachine);
    expect(compile([])).toThrow(TurnrowError);
    expect(compile([makeFault("a", { share: Number.NaN })])).toThrow(OutOfRange);
    expect(compile([makeFault("a", { rows: new Map([["o", [0.9, 0.2]]]) })])).toThrow("a o");
    expect(compile([makeFault("a", { rows: new Map([["o", [1.2, -0.2]]]) })])).toThrow(OutOfRange);
    expect(compile([makeFault("a", { brings: new Map([["zz", 0.5]]) })])).toThrow("zz");
  });
});
