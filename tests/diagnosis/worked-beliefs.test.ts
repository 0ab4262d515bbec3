import { describe, expect, it } from "vitest";
import { updateBelief } from "../../src/diagnosis/belief.ts";
import { noisyMax } from "../../src/diagnosis/combine-faults.ts";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { decibans } from "../../src/diagnosis/marginals.ts";
import type { Evidence } from "../../src/domain/evidence.ts";
import type { Row } from "../../src/domain/knowledge.ts";
import {
  makeFault,
  makeKnowledge,
  makeObservation,
  someMachine,
} from "../helpers/knowledge-maker.ts";
import { told } from "../helpers/told.ts";

const sure = { somethingElse: 0, nothingWrong: 0 };

const evidence = (...said: readonly [string, string][]): Evidence => ({
  reports: said.map(([observation, state]) => told(observation, state)),
  acts: [],
});

describe("beliefs against worked examples", () => {
  // Motor-car start network, numbers as in a public example program after Jensen.
  it("explains away in the motor-car start network", () => {
    const none = 0.98 * 0.96;
    const fuel = 0.02 * 0.96;
    const plugs = 0.98 * 0.04;
    const both = 0.02 * 0.04;
    const start = (yes: number): Row => [yes, 1 - yes];
    const knowledge = makeKnowledge({
      faults: [
        makeFault("fuel", {
          share: fuel,
          blocks: "control",
          rows: new Map([
            ["start", start(0)],
            ["gauge", [0.001, 0.001, 0.998]],
          ]),
        }),
        makeFault("plugs", {
          share: plugs,
          blocks: "combustion",
          rows: new Map([["start", start(0.01)]]),
        }),
      ],
      observations: [
        makeObservation("start", ["yes", "no"], start(0.99)),
        makeObservation("gauge", ["full", "half", "empty"], [0.39, 0.6, 0.01]),
      ],
      rates: { somethingElse: 0, nothingWrong: none, pairCutOff: 1e-9 },
    });
    // P(pair) = coincidence·share·share·scale; solved for the coincidence that gives `both`.
    const faults = fuel + plugs;
    const coincidence = (both / (fuel * plugs)) * faults;
    const model = compileModel(knowledge, someMachine, { coincidence });
    const marginal = (...said: readonly [string, string][]) => {
      const { probability } = updateBelief(model, evidence(...said));
      const [, f = 0, p = 0, pair = 0] = probability;
      return { fuel: f + pair, plugs: p + pair };
    };
    expect(model.hypotheses.prior[3]).toBeCloseTo(both, 12);
    expect(model.observations.get("start")?.predictive[0]).toBeCloseTo(0.931784, 12);
    expect(marginal(["start", "no"]).plugs).toBeCloseTo(0.58062625, 8);
    expect(marginal(["start", "no"]).fuel).toBeCloseTo(0.29318635, 8);
    expect(marginal(["start", "no"], ["gauge", "half"]).plugs).toBeCloseTo(0.80434963, 8);
    expect(marginal(["start", "no"], ["gauge", "half"]).fuel).toBeCloseTo(0.00069086, 8);
    expect(marginal(["start", "no"], ["gauge", "empty"]).fuel).toBeCloseTo(0.97641345, 8);
    expect(marginal(["start", "no"], ["gauge", "empty"]).plugs).toBeCloseTo(0.05804083, 8);
  });

  // Noisy-OR fever, lecture slides; leak example from a software maker's documentation.
  it("combines causes by noisy-OR, with and without leak", () => {
    const causes = [0.4, 0.8, 0.9];
    const fever = [0, 0.9, 0.8, 0.98, 0.4, 0.94, 0.88, 0.988];
    for (const [bits, expected] of fever.entries()) {
      const present = causes.filter((_, k) => ((bits >> (2 - k)) & 1) === 1).map((p) => [1 - p, p]);
      expect(noisyMax([[1, 0], ...present])[1], bits.toString(2)).toBeCloseTo(expected, 12);
    }
    const leak = [0.9, 0.1];
    const table = [
      [],
      [[0.4, 0.6]],
      [[0.2, 0.8]],
      [
        [0.2, 0.8],
        [0.4, 0.6],
      ],
    ].map((links) => noisyMax([leak, ...links])[1] ?? 0);
    for (const [k, expected] of [0.1, 0.64, 0.82, 0.928].entries()) {
      expect(table[k]).toBeCloseTo(expected, 12);
    }
  });

  // Two-layer noisy-OR network, own numbers, inclusion-exclusion and enumeration agreeing.
  it("agrees on three diseases and three findings, every subset of diseases a hypothesis", () => {
    const prior = [0.1, 0.05, 0.02];
    const inhibit = [
      [0.2, 0.5, 1],
      [0.4, 1, 0.3],
      [1, 0.1, 0.1],
    ];
    const leak = [0.01, 0.02, 0.05];
    const subsets = Array.from({ length: 8 }, (_, bits) => [0, 1, 2].map((k) => (bits >> k) & 1));
    const chance = (subset: readonly number[]) =>
      subset.reduce(
        (product, on, k) => product * (on === 1 ? (prior[k] ?? 0) : 1 - (prior[k] ?? 0)),
        1,
      );
    const row = (subset: readonly number[], f: number): Row => {
      const links = subset.flatMap((on, d) => {
        const q = inhibit[d]?.[f] ?? 1;
        return on === 1 ? [[q, 1 - q]] : [];
      });
      return noisyMax([[1 - (leak[f] ?? 0), leak[f] ?? 0], ...links]);
    };
    const [none = [], ...some] = subsets;
    const knowledge = makeKnowledge({
      faults: some.map((subset) =>
        makeFault(subset.join(""), {
          share: chance(subset),
          rows: new Map([0, 1, 2].map((f) => [`f${f + 1}`, row(subset, f)])),
        }),
      ),
      observations: [0, 1, 2].map((f) => makeObservation(`f${f + 1}`, ["no", "yes"], row(none, f))),
      rates: { somethingElse: 0, nothingWrong: chance(none) },
    });
    const model = compileModel(knowledge, someMachine);
    const check = (said: readonly [string, string][], p: number, diseases: readonly number[]) => {
      const { probability, logEvidence } = updateBelief(model, evidence(...said));
      expect(Math.exp(logEvidence)).toBeCloseTo(p, 10);
      for (const [d, expected] of diseases.entries()) {
        const sum = some.reduce(
          (s, subset, k) => s + (subset[d] ?? 0) * (probability[k + 1] ?? 0),
          0,
        );
        expect(sum).toBeCloseTo(expected, 8);
      }
    };
    const [yes, no] = ["yes", "no"];
    check(
      [
        ["f1", yes],
        ["f2", yes],
        ["f3", no],
      ],
      0.0373114007,
      [0.99089673, 0.02208722, 0.00452384],
    );
    check(
      [
        ["f1", yes],
        ["f2", yes],
        ["f3", yes],
      ],
      0.0059510196,
      [0.83108417, 0.43481581, 0.33817404],
    );
    check([["f1", no]], 0.883476, [0.02173913, 0.02061856, 0.02]);
  });

  // Weight of evidence (Good, after Turing); the second with own numbers.
  it("weighs evidence in decibans", () => {
    expect(decibans(3 / 4, 2.5 / 3.5)).toBeCloseTo(0.79181246, 8);
    const knowledge = makeKnowledge({
      faults: [
        makeFault("a", { share: 0.43, rows: new Map([["o", [0.9, 0.1]]]) }),
        makeFault("b", { share: 0.57, rows: new Map([["o", [0.2, 0.8]]]) }),
      ],
      observations: [makeObservation("o", ["yes", "no"], [0.5, 0.5])],
      rates: sure,
    });
    const model = compileModel(knowledge, someMachine);
    const after = updateBelief(model, evidence(["o", "yes"])).probability[1] ?? 0;
    expect(after).toBeCloseTo(0.77245509, 8);
    expect(decibans(0.43, 0.5)).toBeCloseTo(-1.2241, 4);
    expect(decibans(after, 0.43)).toBeCloseTo(6.5321, 4);
  });
});
