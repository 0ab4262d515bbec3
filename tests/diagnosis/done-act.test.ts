import { describe, expect, it } from "vitest";
import { doneAct } from "../../src/diagnosis/done-act.ts";
import { workshop } from "../helpers/dialog.ts";

const { knowledge } = workshop;
const [act] = knowledge.acts.values();
const [fault] = knowledge.faults.values();
const remedy = fault?.remedies[0] ?? "";
const done = (id: string, outcome: "no-change" | "changed") =>
  doneAct(knowledge, { act: id, epoch: 1, by: "technician", outcome });

describe("something that was done", () => {
  it("is an act of the knowledge", () => {
    expect(done(act?.id ?? "", "changed").makesStale).toEqual(act?.makesStale);
  });

  it("leaves nothing stale where it changed nothing", () => {
    expect(done(act?.id ?? "", "no-change").makesStale).toEqual([]);
  });

  it("is a repair too, which would have cured the faults it is listed under", () => {
    const chance = done(remedy, "no-change").cures.get(fault?.id ?? "");
    expect(chance).toBe(knowledge.remedies.get(remedy)?.cures);
  });

  it("must be known", () => {
    expect(() => done("nothing-of-the-kind", "changed")).toThrow("nothing-of-the-kind");
  });
});
