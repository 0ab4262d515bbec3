import { describe, expect, it } from "vitest";
import { refusedActLines } from "../../src/talk/refused-acts.ts";
import { Dialog } from "../helpers/dialog.ts";
import { told } from "../helpers/told.ts";

const { desk, state } = new Dialog();

function lines(kind: "combine" | "ride-on-mower", acts = state.acts) {
  const report = told("on-start", "fast-clicks");
  const answers = [{ report, from: "operator" as const, at: 0 }];
  const machine = { kind, volts: 12 };
  const now = { ...state, machine, answers, acts };
  const { ranking } = desk.triage(now, "operator");
  return JSON.stringify(refusedActLines(ranking.causes.slice(0, 3), now, desk));
}

describe("what would have helped but is left to the shop", () => {
  it("is named with its reason where a likely cause would have given way to it", () => {
    expect(lines("combine")).toContain("act-jump-start-not-electronics");
    expect(lines("ride-on-mower")).toBe("[]");
  });

  it("is not spoken of once it was done", () => {
    const done = { act: "jump-start", epoch: 1, by: "operator", outcome: "no-change" } as const;
    expect(lines("combine", [done])).not.toContain("jump-start");
  });
});
