import { describe, expect, it } from "vitest";
import { updateBelief } from "../../src/diagnosis/belief.ts";
import { compileModel } from "../../src/diagnosis/compile.ts";
import type { ActDone, Evidence, Report } from "../../src/domain/evidence.ts";
import {
  crankingRow,
  makeAct,
  makeFault,
  makeKnowledge,
  makeObservation,
  someMachine,
} from "../helpers/knowledge-maker.ts";
import { told } from "../helpers/told.ts";

const rates = { nothingWrong: 0, somethingElse: 0 };
const done = (act: string, outcome: ActDone["outcome"], epoch = 1): ActDone => ({
  act,
  epoch,
  by: "operator",
  outcome,
});

describe("acts", () => {
  const knowledge = makeKnowledge({
    faults: [makeFault("a", { share: 0.3 }), makeFault("b", { share: 0.7 })],
    acts: [
      makeAct("clean", {
        cures: new Map([
          ["a", 0.8],
          ["b", 0.1],
        ]),
      }),
      makeAct("hide", { cures: new Map([["a", 0.2]]), masks: new Map([["a", 0.5]]) }),
    ],
    rates,
  });
  const model = compileModel(knowledge, someMachine);
  const beliefAfter = (...acts: ActDone[]) =>
    updateBelief(model, { reports: [], acts }).probability;

  it("multiply by the chance of a cure when cured, and of none when not", () => {
    const cured = 0.3 * 0.8 + 0.7 * 0.1;
    expect(beliefAfter(done("clean", "cured"))[1]).toBeCloseTo((0.3 * 0.8) / cured, 12);
    expect(beliefAfter(done("clean", "no-change"))[1]).toBeCloseTo((0.3 * 0.2) / (1 - cured), 12);
  });

  it("count hiding as gone for now", () => {
    expect(beliefAfter(done("hide", "cured"))[1]).toBeCloseTo(1, 12);
    expect(beliefAfter(done("hide", "no-change"))[1]).toBeCloseTo(
      (0.3 * 0.3) / (0.3 * 0.3 + 0.7),
      12,
    );
  });

  it("may have cured by the way what they are no cure for", () => {
    const told = { ...knowledge.rates, curedByTheWay: 0.05 };
    const found = updateBelief(compileModel({ ...knowledge, rates: told }, someMachine), {
      reports: [],
      acts: [done("hide", "cured")],
    }).probability;
    // By hand: hidden or cured in 0.7 of the first, in 0.05 of the second.
    const gone = 0.3 * 0.7 + 0.7 * 0.05;
    expect(found[1]).toBeCloseTo((0.3 * 0.7) / gone, 12);
  });

  it("say nothing when nobody looked what came of it", () => {
    expect(beliefAfter(done("clean", "unknown"))[1]).toBeCloseTo(0.3, 12);
  });
});

describe("a fuse and an empty tank", () => {
  const states = ["nothing", "turns-no-fire", "starts"];
  const knowledge = makeKnowledge({
    faults: [
      makeFault("fuse", {
        share: 1,
        blocks: "control",
        cranking: crankingRow({ nothing: 0.97, turns: 0.03 }),
      }),
      makeFault("tank", {
        share: 1,
        blocks: "combustion",
        cranking: crankingRow({ turns: 1 }),
        firing: [1, 0, 0, 0],
      }),
    ],
    observations: [makeObservation("on-start", states, [0, 0, 1])],
    acts: [makeAct("new-fuse", { cures: new Map([["fuse", 1]]), makesStale: ["on-start"] })],
    rates: { ...rates, pairCutOff: 1e-6, repeatsItself: 0.7 },
  });
  const model = compileModel(knowledge, someMachine);
  const pair = 3;
  const told0 = told("on-start", "nothing");
  const beliefAfter = (...reports: Report[]): Float64Array =>
    updateBelief(model, { reports, acts: [done("new-fuse", "changed")] }).probability;

  it("together show nothing with the fuse alone's probability", () => {
    const group = model.groups[model.observations.get("on-start")?.group ?? 0];
    const { rowOf, like } = group?.weigh(new Map([["on-start", Float64Array.of(1, 0, 0)]])) ?? {
      rowOf: new Int32Array(),
      like: new Float64Array(),
    };
    expect(like[rowOf[pair] ?? 0]).toBeCloseTo(0.97, 12);
    expect(like[rowOf[1] ?? 0]).toBeCloseTo(0.97, 12);
  });

  it("expose the second when the first is cured", () => {
    const p = beliefAfter(told0, told("on-start", "turns-no-fire", { epoch: 1 }));
    expect(p[pair]).toBeGreaterThan(0.99);
    const runs = beliefAfter(told0, told("on-start", "starts", { epoch: 1 }));
    expect(runs[1]).toBeCloseTo(1, 9);
  });
});

describe("the same question again", () => {
  const knowledge = makeKnowledge({
    faults: [
      makeFault("a", { rows: new Map([["o", [0.6, 0.4]]]) }),
      makeFault("b", { rows: new Map([["o", [0.3, 0.7]]]) }),
    ],
    observations: [
      makeObservation("o", ["x", "y"], [0.5, 0.5]),
      makeObservation("p", ["x", "y"], [0.5, 0.5]),
    ],
    acts: [makeAct("knock", { makesStale: ["o"] }), makeAct("wipe")],
    rates: { ...rates, repeatsItself: 0.7 },
  });
  const model = compileModel(knowledge, someMachine);
  const p = (evidence: Evidence) => updateBelief(model, evidence).probability[1] ?? 0;
  const [first, again] = [told("o", "x"), told("o", "x", { epoch: 1 })];

  it("after an act that matters repeats itself with the stated chance, else is new", () => {
    const joint = (x: number) => x * (0.7 + 0.3 * x);
    const expected = joint(0.6) / (joint(0.6) + joint(0.3));
    expect(p({ reports: [first, again], acts: [done("knock", "changed")] })).toBeCloseTo(
      expected,
      12,
    );
    const other = told("o", "y", { epoch: 1 });
    const turned = (x: number) => x * 0.3 * (1 - x);
    expect(p({ reports: [first, other], acts: [done("knock", "changed")] })).toBeCloseTo(
      turned(0.6) / (turned(0.6) + turned(0.3)),
      12,
    );
  });

  it("after an act that has nothing to do with it is the same fact told again", () => {
    const acts = [done("wipe", "unknown")];
    expect(p({ reports: [first, again], acts })).toBeCloseTo(0.6 / 0.9, 12);
    const changed = told("o", "y", { epoch: 1 });
    expect(p({ reports: [first, changed], acts })).toBeCloseTo(0.4 / 1.1, 12);
  });

  it("withdrawn is as if never given", () => {
    expect(p({ reports: [], acts: [] })).toBeCloseTo(0.5, 12);
  });
});

describe("a jump start", () => {
  const knowledge = makeKnowledge({
    faults: [
      makeFault("battery", { share: 4, rows: new Map([["jump-start", [0.85, 0.15]]]) }),
      makeFault("charging", {
        share: 1,
        blocks: "none",
        brings: new Map([["battery", 0.6]]),
        rows: new Map([["jump-start", [0.8, 0.2]]]),
      }),
      makeFault("clamp", { share: 1, rows: new Map([["jump-start", [0.75, 0.25]]]) }),
      makeFault("starter", { share: 2, rows: new Map([["jump-start", [0.02, 0.98]]]) }),
    ],
    observations: [makeObservation("jump-start", ["cured", "no-change"], [0.1, 0.9])],
    acts: [makeAct("jump", { yields: "jump-start", masks: new Map([["battery", 0.9]]) })],
    rates,
  });
  const model = compileModel(knowledge, someMachine);

  it("that cures raises battery, charging and clamp together, told once only", () => {
    const before = updateBelief(model, { reports: [], acts: [] }).probability;
    const evidence: Evidence = {
      reports: [told("jump-start", "cured", { epoch: 1 })],
      acts: [done("jump", "cured")],
    };
    const after = updateBelief(model, evidence).probability;
    const { first, second } = model.hypotheses;
    for (const [h, p] of after.entries()) {
      const id = model.hypotheses.faults[first[h] ?? -1] ?? "";
      if (id === "starter") expect(p).toBeLessThan(before[h] ?? 0);
      else if (id !== "") expect(p, `${id} ${second[h]}`).toBeGreaterThan(before[h] ?? 0);
    }
    const untold = updateBelief(model, {
      reports: [told("jump-start", "cured", { epoch: 1 })],
      acts: [done("jump", "unknown")],
    }).probability;
    for (const [h, p] of after.entries()) expect(untold[h]).toBeCloseTo(p, 12);
  });
});
