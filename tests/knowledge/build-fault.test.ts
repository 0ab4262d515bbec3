import { describe, expect, it } from "vitest";
import { crankingStates, firingStates } from "../../src/domain/vocabulary.ts";
import { knowledgeOf, problemsOf } from "./small-flows.ts";

const fault = (id: string) => knowledgeOf().faults.get(id);
const says = (from: string, to: string) => problemsOf({ from, to }).map((one) => one.says);

describe("faults", () => {
  it("takes over rows, circumstances and acts of the fault it is like, but its own win", () => {
    const flat = fault("flat");
    const worn = fault("worn");
    expect(worn?.rows.get("lamps")).toEqual(flat?.rows.get("lamps"));
    expect(worn?.rows.get("season")).toEqual(flat?.rows.get("season"));
    expect(worn?.rows.get("rest-volts")).not.toEqual(flat?.rows.get("rest-volts"));
    expect(worn?.cranking).toEqual(flat?.cranking);
    expect(worn?.remedies).toEqual(["new-battery"]);
    expect(worn?.notYet).toEqual([]);
  });

  it("turns circumstances into rows in proportion to usual times factor", () => {
    // summer 0.75 · 1, winter 0.25 · 3 → 0.5 and 0.5
    expect(fault("flat")?.rows.get("season")).toEqual([0.5, 0.5]);
    // washed 0.1 · 2 against absent 0.9; knocked untouched
    expect(fault("flat")?.rows.get("events")?.[0]).toBeCloseTo(0.2 / 1.1, 12);
    expect(fault("flat")?.rows.get("events")?.[1]).toBeCloseTo(0.2, 12);
  });

  it("leaves a stage it does not spoil as on a sound machine", () => {
    const tank = fault("empty-tank");
    // usual of on-start: starts 0.9, slow 0.06, turns-no-fire 0.04, eleven states never (0.01 each)
    const turns = (0.9 + 0.04 + 2 * 0.01) / (1 + 11 * 0.01);
    expect(tank?.cranking[crankingStates.indexOf("turns")]).toBeCloseTo(turns, 12);
    expect(tank?.firing[firingStates.indexOf("turns-no-fire")]).toBeCloseTo(0.95 / 0.98, 12);
    expect(fault("flat")?.firing[firingStates.indexOf("starts")]).toBeCloseTo(0.9 / 0.96, 12);
  });

  it("keeps conditions, factors and the part not to be bought", () => {
    const tank = fault("empty-tank");
    expect(tank?.needs).toEqual({ fuels: ["petrol"], features: ["choke"] });
    expect(tank?.factors).toEqual([
      { when: { kinds: ["zero-turn"], ageFrom: 5 }, times: 2, because: "It is thirsty." },
    ]);
    expect(fault("flat")?.notYet).toEqual([{ part: "pump", before: "read-rest" }]);
    expect(tank?.source).toBe("invented for tests");
  });

  it("refuses rows in the wrong place", () => {
    const shows = "shows: { rest-volts: { good: nearly-always } }";
    expect(says(shows, "shows: { season: { winter: 1 } }")).toEqual([
      '"season" is a circumstance; write it under "more-likely-when:" as factors.',
    ]);
    expect(says(shows, "shows: { engine-turns: { no: 1 } }")).toEqual([
      '"engine-turns" follows from "on-start"; no row of its own is needed.',
    ]);
    expect(says(shows, "shows: { on-start: { nothing: 1 } }")[0]).toContain('Write "cranking:"');
    expect(says(shows, "shows: { rest-volt: { good: 1 } }")).toEqual([
      'There is no observation "rest-volt". Did you mean "rest-volts"?',
    ]);
    const when = "more-likely-when: { season: { winter: 3 }";
    expect(says(when, "more-likely-when: { lamps: { dim: 3 }")[0]).toContain(
      '"lamps" is no circumstance',
    );
    expect(says(when, "more-likely-when: { season: { wnter: 3 }")[0]).toContain(
      'Did you mean "winter"?',
    );
    expect(says(when, "more-likely-when: { seasons: { winter: 3 }")[0]).toBe(
      'There is no circumstance "seasons". Did you mean "season"?',
    );
  });

  it("refuses to be like itself in a circle, or like nothing", () => {
    expect(says("like: flat", "like: worn")[0]).toContain("goes round in a circle");
    expect(says("like: flat", "like: flatt")[0]).toBe(
      'There is no fault "flatt". Did you mean "flat"?',
    );
  });
});
