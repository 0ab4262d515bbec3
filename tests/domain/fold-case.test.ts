import { describe, expect, it } from "vitest";
import { type CaseHappening, stamped } from "../../src/domain/case-events.ts";
import { evidenceOf } from "../../src/domain/case-state.ts";
import type { Report } from "../../src/domain/evidence.ts";
import { foldCase } from "../../src/domain/fold-case.ts";

const opened: CaseHappening = {
  type: "case.opened",
  operator: "7",
  name: "Ida",
  chat: "7",
  language: "en",
  knowledge: "k1",
  seed: 3,
};

const caseAfter = (...happenings: CaseHappening[]) =>
  foldCase(
    "4F7K",
    [opened, ...happenings].map((one, index) => stamped(one, { at: index, by: "7", update: null })),
  );

const report = (state: string, more: Partial<Report> = {}): Report => ({
  observation: "on-start",
  epoch: 0,
  reporter: "operator",
  said: { kind: "states", weights: { [state]: 1 } },
  hedge: 0,
  ...more,
});

const symptom = { about: "check", check: "symptom" } as const;
const ask = (revision: number): CaseHappening => ({
  type: "question.asked",
  to: "operator",
  asking: symptom,
  revision,
});

describe("a case is the fold of its events", () => {
  it("knows who opened it and in which language", () => {
    expect(caseAfter().operator).toEqual({ id: "7", name: "Ida", chat: "7", language: "en" });
  });

  it("opens a question, and closes it when its check is answered", () => {
    expect(caseAfter(ask(1)).open.operator?.revision).toBe(1);
    const answered = caseAfter(ask(1), {
      type: "answer.given",
      report: report("slow"),
      check: "symptom",
    });
    expect(answered.open.operator).toBeNull();
    expect(answered.answers).toHaveLength(1);
  });

  it("leaves the open question open when something else is told", () => {
    const told = caseAfter(ask(1), {
      type: "answer.given",
      report: report("dim", { observation: "lights-on" }),
    });
    expect(told.open.operator?.revision).toBe(1);
  });

  it("replaces an answer to the same thing in the same epoch, from the same side only", () => {
    const state = caseAfter(
      { type: "answer.given", report: report("slow") },
      { type: "answer.given", report: report("nothing") },
      { type: "answer.given", report: report("one-click", { reporter: "technician" }) },
    );
    expect(evidenceOf(state).reports.map((one) => one.said)).toEqual([
      report("nothing").said,
      report("one-click").said,
    ]);
  });

  it("takes a withdrawn answer out and can be given it again", () => {
    const state = caseAfter(
      { type: "answer.given", report: report("slow") },
      { type: "answer.withdrawn", observation: "on-start", epoch: 0 },
    );
    expect(state.answers).toEqual([]);
  });

  it("opens an epoch with each act, so that what happens now may be asked again", () => {
    const state = caseAfter(
      ask(1),
      { type: "answer.given", report: report("slow"), check: "symptom" },
      { type: "act.done", act: "charge-battery", performer: "operator", outcome: "no-change" },
    );
    expect(state.epoch).toBe(1);
    expect(state.askedNow).toEqual(["charge-battery"]);
    expect(state.answers).toHaveLength(1);
  });

  it("counts a repair that changed nothing as an act of the technician", () => {
    const state = caseAfter({
      type: "remedy.done",
      remedy: "replace-battery",
      fault: "battery-flat",
      ran: false,
    });
    expect(evidenceOf(state).acts).toEqual([
      { act: "replace-battery", epoch: 1, by: "technician", outcome: "no-change" },
    ]);
  });

  it("remembers a passed question, but not one that was only gone back from", () => {
    const passed = caseAfter(ask(1), {
      type: "question.passed",
      asking: symptom,
      why: "dont-know",
    });
    expect(passed.passed).toEqual(["check:symptom"]);
    const back = caseAfter(ask(1), { type: "question.passed", asking: symptom, why: "back" });
    expect(back.passed).toEqual([]);
    expect(back.open.operator).toBeNull();
  });

  it("keeps a danger until somebody has seen it", () => {
    const raised = caseAfter({ type: "flag.raised", flag: "fuel-leak" });
    expect(raised.safety).toBe("not-clear");
    expect(raised.flags[0]?.seenBy).toBeNull();
    const seen = caseAfter(
      { type: "flag.raised", flag: "fuel-leak" },
      { type: "flag.seen", flag: "fuel-leak" },
    );
    expect(seen.flags[0]?.seenBy).toBe("7");
  });

  it("opens and closes a visit, and opens a closed case again", () => {
    const closed = caseAfter(
      { type: "case.assigned", technician: "9", name: "Ole", chat: "9", language: "de" },
      { type: "visit.started" },
      { type: "cause.confirmed", faults: ["battery-flat"], how: "measured" },
      {
        type: "case.closed",
        end: "visit",
        complaint: "slow",
        cause: "battery-flat",
        correction: "",
      },
    );
    expect(closed.closed?.end).toBe("visit");
    expect(closed.visit).toBe("started");
    const again = caseAfter(
      { type: "case.closed", end: "called-off", complaint: "", cause: "", correction: "" },
      { type: "case.reopened" },
    );
    expect(again.closed).toBeNull();
  });

  it("forgets a person but not what was found out about the machine", () => {
    const state = caseAfter(
      { type: "words.said", text: "my mower" },
      { type: "phone.told", phone: "123" },
      { type: "answer.given", report: report("slow") },
      { type: "operator.forgotten" },
    );
    expect(state.operator.name).toBe("");
    expect(state.words).toEqual([]);
    expect(state.phone).toBeNull();
    expect(state.answers).toHaveLength(1);
  });
});
