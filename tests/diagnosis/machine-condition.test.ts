import { describe, expect, it } from "vitest";
import { chanceHolds, voltsOf } from "../../src/diagnosis/machine-condition.ts";
import type { MachineKind } from "../../src/domain/knowledge.ts";

const mower: MachineKind = {
  id: "ride-on-mower",
  title: "mower",
  synonyms: [],
  fuels: { petrol: 0.9, diesel: 0.1 },
  volts: [
    { volts: 12, share: 3 },
    { volts: 6, share: 1 },
  ],
  systems: [],
  features: new Map([
    ["seat-switch", 1],
    ["glow-plugs", 0.2],
  ]),
  circuits: {},
  offer: 1,
  family: "mowers",
  source: "invented",
};

describe("a condition on the machine", () => {
  const facts = { kind: "ride-on-mower" } as const;
  it.each([
    ["a kind that fits", { kinds: ["ride-on-mower"] }, facts, 1],
    ["another kind", { kinds: ["combine"] }, facts, 0],
    ["an unknown fuel, by share", { fuels: ["diesel"] }, facts, 0.1],
    ["a known fuel", { fuels: ["diesel"] }, { ...facts, fuel: "diesel" }, 1],
    ["unknown volts, by share", { volts: [6] }, facts, 0.25],
    ["known volts", { volts: [6] }, { ...facts, volts: 12 }, 0],
    ["a feature some have", { features: ["glow-plugs"] }, facts, 0.2],
    [
      "a feature this one has",
      { features: ["glow-plugs"] },
      { ...facts, features: { "glow-plugs": true } },
      1,
    ],
    ["a feature none has", { features: ["pto"] }, facts, 0],
    ["an age in range", { ageFrom: 5, ageTo: 10 }, { ...facts, ageYears: 10 }, 1],
    ["an age out of range", { ageFrom: 5 }, { ...facts, ageYears: 4 }, 0],
    ["an unknown age", { ageFrom: 5 }, facts, 0.7],
    ["several things at once", { fuels: ["petrol"], features: ["glow-plugs"] }, facts, 0.18],
  ] as const)("holds for %s", (_name, condition, of, chance) => {
    expect(chanceHolds(condition, of, mower, 0.7)).toBeCloseTo(chance, 12);
  });

  it("knows volts from the facts, the kind, or for want of both 12", () => {
    expect(voltsOf({ ...facts, volts: 24 }, mower)).toEqual([{ volts: 24, share: 1 }]);
    expect(voltsOf(facts, mower).map(({ share }) => share)).toEqual([0.75, 0.25]);
    expect(voltsOf({ kind: "other" }, undefined)).toEqual([{ volts: 12, share: 1 }]);
  });
});
