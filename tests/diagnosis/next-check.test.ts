import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { updateBelief } from "../../src/diagnosis/belief.ts";
import { channelOf, seenNow } from "../../src/diagnosis/channel.ts";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { pricesOf } from "../../src/diagnosis/cost-to-go.ts";
import { chooseNext } from "../../src/diagnosis/next-check.ts";
import { planVisit } from "../../src/diagnosis/plan.ts";
import { portfolioOf } from "../../src/diagnosis/policies.ts";
import { shortlist } from "../../src/diagnosis/shortlist.ts";
import { answersOn, answerValue } from "../../src/diagnosis/value.ts";
import type { Evidence, Situation } from "../../src/domain/evidence.ts";
import type { Check, Fault } from "../../src/domain/knowledge.ts";
import type { MachineKindId } from "../../src/domain/vocabulary.ts";
import { workshop } from "../helpers/dialog.ts";
import {
  anyKnowledge,
  makeAct,
  makeCheck,
  makeFault,
  makeKnowledge,
  makeObservation,
  makePart,
  makeRemedy,
  noisyConfusion,
  someMachine,
} from "../helpers/knowledge-maker.ts";
import { operatorThere, technicianThere, told } from "../helpers/told.ts";

const nothing: Evidence = { reports: [], acts: [] };

/** Two faults that one question tells apart; each needs its own part. */
function twoFaults(given: { checks?: readonly Check[]; faults?: readonly Fault[] } = {}) {
  return makeKnowledge({
    faults: given.faults ?? [
      makeFault("a", { rows: new Map([["tell", [0.95, 0.05]]]) }),
      makeFault("b", { rows: new Map([["tell", [0.05, 0.95]]]) }),
    ],
    observations: [
      makeObservation("tell", ["x", "y"], [0.5, 0.5]),
      makeObservation("idle", ["x", "y"], [0.5, 0.5]),
      makeObservation("look", ["x", "y"], [0.5, 0.5]),
    ],
    checks: given.checks ?? [makeCheck("ask-tell", "tell"), makeCheck("ask-idle", "idle")],
    remedies: [
      makeRemedy("mend-a", { minutes: 40, parts: ["pa"] }),
      makeRemedy("mend-b", { minutes: 40, parts: ["pb"] }),
    ],
    parts: [makePart("pa", { carryMinutes: 30 }), makePart("pb", { carryMinutes: 30 })],
  });
}

const chosen = (
  knowledge: Parameters<typeof compileModel>[0],
  situation: Situation,
  evidence = nothing,
) => chooseNext(compileModel(knowledge, someMachine), evidence, situation);

describe("the value of a check", () => {
  it("is never negative, and 0 where the answer says nothing", () => {
    fc.assert(
      fc.property(
        anyKnowledge({ faults: 5, observations: 4 }),
        fc.boolean(),
        (knowledge, there) => {
          const model = compileModel(
            {
              ...knowledge,
              observations: new Map([
                ...knowledge.observations,
                ["idle", makeObservation("idle", ["x", "y"], [0.5, 0.5])],
              ]),
            },
            someMachine,
          );
          const situation = there ? technicianThere : operatorThere;
          const { probability } = updateBelief(model, { reports: [told("o0", "s0")], acts: [] });
          const list = shortlist(model, probability);
          const portfolio = portfolioOf(pricesOf(model, list, situation), []);
          const seen = seenNow(model, nothing);
          for (const observation of ["o1", "o2", "o3", "idle"]) {
            const channel = channelOf(model, seen, { observation, reporter: "operator" });
            const { saved, bits } = answerValue(portfolio, answersOn(list, channel));
            expect(saved).toBeGreaterThanOrEqual(-1e-9);
            expect(bits).toBeGreaterThanOrEqual(-1e-9);
            if (observation === "idle") expect(saved).toBeCloseTo(0, 9);
          }
        },
      ),
      { seed: 71, numRuns: 80 },
    );
  });

  it("reckoned over a shortlist is off by less than what the rest can cost", () => {
    fc.assert(
      fc.property(anyKnowledge({ faults: 8, observations: 4 }), (knowledge) => {
        const model = compileModel(knowledge, someMachine);
        const { probability } = updateBelief(model, { reports: [told("o0", "s0")], acts: [] });
        const list = shortlist(model, probability);
        const kept = list.weights.subarray(0, -1).reduce((sum, weight) => sum + weight, 0);
        const other = probability[model.hypotheses.count - 1] ?? 0;
        expect(1 - kept - other).toBeLessThan(0.0011);
        expect(list.hypotheses.length).toBeLessThanOrEqual(150);
        // What is lumped costs at most a whole fruitless visit: its weight bounds the error.
        const prices = pricesOf(model, list, operatorThere);
        const { policies } = portfolioOf(prices, []);
        const worst = Math.max(...policies.flatMap((policy) => [...policy.costs]));
        expect((1 - kept - other) * worst).toBeLessThan(2);
      }),
      { seed: 72, numRuns: 60 },
    );
  });
});

describe("the next check", () => {
  it("asks what decides, and says what it decides", () => {
    const next = chosen(twoFaults(), operatorThere);
    expect(next).toMatchObject({ kind: "ask", check: "ask-tell", isAct: false, trip: [] });
    if (next.kind === "ask") expect(["kit", "order"]).toContain(next.decides);
  });

  it("never asks what is known, asked, refused, not for this person or not had at hand", () => {
    const known: Evidence = { reports: [told("tell", "x")], acts: [] };
    expect(chosen(twoFaults(), operatorThere, known)).not.toMatchObject({ check: "ask-tell" });
    for (const situation of [
      { ...operatorThere, asked: ["ask-tell"] },
      { ...operatorThere, refused: ["ask-tell"] },
    ]) {
      expect(chosen(twoFaults(), situation)).not.toMatchObject({ check: "ask-tell" });
    }
    const only = (given: Partial<Check>) =>
      chosen(twoFaults({ checks: [makeCheck("c", "tell", given)] }), operatorThere);
    expect(only({ performers: ["technician"] })).toEqual({ kind: "stop", because: "nothing-left" });
    expect(only({ operatorHas: ["meter"] })).toEqual({ kind: "stop", because: "nothing-left" });
    expect(only({ needs: { kinds: ["combine"] } })).toMatchObject({ because: "nothing-left" });
    expect(only({})).toMatchObject({ kind: "ask", check: "c" });
  });

  it("is the plan's first check for a technician at the machine, who may measure anew", () => {
    const known: Evidence = { reports: [told("tell", "x")], acts: [] };
    const knowledge = twoFaults();
    const unsure = { ...knowledge, observations: new Map(knowledge.observations) };
    const confusion = { ...noisyConfusion(2, 0.6), technician: noisyConfusion(2, 0.99).technician };
    const tell = makeObservation("tell", ["x", "y"], [0.5, 0.5], { confusion });
    unsure.observations.set("tell", tell);
    const next = chosen(unsure, technicianThere, known);
    expect(next).toMatchObject({ kind: "ask", check: "ask-tell", decides: "order" });
    const { steps } = planVisit(compileModel(unsure, someMachine), known, technicianThere);
    expect(steps[0]?.id).toBe("ask-tell");
    const clear = twoFaults({ faults: [makeFault("a", { remedies: ["mend-a"] })] });
    expect(chosen(clear, technicianThere)).toEqual({ kind: "stop", because: "clear-enough" });
  });

  it("asks what must come first before what depends on it", () => {
    const checks = [makeCheck("later", "tell", { after: ["first"] }), makeCheck("first", "look")];
    const next = chosen(twoFaults({ checks }), { ...operatorThere, asked: ["first"] });
    expect(next).toMatchObject({ check: "later" });
    expect(chosen(twoFaults({ checks }), operatorThere)).not.toMatchObject({ check: "later" });
  });

  it("does not ask what means nothing as things stand", () => {
    const knowledge = twoFaults();
    const tell = makeObservation("tell", ["x", "y"], [0.5, 0.5], {
      onlyIf: [{ observation: "idle", anyOf: ["x"] }],
    });
    const gated = { ...knowledge, observations: new Map(knowledge.observations).set("tell", tell) };
    const away: Evidence = { reports: [told("idle", "y")], acts: [] };
    const holds: Evidence = { reports: [told("idle", "x")], acts: [] };
    expect(chosen(gated, operatorThere, away)).not.toMatchObject({ check: "ask-tell" });
    expect(chosen(gated, operatorThere, holds)).toMatchObject({ check: "ask-tell" });
  });

  it("gives a person who can go once the list of what to look at", () => {
    const faults = ["a", "b"].map((id, k) => {
      const row = k === 0 ? [0.8, 0.2] : [0.2, 0.8];
      return makeFault(id, {
        rows: new Map([
          ["tell", row],
          ["look", row],
        ]),
      });
    });
    const checks = [
      makeCheck("look-1", "tell", { atMachine: true }),
      makeCheck("look-2", "look", { atMachine: true }),
    ];
    const next = chosen(twoFaults({ checks, faults }), { ...operatorThere, place: "can-go" });
    expect(next.kind === "ask" ? [...next.trip].sort() : []).toEqual(["look-1", "look-2"]);
    const away = chosen(twoFaults({ checks, faults }), { ...operatorThere, place: "not-there" });
    expect(away).toEqual({ kind: "stop", because: "nothing-left" });
  });

  it("stops when no answer would change anything, and when none is worth its burden", () => {
    const sure = twoFaults({ faults: [makeFault("a")], checks: [makeCheck("c", "idle")] });
    expect(chosen(sure, operatorThere)).toEqual({ kind: "stop", because: "clear-enough" });
    const dear = twoFaults({ checks: [makeCheck("c", "tell", { burden: 500 })] });
    expect(chosen(dear, operatorThere)).toEqual({ kind: "stop", because: "not-worth-asking" });
  });

  it("asks what every machine is asked that has it, even where nothing hangs on it", () => {
    const checks = [makeCheck("c", "idle", { alwaysAsked: true, atMachine: true })];
    const sure = twoFaults({ faults: [makeFault("a")], checks });
    expect(chosen(sure, operatorThere)).toMatchObject({ kind: "ask", check: "c" });
    const canGo = chosen(sure, { ...operatorThere, place: "can-go" });
    expect(canGo).toMatchObject({ kind: "ask", trip: ["c"] });
    const away = chosen(sure, { ...operatorThere, place: "not-there" });
    expect(away).toEqual({ kind: "stop", because: "nothing-left" });
    const asked = chosen(sure, { ...operatorThere, asked: ["c"] });
    expect(asked).toEqual({ kind: "stop", because: "nothing-left" });
    // What pays comes first; what is asked in any case keeps its place behind it.
    const both = twoFaults({ checks: [...checks, makeCheck("ask-tell", "tell")] });
    expect(chosen(both, operatorThere)).toMatchObject({ check: "ask-tell" });
  });

  it("stops when the answers contradict each other", () => {
    const ids = ["a", "b", "c"];
    const knowledge = makeKnowledge({
      faults: ids.map((id) => makeFault(id, { rows: new Map([[`only-${id}`, [0.02, 0.98]]]) })),
      observations: [
        ...ids.map((id) => makeObservation(`only-${id}`, ["no", "yes"], [0.99, 0.01])),
        makeObservation("more", ["x", "y"], [0.5, 0.5]),
      ],
      checks: [makeCheck("ask-more", "more")],
    });
    const evidence: Evidence = { reports: ids.map((id) => told(`only-${id}`, "yes")), acts: [] };
    expect(chosen(knowledge, operatorThere, evidence)).toMatchObject({ because: "contradiction" });
  });

  it("offers safe self-help that is likely to cure, once", () => {
    const knowledge = {
      ...twoFaults({ checks: [] }),
      acts: new Map([["move-lever", makeAct("move-lever", { cures: new Map([["a", 0.9]]) })]]),
    };
    expect(chosen(knowledge, operatorThere)).toMatchObject({
      check: "move-lever",
      isAct: true,
      decides: "chat",
    });
    const done: Evidence = {
      reports: [],
      acts: [{ act: "move-lever", epoch: 1, by: "operator", outcome: "no-change" }],
    };
    expect(chosen(knowledge, operatorThere, done)).toMatchObject({ kind: "stop" });
  });

  it("sees that two questions together tell what neither tells alone", () => {
    // a and d show the same on both, b and c differ: only both answers tell the pairs apart.
    const row = (first: boolean) => (first ? [1, 0] : [0, 1]);
    const pattern = { a: [true, true], b: [true, false], c: [false, true], d: [false, false] };
    const knowledge = makeKnowledge({
      faults: Object.entries(pattern).map(([id, [p = true, q = true]]) =>
        makeFault(id, {
          rows: new Map([
            ["p", row(p)],
            ["q", row(q)],
          ]),
          remedies: [p === q ? "mend-same" : "mend-other"],
        }),
      ),
      observations: ["p", "q"].map((id) => makeObservation(id, ["x", "y"], [0.5, 0.5])),
      checks: ["p", "q"].map((id) => makeCheck(`ask-${id}`, id)),
      remedies: ["same", "other"].map((id) => makeRemedy(`mend-${id}`, { parts: [`part-${id}`] })),
      parts: ["same", "other"].map((id) => makePart(`part-${id}`, { carryMinutes: 25 })),
    });
    expect(chosen(knowledge, operatorThere)).toMatchObject({ kind: "ask" });
    const myopic = chooseNext(compileModel(knowledge, someMachine), nothing, operatorThere, {
      lookAhead: 0,
    });
    const ahead = chosen(knowledge, operatorThere);
    const value = (next: typeof ahead) => (next.kind === "ask" ? next.valueMinutes : 0);
    expect(value(ahead)).toBeGreaterThan(value(myopic));
  });
});

describe("what the display says", () => {
  /** The questions of an interview in which the person never knows an answer. */
  const interview = (kind: MachineKindId, display?: boolean): readonly string[] => {
    const features = display === undefined ? {} : { features: { display } };
    const model = compileModel(workshop.knowledge, { kind, fuel: "diesel", ...features });
    const evidence: Evidence = { reports: [told("on-start", "nothing")], acts: [] };
    const asked: string[] = [];
    for (;;) {
      const next = chooseNext(model, evidence, { ...operatorThere, asked });
      if (next.kind === "stop") return asked;
      asked.push(next.check);
    }
  };

  it("is asked of a combine before the interview ends, of a generator without one never", () => {
    expect(interview("combine")).toContain("see-display");
    expect(interview("pump-or-generator", false)).not.toContain("see-display");
  });
});
