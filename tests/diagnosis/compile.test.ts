import { describe, expect, it } from "vitest";
import { updateBelief } from "../../src/diagnosis/belief.ts";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { OutOfRange, UnknownId } from "../../src/domain/result.ts";
import {
  makeFault,
  makeKnowledge,
  makeObservation,
  noisyConfusion,
  someMachine,
} from "../helpers/knowledge-maker.ts";
import { told } from "../helpers/told.ts";

describe("a compiled model", () => {
  // P(frost) 0.2; in frost "gelled" is five times as likely as else.
  const usual = [0.8, 0.2];
  const mean = 0.8 + 0.2 * 5;
  const knowledge = makeKnowledge({
    faults: [
      makeFault("gelled", { rows: new Map([["outdoors", [0.8 / mean, 1 / mean]]]) }),
      makeFault("other"),
    ],
    observations: [makeObservation("outdoors", ["mild", "frost"], usual, { context: true })],
    rates: { nothingWrong: 0, somethingElse: 0 },
  });

  it("moves priors and rows with the season", () => {
    const winter = compileModel(knowledge, someMachine, {
      circumstances: new Map([["outdoors", [0.1, 0.9]]]),
    });
    // Share ∝ Σ P(weather)·factor, with the shipped weather as 1: (0.1 + 0.9·5) / (0.8 + 0.2·5).
    const factor = 4.6 / 1.8;
    expect(winter.hypotheses.prior[1]).toBeCloseTo(factor / (factor + 1), 12);
    const frost = { reports: [told("outdoors", "frost")], acts: [] };
    const [shipped, moved] = [compileModel(knowledge, someMachine), winter].map(
      (model) => updateBelief(model, frost).probability[1] ?? 0,
    );
    // Once the weather is known, what was expected of it no longer matters.
    expect(moved).toBeCloseTo(shipped ?? 0, 12);
  });

  it("multiplies what two circumstances-driven faults make of the weather", () => {
    const both = {
      ...knowledge,
      faults: new Map(
        ["a", "b"].map((id) => [
          id,
          makeFault(id, {
            remedies: [],
            rows: new Map([["outdoors", [0.8 / mean, 1 / mean]]]),
          }),
        ]),
      ),
      rates: { ...knowledge.rates, pairCutOff: 1e-9 },
    };
    const model = compileModel(both, someMachine);
    const group = model.groups[0];
    const row = group?.predict(new Map(), "outdoors");
    const at = (row?.rowOf[3] ?? 0) * 2;
    expect(row?.rows[at + 1]).toBeCloseTo((0.2 * 25) / (0.8 + 0.2 * 25), 12);
  });

  it("uses learned confusion and refuses unknown circumstances", () => {
    const learned = compileModel(knowledge, someMachine, {
      confusion: new Map([["outdoors", { operator: noisyConfusion(2, 0.5).operator }]]),
    });
    const said = updateBelief(learned, { reports: [told("outdoors", "frost")], acts: [] });
    expect(said.probability[1]).toBeCloseTo(learned.hypotheses.prior[1] ?? 0, 12);
    const compile = (id: string, row: number[]) => () =>
      compileModel(knowledge, someMachine, { circumstances: new Map([[id, row]]) });
    expect(compile("indoors", [1, 0])).toThrow(UnknownId);
    expect(compile("outdoors", [1])).toThrow(OutOfRange);
    expect(compile("outdoors", [0.2, 0.2])).toThrow(OutOfRange);
  });
});
