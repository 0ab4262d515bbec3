import { describe, expect, it } from "vitest";
import type { Report } from "../../src/domain/evidence.ts";
import type { StateReading, Understood } from "../../src/domain/reading.ts";
import type { Reporter } from "../../src/domain/vocabulary.ts";
import { addsTo, joinLists, leavesOpen, reportsFrom } from "../../src/talk/reports.ts";
import { makeKnowledge, makeObservation } from "../helpers/knowledge-maker.ts";

const even = (size: number) => Array.from({ length: size }, () => 1 / size);
const stated = (id: string, states: string, kind: "states" | "list" = "states") =>
  makeObservation(id, states.split(" "), even(states.split(" ").length), { kind });

const knowledge = makeKnowledge({
  faults: [],
  observations: [
    stated("on-start", "nothing click slow grinds starts"),
    stated("lights", "dead dim normal"),
    stated("event", "tipped charged welded none", "list"),
    makeObservation("volts", ["low", "good"], even(2), { kind: "number", unit: "V" }),
  ],
});

const heard = { probability: 1, hedge: 0, source: "self" as const, span: [0, 1] as const };
const says = (observation: string, state: string, more: Partial<StateReading> = {}) => ({
  ...heard,
  observation,
  state,
  ...more,
});
const from = (
  items: readonly Understood[],
  denied: readonly StateReading[] = [],
  reporter: Reporter = "operator",
) => reportsFrom(items, denied, { knowledge, reporter, epoch: 2 });
const plain = (state: string) => ({ kind: "states", weights: { [state]: 1 } });

describe("reports from words", () => {
  it("carry who told it, when, and how sure it was said and read", () => {
    const item = says("lights", "dim", { probability: 0.8, hedge: 0.5 });
    expect(from([item])).toEqual([
      { observation: "lights", epoch: 2, reporter: "operator", hedge: 0.6, said: plain("dim") },
    ]);
    const value: Understood = { ...heard, observation: "volts", value: 12, unit: "V", spread: 0 };
    expect(from([value])[0]?.said).toEqual({ kind: "value", value: 12 });
  });
  it("leave out what is likelier not meant, and what the knowledge lacks", () => {
    const unsure = says("lights", "dim", { probability: 0.4 });
    expect(from([unsure, says("lights", "purple"), says("shoes", "large")])).toEqual([]);
    expect(from([], [says("lights", "purple"), says("shoes", "large"), unsure])).toEqual([]);
  });
  it("are second-hand where an operator passes them on, and the technician's from a technician", () => {
    const item = says("lights", "dim", { source: "other" });
    expect(from([item])[0]?.reporter).toBe("second-hand");
    expect(from([item], [], "technician")[0]?.reporter).toBe("technician");
  });
  it("are one of each thing: the surest", () => {
    const items = [says("lights", "dim", { hedge: 0.3 }), says("lights", "dead")];
    expect(from(items).map((one) => one.said)).toEqual([plain("dead")]);
  });
  it("join the members of a list, named and denied, as sure as the least sure", () => {
    const items = [says("event", "tipped"), says("event", "charged", { hedge: 0.25 })];
    const [report, ...others] = from(items, [says("event", "welded"), says("event", "tipped")]);
    expect(others).toEqual([]);
    expect(report).toMatchObject({
      hedge: 0.25,
      said: { kind: "members", present: ["tipped", "charged"], absent: ["welded"] },
    });
  });
  it("of a denial leave the other states open, as long as few are left", () => {
    const [report] = from([], [says("lights", "dead", { hedge: 0.2 })]);
    expect(report?.said).toEqual({ kind: "states", weights: { dim: 0.5, normal: 0.5 } });
    expect(report?.hedge).toBeCloseTo(0.2, 12);
    expect(from([], [says("on-start", "starts")])).toEqual([]);
    expect(
      from(
        [],
        ["dead", "dim", "normal"].map((state) => says("lights", state)),
      ),
    ).toEqual([]);
  });
  it("let what was stated stand over what was denied", () => {
    const reports = from([says("lights", "dim")], [says("lights", "dead")]);
    expect(reports.map((one) => one.said)).toEqual([plain("dim")]);
  });
});

describe("reports beside those told before", () => {
  const [plainly] = from([says("lights", "dim")]);
  const [dead] = from([], [says("lights", "dead")]);
  const [dim] = from([], [says("lights", "dim")]);
  it("add nothing where a denial leaves what was told, and correct it where it does not", () => {
    if (plainly === undefined || dead === undefined || dim === undefined) throw new TypeError();
    expect([leavesOpen(plainly), leavesOpen(dead)]).toEqual([false, true]);
    expect(addsTo([plainly], dead)).toBe(false);
    expect(addsTo([plainly], dim)).toBe(true);
    expect(addsTo([], dead)).toBe(true);
    expect(addsTo([{ ...plainly, reporter: "technician" }], dead)).toBe(true);
  });
  it("are joined list by list, in their order, all else kept", () => {
    const list = (present: string[], reporter: Reporter): Report => ({
      observation: "event",
      epoch: 0,
      reporter,
      hedge: 0,
      said: { kind: "members", present, absent: [] },
    });
    if (plainly === undefined) throw new TypeError();
    const reports = [list(["tipped"], "operator"), plainly, plainly, list(["welded"], "operator")];
    expect(joinLists([...reports, list(["charged"], "technician")])).toEqual([
      list(["tipped", "welded"], "operator"),
      plainly,
      plainly,
      list(["charged"], "technician"),
    ]);
  });
});
