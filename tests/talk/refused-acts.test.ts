import { describe, expect, it } from "vitest";
import type { RankedCause } from "../../src/domain/triage.ts";
import { refusedActLines } from "../../src/talk/refused-acts.ts";
import { Dialog } from "../helpers/dialog.ts";

const { desk, state } = new Dialog();

const cause = (fault: string, group: RankedCause["group"]): readonly RankedCause[] => [
  { fault, group, probability: 0.6, reasons: [] },
];
const flat = cause("battery-flat", "battery");

function lines(kind: "combine" | "ride-on-mower", causes = flat, acts = state.acts) {
  const now = { ...state, machine: { kind, volts: 12 }, acts };
  return JSON.stringify(refusedActLines(causes, now, desk));
}

describe("what would have helped but is left to the shop", () => {
  it("is named with its reason where a likely cause would have given way to it", () => {
    expect(lines("combine")).toContain("act-jump-start-not-electronics");
    expect(lines("ride-on-mower")).toBe("[]");
  });

  it("is not spoken of where it would not have helped", () => {
    expect(lines("combine", cause("glow-plugs-failed", "preheat"))).not.toContain("jump-start");
  });

  it("is not spoken of once it was done", () => {
    const done = { act: "jump-start", epoch: 1, by: "operator", outcome: "no-change" } as const;
    expect(lines("combine", flat, [done])).not.toContain("jump-start");
  });
});
