import { describe, expect, it } from "vitest";
import { compileModel } from "../../src/diagnosis/compile.ts";
import { rankCauses } from "../../src/diagnosis/ranking.ts";
import type { Report } from "../../src/domain/evidence.ts";
import { workshop } from "../helpers/dialog.ts";

const model = compileModel(workshop.knowledge, { kind: "ride-on-mower", fuel: "petrol" });
const elseAfter = (reports: readonly Report[]) =>
  rankCauses(model, { reports, acts: [] }).somethingElse;
const base = { epoch: 0, reporter: "operator", hedge: 0 } as const;

describe("something else", () => {
  it("grows no likelier because circumstances are told: they were there before the fault", () => {
    const told: Report[] = [
      { ...base, observation: "last-use", said: { kind: "states", weights: { months: 1 } } },
      {
        ...base,
        observation: "recent-event",
        said: { kind: "members", present: ["tipped", "charged"], absent: [] },
      },
    ];
    const before = elseAfter([]);
    for (const report of told) {
      const after = elseAfter([report]);
      // The known faults are reweighed among themselves; their sum stays what it was.
      expect(Math.abs(10 * Math.log10(after / (1 - after) / (before / (1 - before))))).toBeLessThan(
        0.5,
      );
    }
  });

  it("comes first when three answers contradict each other", () => {
    const state = (observation: string, id: string): Report => ({
      ...base,
      observation,
      reporter: "technician",
      said: { kind: "states", weights: { [id]: 1 } },
    });
    const ranking = rankCauses(model, {
      reports: [
        state("on-start", "turns-no-fire"),
        state("lights-on", "dead"),
        {
          ...base,
          observation: "battery-rest-volts",
          reporter: "technician",
          said: { kind: "value", value: 2 },
        },
        {
          ...base,
          observation: "starter-start-volts",
          reporter: "technician",
          said: { kind: "value", value: 12 },
        },
      ],
      acts: [],
    });
    expect(ranking.somethingElse).toBeGreaterThan(ranking.causes[0]?.probability ?? 1);
  });
});
