import { describe, expect, it } from "vitest";
import { evidenceFrom, evidenceOf } from "../../src/cases/case-evidence.ts";
import type { CaseAct, ReadCase } from "../../src/cases/case-file.ts";
import type { Report } from "../../src/domain/evidence.ts";
import type { Reporter } from "../../src/domain/vocabulary.ts";
import { workshop } from "../helpers/dialog.ts";

const { knowledge } = workshop;

const report = (observation: string, state: string, reporter: Reporter = "operator"): Report => ({
  observation,
  epoch: 0,
  reporter,
  said: { kind: "states", weights: { [state]: 1 } },
  hedge: 0,
});
const events = (present: string[], reporter: Reporter = "operator"): Report => ({
  ...report("recent-event", "", reporter),
  said: { kind: "members", present, absent: [] },
});
const act = (id: string, given: Partial<CaseAct> = {}): CaseAct => ({
  act: id,
  by: "operator",
  toldIn: "operator",
  outcome: "unknown",
  report: null,
  ...given,
});
const outcomes = (acts: readonly CaseAct[]) =>
  evidenceFrom([], acts, knowledge).acts.map((one) => `${one.epoch} ${one.act} ${one.outcome}`);

describe("the evidence of a case", () => {
  it("has the acts one after the other, each with who did it and what came of it", () => {
    const acts = [
      act("move", { outcome: "no-change" }),
      act("jump", { by: "technician", report: report("jump-start", "cured") }),
    ];
    const evidence = evidenceFrom([report("on-start", "nothing")], acts, knowledge);
    expect(evidence.acts).toEqual([
      { act: "move", epoch: 1, by: "operator", outcome: "no-change" },
      { act: "jump", epoch: 2, by: "technician", outcome: "unknown" },
    ]);
    expect(evidence.reports.map((one) => [one.observation, one.epoch])).toEqual([
      ["on-start", 0],
      ["jump-start", 2],
    ]);
  });
  it("joins the members that one person named, and not those of two", () => {
    const reports = [events(["welded"]), events(["charged"]), events(["tipped"], "technician")];
    expect(
      evidenceFrom(reports, [], knowledge).reports.map((one) => [one.reporter, one.said]),
    ).toEqual([
      ["operator", { kind: "members", present: ["welded", "charged"], absent: [] }],
      ["technician", { kind: "members", present: ["tipped"], absent: [] }],
    ]);
  });
  it("ends with what it ran after; what was done after an earlier one shows that it did not stay", () => {
    const cured = { outcome: "cured" } as const;
    const acts = [act("clean", cured), act("charge", { outcome: "no-change" }), act("fit", cured)];
    expect(outcomes(acts)).toEqual(["1 clean unknown", "2 charge no-change", "3 fit cured"]);
    expect(outcomes([act("move", cured), act("charge", { outcome: "no-change" })])).toEqual([
      "1 charge no-change",
      "2 move cured",
    ]);
  });
  it("grows with each teller, and what one person told twice was done once", () => {
    const read: ReadCase = {
      file: {
        id: "x",
        machine: {},
        opening: "",
        operator: {},
        technician: {},
        cause: [],
        group: [],
        strict: false,
      },
      machine: { kind: "other" },
      opening: [report("on-start", "nothing")],
      operator: [report("lights-on", "dim")],
      entries: [],
      technician: [report("on-start", "slow", "technician")],
      acts: [
        act("jump", { toldIn: "opening", report: report("jump-start", "no-change") }),
        act("jump", { report: report("jump-start", "cured") }),
        act("move", { toldIn: "technician", by: "technician" }),
      ],
      redFlags: [],
      notUnderstood: [],
    };
    const at = (teller: "opening" | "operator" | "technician") => {
      const { acts, reports } = evidenceOf(read, teller, knowledge);
      const told = reports.map(({ observation, said }) =>
        said.kind === "states" ? `${observation} ${Object.keys(said.weights).join()}` : observation,
      );
      return [acts.map((one) => one.act), told];
    };
    expect(at("opening")).toEqual([["jump"], ["on-start nothing", "jump-start no-change"]]);
    expect(at("operator")).toEqual([
      ["jump"],
      ["on-start nothing", "lights-on dim", "jump-start cured"],
    ]);
    expect(at("technician")[0]).toEqual(["jump", "move"]);
  });

  it("adds what a look at the smoke tells of the start", () => {
    const told = evidenceFrom([report("smoke", "none")], [], knowledge).reports;
    expect(told.map((one) => one.observation)).toEqual(["smoke", "on-start"]);
  });
});
