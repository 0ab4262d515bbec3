import { describe, expect, it } from "vitest";
import { updateBelief } from "../../src/diagnosis/belief.ts";
import { candidates } from "../../src/diagnosis/candidates.ts";
import { seenNow } from "../../src/diagnosis/channel.ts";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { chooseNext } from "../../src/diagnosis/next-check.ts";
import { refusalOf } from "../../src/diagnosis/refused-act.ts";
import type { Evidence, MachineFacts, Situation } from "../../src/domain/evidence.ts";
import { workshop } from "../helpers/dialog.ts";
import { makeAct, makeFault, makeKnowledge, someMachine } from "../helpers/knowledge-maker.ts";
import { operatorThere, technicianThere, told } from "../helpers/told.ts";

const { knowledge } = workshop;

function why(id: string, machine: MachineFacts, reports: Evidence["reports"] = []) {
  const act = knowledge.acts.get(id);
  if (act === undefined) throw new Error(id);
  return refusalOf(act, machine, { evidence: { reports, acts: [] }, knowledge })?.id;
}

describe("a jump start", () => {
  const mower: MachineFacts = { kind: "ride-on-mower", fuel: "petrol" };

  it("is left to the shop where it is not allowed, with the reason", () => {
    expect(why("jump-start", mower)).toBeUndefined();
    expect(why("jump-start", { kind: "combine", volts: 24 })).toBe("other-volts");
    expect(why("jump-start", { kind: "old-tractor", volts: 6 })).toBe("other-volts");
    expect(why("jump-start", { kind: "old-tractor", volts: 12, positiveEarth: true })).toBe(
      "plus-on-frame",
    );
    expect(
      why("jump-start", { kind: "old-tractor", volts: 12, positiveEarth: false }),
    ).toBeUndefined();
    expect(why("jump-start", { kind: "row-crop-tractor", volts: 12 })).toBe("electronics");
    expect(why("jump-start", mower, [told("battery-kind", "lithium")])).toBe("lithium");
    expect(why("jump-start", mower, [told("outdoors", "hard-frost")])).toBe("hard-frost");
  });

  it("goes by what was said last", () => {
    const thawed = [told("outdoors", "hard-frost"), told("outdoors", "mild")];
    expect(why("jump-start", mower, thawed)).toBeUndefined();
  });
});

describe("charging", () => {
  it("is left to the shop for lithium and in hard frost, where a flat battery freezes", () => {
    const mower: MachineFacts = { kind: "ride-on-mower" };
    expect(why("charge-battery", mower)).toBeUndefined();
    expect(why("charge-battery", mower, [told("battery-kind", "lithium")])).toBe("lithium");
    expect(why("charge-battery", mower, [told("outdoors", "hard-frost")])).toBe("hard-frost");
  });
});

describe("an act that is left to the shop", () => {
  const refusals = [{ id: "r", when: { kinds: [someMachine.kind] }, told: [], because: "No." }];
  const made = makeKnowledge({ faults: [makeFault("a"), makeFault("b")] });
  const help = makeAct("help", { cures: new Map([["a", 0.9]]), refusals });
  const model = compileModel({ ...made, acts: new Map([["help", help]]) }, someMachine);
  const none: Evidence = { reports: [], acts: [] };

  it("is not put to an operator", () => {
    expect(chooseNext(model, none, operatorThere)).toMatchObject({ kind: "stop" });
  });

  it("is open to a technician", () => {
    const probability = updateBelief(model, none).probability;
    const open = (situation: Situation) =>
      candidates({ model, evidence: none, situation, probability, seen: seenNow(model, none) });
    expect(open(technicianThere).acts.map(({ id }) => id)).toEqual(["help"]);
    expect(open(operatorThere).acts).toEqual([]);
  });
});
