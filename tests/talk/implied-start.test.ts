import { describe, expect, it } from "vitest";
import type { Report } from "../../src/domain/evidence.ts";
import { impliedStart } from "../../src/talk/implied-start.ts";
import { workshop } from "../helpers/dialog.ts";

const said = (observation: string, state: string, epoch = 0): Report => ({
  observation,
  epoch,
  reporter: "technician",
  said: { kind: "states", weights: { [state]: 1 } },
  hedge: 0,
});
const { knowledge } = workshop;
const implied = (...reports: Report[]) => {
  const said = impliedStart(reports, knowledge)?.said;
  return said?.kind === "states" ? Object.keys(said.weights).sort() : null;
};

describe("what a look tells of the start", () => {
  it("is that the engine turns, where somebody judged its smoke", () => {
    expect(implied(said("smoke", "none"))).toContain("turns-no-fire");
    expect(implied(said("smoke", "none"))).not.toContain("nothing");
  });

  it("is nothing where anybody may look at any time, or the start was spoken of", () => {
    expect(implied(said("joint-look", "clean"))).toBeNull();
    expect(implied(said("smoke", "none"), said("on-start", "nothing"))).toBeNull();
    expect(implied(said("smoke", "none"), said("engine-turns", "no"))).toBeNull();
    expect(implied()).toBeNull();
  });

  it("is one report however many looks there were, and no certainty", () => {
    const report = impliedStart([said("smoke", "none"), said("spark", "good")], knowledge);
    expect(report).toMatchObject({ observation: "on-start", reporter: "technician", epoch: 0 });
    expect(report?.hedge).toBeGreaterThan(0.2);
  });

  it("leaves out a report that does not know", () => {
    expect(implied({ ...said("smoke", "none"), said: { kind: "unknown" } })).toBeNull();
  });
});
