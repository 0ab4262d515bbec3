import { describe, expect, it } from "vitest";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { rankCauses } from "../../src/diagnosis/ranking.ts";
import type { Report } from "../../src/domain/evidence.ts";
import type { Check, Row } from "../../src/domain/knowledge.ts";
import {
  makeCheck,
  makeFault,
  makeKnowledge,
  makeObservation,
  someMachine,
} from "../helpers/knowledge-maker.ts";

const say = (observation: string, state: string): Report => ({
  ...{ observation, epoch: 0, reporter: "technician", hedge: 0 },
  said: { kind: "states", weights: { [state]: 1 } },
});

const rows = (lamps: Row, strap: Row): Map<string, Row> =>
  new Map([
    ["lamps", lamps],
    ["strap", strap],
  ]);

/** Isolator off and strap broken: all is dead either way, only the strap's look tells. */
function alikeAfter(reports: readonly Report[], checks: Partial<Check> = {}) {
  const knowledge = makeKnowledge({
    faults: [
      makeFault("isolator-off", { share: 3, rows: rows([0.02, 0.98], [0.98, 0.02]) }),
      makeFault("strap-broken", { share: 2, rows: rows([0.02, 0.98], [0.05, 0.95]) }),
      makeFault("jammed", { share: 3, rows: rows([0.98, 0.02], [0.98, 0.02]) }),
    ],
    observations: [
      makeObservation("lamps", ["bright", "dead"], [0.98, 0.02]),
      makeObservation("strap", ["whole", "broken"], [0.98, 0.02]),
    ],
    checks: [
      makeCheck("look-lamps", "lamps"),
      makeCheck("look-strap", "strap", { minutes: 4, ...checks }),
      makeCheck("pull-strap", "strap", { minutes: 9 }),
    ],
  });
  const model = compileModel(knowledge, someMachine);
  return rankCauses(model, { reports, acts: [] }).alike;
}

describe("causes that nothing told so far tells apart", () => {
  it("stand together, the likeliest first, with the quickest check that parts them", () => {
    expect(alikeAfter([say("lamps", "dead")])).toEqual({
      faults: ["isolator-off", "strap-broken"],
      check: "look-strap",
    });
  });

  it("name no check where no technician can make one", () => {
    const found = alikeAfter([say("lamps", "dead")], { performers: ["operator"] });
    expect(found?.check).toBe("pull-strap");
  });

  it("are parted by the answer", () => {
    expect(alikeAfter([say("lamps", "dead"), say("strap", "broken")])).toBeNull();
  });

  it("are nobody's business before anything is told", () => {
    expect(alikeAfter([])).toBeNull();
  });
});
