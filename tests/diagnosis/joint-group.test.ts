import { describe, expect, it } from "vitest";
import { updateBelief } from "../../src/diagnosis/belief.ts";
import { channelOf, seenNow } from "../../src/diagnosis/channel.ts";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { UNLIKE_SIMULATED } from "../../src/diagnosis/joint-context.ts";
import type { Evidence } from "../../src/domain/evidence.ts";
import type {
  CircuitEvidence,
  JointLikelihood,
  Question,
} from "../../src/domain/joint-likelihood.ts";
import {
  crankingRow,
  firingRow,
  makeFault,
  makeKnowledge,
  makeObservation,
  noisyConfusion,
  someMachine,
} from "../helpers/knowledge-maker.ts";
import { read, told } from "../helpers/told.ts";

const startStates = ["nothing", "slow", "turns-no-fire", "starts"];
const cranking = {
  none: { turns: 1 },
  flat: { nothing: 0.3, slow: 0.6, turns: 0.1 },
  earth: { nothing: 0.5, slow: 0.2, turns: 0.3 },
};
const lights = { none: [0.95, 0.05], flat: [0.2, 0.8], earth: [0.5, 0.5] };
const volts = { none: [0.1, 0.9], flat: [0.9, 0.1], earth: [0.1, 0.9] };

const knowledge = makeKnowledge({
  faults: [
    makeFault("flat", {
      cranking: crankingRow(cranking.flat),
      rows: new Map([
        ["lights-on", lights.flat],
        ["rest-volts", volts.flat],
      ]),
    }),
    makeFault("earth", {
      cranking: crankingRow(cranking.earth),
      rows: new Map([["lights-on", lights.earth]]),
    }),
    makeFault("no-fuel", {
      blocks: "combustion",
      cranking: crankingRow({ turns: 1 }),
      firing: firingRow({ "turns-no-fire": 0.9, starts: 0.1 }),
    }),
    makeFault("seized", {
      blocks: "engine-drag",
      cranking: crankingRow({ nothing: 0.6, slow: 0.4 }),
    }),
  ],
  observations: [
    makeObservation("on-start", startStates, [0, 0, 0, 1], { confusion: noisyConfusion(4, 0.91) }),
    makeObservation("lights-on", ["normal", "dim"], lights.none),
    makeObservation("rest-volts", ["low", "full"], volts.none, {
      kind: "number",
      states: [
        { id: "low", title: "low", to: 12 },
        { id: "full", title: "full", from: 12 },
      ],
      meterError: { absolute: 0.001, relative: 0 },
    }),
  ],
});

/** Simulated machines whose observations happen to be independent: they must agree with rows. */
function rowsAsCircuit(): JointLikelihood {
  const hypotheses = ["nothing-wrong", "flat", "earth"] as const;
  const keys = ["none", "flat", "earth"] as const;
  const states: Record<string, string[]> = {
    "on-start": ["nothing", "slow", "turns"],
    "lights-on": ["normal", "dim"],
  };
  const row = (k: number, observation: string): readonly number[] => {
    const key = keys[k] ?? "none";
    if (observation === "lights-on") return lights[key];
    if (observation === "rest-volts") return key === "earth" ? volts.none : volts[key];
    const chances: Record<string, number> = cranking[key];
    return (states["on-start"] ?? []).map((state) => chances[state] ?? 0);
  };
  const item = (evidence: CircuitEvidence): readonly number[] => {
    if (evidence.kind === "reading") return evidence.high <= 12 ? [1, 0] : [0, 1];
    return (states[evidence.observation] ?? []).map((state) => evidence.weights[state] ?? 0);
  };
  const dot = (a: readonly number[], b: readonly number[]) =>
    a.reduce((sum, value, s) => sum + value * (b[s] ?? 0), 0);
  return {
    observations: new Set(["on-start", "lights-on", "rest-volts"]),
    hypotheses,
    weighs: () => true,
    statesOf: (observation) => states[observation] ?? [],
    logLikelihood: (evidence) =>
      Float64Array.from(keys, (_, k) =>
        evidence.reduce((sum, one) => sum + Math.log(dot(row(k, one.observation), item(one))), 0),
      ),
    predictive(evidence, { observation }: Question) {
      const own = evidence.filter((one) => one.observation === observation).map(item);
      return Float64Array.from(
        keys.flatMap((_, k) => {
          const posterior = row(k, observation).map((value, s) =>
            own.reduce((product, weights) => product * (weights[s] ?? 0), value),
          );
          const total = posterior.reduce((sum, value) => sum + value, 0);
          return posterior.map((value) => (total > 0 ? value / total : 1 / posterior.length));
        }),
      );
    },
    expected: () => [],
    unexplained: () => [],
    unforeseen: 0,
    placesOf: () => [],
    noticed: new Float64Array(3).fill(1),
  };
}

const cases: readonly Evidence[] = [
  { reports: [], acts: [] },
  { reports: [told("on-start", "slow")], acts: [] },
  { reports: [told("on-start", "turns-no-fire"), told("lights-on", "dim")], acts: [] },
  { reports: [told("on-start", "nothing"), read("rest-volts", 12.6)], acts: [] },
  { reports: [told("lights-on", "dim"), read("rest-volts", 11.2)], acts: [] },
];

describe("a group weighed by simulated circuits", () => {
  const byRows = compileModel(knowledge, someMachine);
  const byCircuit = compileModel(knowledge, someMachine, { joint: [rowsAsCircuit()] });

  it("is one group", () => {
    expect(byRows.groups).toHaveLength(3);
    expect(byCircuit.groups).toHaveLength(1);
  });

  it("agrees with rows where the simulated observations are independent", () => {
    for (const evidence of cases) {
      const rows = updateBelief(byRows, evidence).probability;
      const circuit = updateBelief(byCircuit, evidence).probability;
      // "Something else" predicts group by group, so only the known hypotheses are compared.
      const known = (p: Float64Array) => p.subarray(0, -1).reduce((sum, value) => sum + value, 0);
      for (let h = 0; h < rows.length - 1; h++) {
        expect((circuit[h] ?? 0) / known(circuit)).toBeCloseTo((rows[h] ?? 0) / known(rows), 9);
      }
    }
  });

  it("predicts the same answers as rows do", () => {
    for (const evidence of cases) {
      for (const observation of ["on-start", "lights-on", "rest-volts"]) {
        const [rows, circuit] = [byRows, byCircuit].map((model) =>
          channelOf(model, seenNow(model, evidence), { observation, reporter: "technician" }),
        );
        for (let h = 0; h < byRows.hypotheses.count - 1; h++) {
          for (const s of rows?.outcomes.keys() ?? []) {
            expect(circuit?.chance(h, s)).toBeCloseTo(rows?.chance(h, s) ?? 0, 9);
          }
        }
      }
    }
  });

  it("keeps a cause in the running that the simulated machines rule out: this one may be unlike them", () => {
    const sure = rowsAsCircuit();
    const flat = sure.hypotheses.indexOf("flat");
    const wrong = {
      ...sure,
      logLikelihood: (evidence: readonly CircuitEvidence[]) =>
        sure
          .logLikelihood(evidence)
          .map((log, k) => (k === flat && evidence.length > 0 ? -600 : log)),
    };
    const byWrong = compileModel(knowledge, someMachine, { joint: [wrong] });
    const evidence = { reports: [told("lights-on", "dim"), read("rest-volts", 11.2)], acts: [] };
    // Hypotheses are nothing wrong, then the faults in order. Odds against a cause that both know.
    const odds = (model: typeof byRows) => {
      const { probability } = updateBelief(model, evidence);
      return (probability[1] ?? 0) / (probability[2] ?? 1);
    };
    expect(odds(byWrong) / odds(byRows)).toBeCloseTo(UNLIKE_SIMULATED, 6);
  });
});
