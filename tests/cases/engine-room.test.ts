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
  const standing = createEngineRoom({ knowledge });
  it("thinks once about what it was told: who looks after a case changes nothing of it", () => {
    const first = standing.triage(state, "technician");
    expect(standing.triage({ ...state, shopSaw: "2" }, "technician")).toBe(first);
    expect(createEngineRoom({ knowledge }).triage(state, "technician")).toEqual(first);
  }, 30_000);

  it.each([
    ["another answer", { answers: state.answers.slice(0, 1) }],
    ["another machine", { machine: { kind: "compact-tractor", fuel: "diesel" } as const }],
    ["a step that could not be done", { skippedSteps: ["battery-rest-volts"] }],
    ["another seed", { opened: { ...state.opened, seed: 8 } }],
  ])(
    "thinks anew about %s",
    (_, change) => {
      const engine = createEngineRoom({ knowledge });
      const before = engine.triage(state, "technician");
      const after = engine.triage({ ...state, ...change }, "technician");
      expect(after).not.toBe(before);
      const fresh = createEngineRoom({ knowledge });
      expect(after).toEqual(fresh.triage({ ...state, ...change }, "technician"));
    },
    30_000,
  );

  it("thinks anew when the shop has learned something", () => {
    let key = "a";
    const engine = createEngineRoom({ knowledge, options: () => ({ key, options: {} }) });
    const before = engine.triage(state, "technician");
    key = "b";
    expect(engine.triage(state, "technician")).not.toBe(before);
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
