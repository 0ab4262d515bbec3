import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { updateBelief } from "../../src/diagnosis/belief.ts";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { decibans, marginalsOf } from "../../src/diagnosis/marginals.ts";
import { rankCauses } from "../../src/diagnosis/ranking.ts";
import type { Evidence } from "../../src/domain/evidence.ts";
import {
  anyKnowledge,
  makeAct,
  makeCheck,
  makeFault,
  makeKnowledge,
  makeObservation,
  someMachine,
} from "../helpers/knowledge-maker.ts";
import { named, told } from "../helpers/told.ts";

describe("the ranking", () => {
  it("sums to 1, falls, and gives as reasons what leaving an answer out would change", () => {
    fc.assert(
      fc.property(anyKnowledge({ faults: 5, observations: 4 }), (knowledge) => {
        const model = compileModel(knowledge, someMachine);
        const reports = [told("o0", "s0"), told("o1", "s1"), told("o2", "s0")];
        const ranking = rankCauses(model, { reports, acts: [] });
        const { causes, somethingElse, nothingWrong } = ranking;
        const sum = causes.reduce((total, cause) => total + cause.probability, 0);
        expect(sum + somethingElse + nothingWrong).toBeCloseTo(1, 10);
        for (const [k, cause] of causes.entries()) {
          expect(cause.probability).toBeLessThanOrEqual(causes[k - 1]?.probability ?? 1);
          const f = model.hypotheses.faults.indexOf(cause.fault);
          for (const reason of cause.reasons) {
            const rest = reports.filter((report) => report.observation !== reason.observation);
            const without = updateBelief(model, { reports: rest, acts: [] });
            const before = marginalsOf(model, without.probability).faults[f] ?? 0;
            expect(reason.decibans).toBeCloseTo(decibans(cause.probability, before), 6);
          }
          const strengths = cause.reasons.map((reason) => Math.abs(reason.decibans));
          expect(strengths).toEqual([...strengths].sort((a, b) => b - a));
        }
      }),
      { seed: 91, numRuns: 40 },
    );
  });

  it("counts a declared pair for its root and an independent pair half for each", () => {
    const knowledge = makeKnowledge({
      faults: [
        makeFault("root", { brings: new Map([["flat", 0.5]]) }),
        makeFault("flat"),
        makeFault("loose"),
      ],
      rates: { pairCutOff: 1e-6, nothingWrong: 0, somethingElse: 0 },
    });
    const model = compileModel(knowledge, someMachine, { coincidence: 0.3 });
    const { prior, faults, first, second, declared } = model.hypotheses;
    const { causes } = rankCauses(model, { reports: [], acts: [] });
    const chance = (id: string) => causes.find((cause) => cause.fault === id)?.probability ?? 0;
    let flat = 0;
    for (const [h, p] of prior.entries()) {
      const names = [faults[first[h] ?? -1], faults[second[h] ?? -1]];
      if (!names.includes("flat")) continue;
      if (names[1] === undefined) flat += p;
      else if (declared[h] === 0) flat += p / 2;
    }
    expect(chance("flat")).toBeCloseTo(flat, 12);
  });

  it("shows three ways of saying one thing as one reason, counted once", () => {
    const say = ["dim", "slow-fan", "weak-horn"];
    const faults = [
      makeFault("flat", {
        rows: new Map(say.map((id) => [id, [0.1, 0.9]])),
      }),
      makeFault("other"),
    ];
    const observations = say.map((id) => makeObservation(id, ["no", "yes"], [0.9, 0.1]));
    const rates = { nothingWrong: 0, somethingElse: 0 };
    const apart = makeKnowledge({ faults, observations, rates });
    const latentGroups = [
      {
        id: "weak",
        title: "weak",
        states: ["strong", "weak"],
        usual: [0.9, 0.1],
        members: say,
        byFault: new Map([["flat", [0.1, 0.9]]]),
        emission: new Map(
          say.map((id) => [
            id,
            [
              [0.99, 0.01],
              [0.02, 0.98],
            ],
          ]),
        ),
      },
    ];
    const together = makeKnowledge({ faults, observations, latentGroups, rates });
    const evidence: Evidence = { reports: say.map((id) => told(id, "yes")), acts: [] };
    const leader = (knowledge: typeof apart) =>
      rankCauses(compileModel(knowledge, someMachine), evidence).causes[0];
    expect(leader(apart)?.reasons).toHaveLength(3);
    const one = leader(together);
    expect(one?.reasons).toHaveLength(1);
    expect(one?.reasons[0]?.members).toHaveLength(2);
    expect(one?.probability).toBeLessThan(0.92);
    expect(leader(apart)?.probability).toBeGreaterThan(0.99);
  });

  it("says what does not fit, what would change its mind, and what an act showed", () => {
    const knowledge = makeKnowledge({
      faults: [
        makeFault("a", {
          share: 5,
          rows: new Map([
            ["p", [0.95, 0.05]],
            ["q", [0.02, 0.98]],
          ]),
        }),
        makeFault("b", {
          share: 1,
          rows: new Map([
            ["p", [0.05, 0.95]],
            ["r", [0.1, 0.9]],
          ]),
        }),
      ],
      observations: [
        makeObservation("p", ["x", "y"], [0.5, 0.5]),
        makeObservation("q", ["x", "y"], [0.99, 0.01]),
        makeObservation("r", ["x", "y"], [0.98, 0.02]),
        makeObservation("events", ["rain", "mice"], [0.1, 0.1], { kind: "list" }),
      ],
      checks: [makeCheck("ask-r", "r"), makeCheck("ask-q", "q")],
      acts: [makeAct("shake", { cures: new Map([["a", 0.5]]) })],
    });
    const model = compileModel(knowledge, someMachine);
    const evidence: Evidence = {
      reports: [told("p", "y"), told("q", "y"), named("events", ["rain"])],
      acts: [{ act: "shake", epoch: 1, by: "operator", outcome: "no-change" }],
    };
    const ranking = rankCauses(model, evidence);
    expect(ranking.causes[0]?.fault).toBe("a");
    expect(ranking.wouldChangeMind).toEqual({ observation: "r", state: "y" });
    const shake = ranking.causes[0]?.reasons.find((reason) => reason.observation === "shake");
    expect(shake).toMatchObject({ state: "no-change" });
    expect(shake?.decibans).toBeLessThan(0);
    const odd: Evidence = { reports: [told("p", "x"), told("r", "y"), told("q", "y")], acts: [] };
    expect(rankCauses(model, odd).doesNotFit).toEqual(["r"]);
  });
});
