import { describe, expect, it } from "vitest";
import { createEngineRoom } from "../../src/cases/engine-room.ts";
import type { Knowledge } from "../../src/domain/knowledge.ts";
import { Dialog, workshop } from "../helpers/dialog.ts";

const { knowledge } = workshop;
const state = new Dialog().say("petrol garden tractor, one click, lights stay bright").state;

/** Knowledge that counts how often a model is compiled from it. */
function counted(): { knowledge: Knowledge; compiled: () => number } {
  let count = 0;
  const observed: Knowledge = {
    ...knowledge,
    get rates() {
      return knowledge.rates;
    },
    get faults() {
      count += 1;
      return knowledge.faults;
    },
  };
  return { knowledge: observed, compiled: () => count };
}

describe("the engine as the talk asks it", () => {
  it("answers the same state once: a slip and a sheet do not think twice", () => {
    const engine = createEngineRoom({ knowledge });
    expect(engine.triage(state, "technician")).toBe(engine.triage(state, "technician"));
    const again = { ...state };
    expect(engine.triage(again, "technician")).not.toBe(engine.triage(state, "technician"));
    expect(engine.triage(again, "technician")).toEqual(engine.triage(state, "technician"));
  }, 30_000);

  it("compiles a machine's model once, and anew when the options change", () => {
    const { knowledge: observed, compiled } = counted();
    let key = "a";
    const options = () => ({ key, options: {} });
    const engine = createEngineRoom({ knowledge: observed, options });
    engine.next(state, "operator");
    const once = compiled();
    engine.next({ ...state }, "operator");
    const cheap = compiled() - once;
    key = "b";
    engine.next({ ...state }, "operator");
    expect(compiled() - once - cheap).toBeGreaterThan(cheap);
  }, 30_000);

  it("asks a technician other things than an operator", () => {
    const engine = createEngineRoom({ knowledge });
    const next = engine.next(state, "technician");
    const check = next.kind === "ask" && !next.isAct ? knowledge.checks.get(next.check) : undefined;
    expect(next.kind).toBe("ask");
    if (check !== undefined) expect(check.performers).toContain("technician");
  }, 30_000);

  it("knows no readings to expect where no circuit was simulated", () =>
    expect(createEngineRoom({ knowledge }).expected(state, "battery-rest-volts")).toBeNull());
});
