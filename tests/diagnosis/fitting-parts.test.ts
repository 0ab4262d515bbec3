import { describe, expect, it } from "vitest";
import { withFittingParts } from "../../src/diagnosis/fitting-parts.ts";
import { shippedKnowledge } from "../helpers/shipped.ts";

const knowledge = await shippedKnowledge();
const partsFor = (fuel?: "petrol" | "diesel") => {
  const facts = { kind: "old-tractor", ...(fuel === undefined ? {} : { fuel }) } as const;
  const { remedies } = withFittingParts(knowledge, facts);
  return new Set([...remedies.values()].flatMap(({ parts }) => parts));
};

describe("parts for one machine", () => {
  it("hold nothing of a carburettor or of sparks for a diesel", () => {
    const parts = partsFor("diesel");
    for (const part of ["carburettor", "carburettor-kit", "ignition-coil", "points"]) {
      expect(parts, part).not.toContain(part);
    }
    expect(parts).toContain("glow-plugs");
  });

  it("hold nothing of glow plugs or injection for a petrol engine", () => {
    const parts = partsFor("petrol");
    expect(parts).toContain("carburettor-kit");
    for (const part of ["glow-plugs", "injection-pump"]) expect(parts).not.toContain(part);
  });

  it("hold both where nobody knows the fuel", () => {
    expect(partsFor()).toContain("carburettor-kit");
    expect(partsFor()).toContain("glow-plugs");
  });
});
