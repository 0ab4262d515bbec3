import { describe, expect, it } from "vitest";
import { updateBelief } from "../../src/diagnosis/belief.ts";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { UNLIKE_SIMULATED } from "../../src/diagnosis/joint-context.ts";
import type { ActDone, Evidence } from "../../src/domain/evidence.ts";
import type { CircuitEvidence, JointLikelihood } from "../../src/domain/joint-likelihood.ts";
import {
  crankingRow,
  firingRow,
  makeAct,
  makeFault,
  makeKnowledge,
  makeObservation,
  noisyConfusion,
  someMachine,
} from "../helpers/knowledge-maker.ts";
import { told } from "../helpers/told.ts";

/** Covers acts that are followed through a simulated circuit, and what the engine makes of them. */
const startStates = ["nothing", "slow", "turns-no-fire", "starts"];
const lampStates = ["bright", "dim"];
const SURE = 0.9;
const DONE_WELL = 0.8;

/** What a machine does as found and once it is charged: how it cranks, and its lamps. */
interface Machine {
  readonly share: number;
  readonly found: readonly [start: string, lamps: string];
  readonly charged: readonly [start: string, lamps: string];
}
const machines: Readonly<Record<string, readonly Machine[]>> = {
  "nothing-wrong": [{ share: 1, found: ["turns", "bright"], charged: ["turns", "bright"] }],
  flat: [
    { share: 0.5, found: ["slow", "dim"], charged: ["turns", "bright"] },
    { share: 0.2, found: ["nothing", "dim"], charged: ["turns", "bright"] },
    // A second, milder fault beside the flat battery.
    { share: 0.3, found: ["nothing", "dim"], charged: ["slow", "bright"] },
  ],
  joint: [
    { share: 0.6, found: ["slow", "bright"], charged: ["slow", "bright"] },
    { share: 0.4, found: ["nothing", "dim"], charged: ["slow", "bright"] },
  ],
};
const names = Object.keys(machines);
const cranking = ["nothing", "slow", "turns"];

function fits(machine: Machine, item: CircuitEvidence): number {
  if (item.kind === "reading") return 1;
  const [start, lamps] = item.after === undefined ? machine.found : machine.charged;
  return item.weights[item.observation === "on-start" ? start : lamps] ?? 0;
}

const circuit: JointLikelihood = {
  observations: new Set(["on-start", "lamps"]),
  hypotheses: names,
  weighs: () => true,
  statesOf: (observation) => (observation === "on-start" ? cranking : lampStates),
  logLikelihood: (evidence) =>
    Float64Array.from(names, (name) => {
      const sum = (machines[name] ?? []).reduce(
        (total, one) => total + evidence.reduce((p, item) => p * fits(one, item), one.share),
        0,
      );
      return Math.log(Math.max(1e-300, sum));
    }),
  predictive: () => new Float64Array(names.length),
  expected: () => [],
  unexplained: () => [],
  unforeseen: 0,
  placesOf: () => [],
  noticed: new Float64Array(names.length).fill(1),
};

const knowledge = makeKnowledge({
  faults: [
    makeFault("flat", { share: 0.4, cranking: crankingRow({ nothing: 0.5, slow: 0.5 }) }),
    makeFault("joint", { share: 0.4, cranking: crankingRow({ nothing: 0.4, slow: 0.6 }) }),
    makeFault("no-fuel", {
      share: 0.2,
      blocks: "combustion",
      cranking: crankingRow({ turns: 1 }),
      firing: firingRow({ "turns-no-fire": 1 }),
    }),
  ],
  observations: [
    makeObservation("on-start", startStates, [0, 0, 0, 1], { confusion: noisyConfusion(4, SURE) }),
    makeObservation("lamps", lampStates, [1, 0], { confusion: noisyConfusion(2, SURE) }),
  ],
  acts: [
    makeAct("charge", {
      cures: new Map([["flat", DONE_WELL]]),
      makesStale: ["on-start", "lamps"],
      inCircuit: "charge",
    }),
  ],
  rates: { nothingWrong: 0, somethingElse: 0 },
});
const model = compileModel(knowledge, someMachine, { joint: [circuit], coincidence: 0 });

const done = (outcome: ActDone["outcome"]): ActDone => {
  return { act: "charge", epoch: 1, by: "operator", outcome };
};
const odds = (evidence: Evidence): number => {
  const [, flat = 0, joint = 0] = updateBelief(model, evidence).probability;
  return flat / joint;
};

/** P(report | true state): the engine runs once a circuit fault lets it turn. */
function reported(said: string, truth: string): number {
  const states = lampStates.includes(said) ? lampStates : startStates;
  const is = truth === "turns" ? "starts" : truth;
  return said === is ? SURE : (1 - SURE) / (states.length - 1);
}

/** The same by hand: every machine with what it does before and after, well charged or not. */
function byHand(name: string, before: readonly string[], after: readonly string[]): number {
  const says = (said: readonly string[], [start, lamps]: Machine["found"]) =>
    said.reduce((p, one) => p * reported(one, lampStates.includes(one) ? lamps : start), 1);
  return (machines[name] ?? []).reduce((sum, { share, found, charged }) => {
    const then = DONE_WELL * says(after, charged) + (1 - DONE_WELL) * says(after, found);
    return sum + share * says(before, found) * then;
  }, 0);
}

/**
 * What the rows alone make of "nothing, lamps dim": how the fault cranks, and lamps that no row of it
 * speaks of. A machine in so many is like none simulated and is weighed by them.
 */
function unlikeAny(name: string): number {
  const nothing = name === "flat" ? 0.5 : 0.4;
  const start = nothing * SURE + (1 - nothing) * ((1 - SURE) / (startStates.length - 1));
  const dim = (1 - SURE) / (lampStates.length - 1);
  return start * dim;
}

/** The same of a machine that need not be one of those simulated; the act tells of those alone. */
function withOthers(name: string, after: readonly string[]): number {
  const before = ["nothing", "dim"];
  const simulated = byHand(name, before, []);
  const mixed = (1 - UNLIKE_SIMULATED) * simulated + UNLIKE_SIMULATED * unlikeAny(name);
  return mixed * (byHand(name, before, after) / simulated);
}

describe("reports from both sides of an act on a simulated circuit", () => {
  const before = [told("on-start", "nothing"), told("lamps", "dim")];

  it("are weighed on the same machines, as enumeration does", () => {
    for (const start of startStates) {
      for (const lamps of lampStates) {
        const after = [told("on-start", start, { epoch: 1 }), told("lamps", lamps, { epoch: 1 })];
        const found = odds({ reports: [...before, ...after], acts: [done("changed")] });
        const flat = withOthers("flat", [start, lamps]);
        const joint = withOthers("joint", [start, lamps]);
        expect(found).toBeCloseTo(flat / joint, 9);
      }
    }
  });

  it("say nothing where nobody looked what came of the act", () => {
    expect(odds({ reports: before, acts: [done("unknown")] })).toBeCloseTo(
      odds({ reports: before, acts: [] }),
      9,
    );
  });

  it("let the machines tell how likely a cure was, given how they behaved before", () => {
    // Of the flat ones that did nothing, two in five crank properly once charged.
    const cured = updateBelief(model, { reports: before, acts: [done("cured")] }).probability;
    expect(cured[1]).toBeGreaterThan(0.99);
    // That nothing changed speaks less against a flat battery that may have had another trouble.
    const against = (reports: Evidence["reports"]) =>
      odds({ reports, acts: [done("no-change")] }) / odds({ reports, acts: [] });
    expect(against(before)).toBeLessThan(1);
    expect(against([told("on-start", "slow"), told("lamps", "dim")])).toBeLessThan(against(before));
  });
});
