import { describe, expect, it } from "vitest";
import { chanceHolds } from "../../src/diagnosis/machine-condition.ts";
import type { MachineKind } from "../../src/domain/knowledge.ts";
import { shippedKnowledge } from "../helpers/shipped.ts";

const knowledge = await shippedKnowledge();

/** What is asked of anybody at such a machine, at its likeliest. */
function askedOf(kind: MachineKind): string[] {
  const mayHave = (needs: Parameters<typeof chanceHolds>[0]): boolean =>
    chanceHolds(needs, { kind: kind.id }, kind, 1) > 0;
  return [...knowledge.checks.values()]
    .filter(({ needs, yields }) => {
      const seen = knowledge.observations.get(yields)?.needs ?? {};
      return mayHave(needs) && mayHave(seen);
    })
    .map(({ id, ask }) => `${id}: ${ask}`);
}

describe("a kind of machine", () => {
  const without = (feature: string) =>
    [...knowledge.machines.values()].filter(({ features }) => !features.has(feature));

  it("without a PTO is asked nothing about one, a generator least of all", () => {
    const kinds = without("pto");
    expect(kinds.map(({ id }) => id)).toContain("pump-or-generator");
    const asked = kinds.flatMap((kind) => askedOf(kind).filter((ask) => /\bPTO\b/.test(ask)));
    expect(asked).toEqual([]);
  });

  it("without a seat switch is not asked whether somebody sits", () => {
    const asked = without("seat-switch").flatMap((kind) =>
      askedOf(kind).filter((ask) => /seat switch/i.test(ask)),
    );
    expect(asked).toEqual([]);
  });

  it("with a PTO is asked about it", () => {
    const tractor = knowledge.machines.get("compact-tractor");
    const asked = tractor === undefined ? [] : askedOf(tractor);
    expect(asked.some((ask) => /\bPTO\b/.test(ask))).toBe(true);
  });
});
