import type { MachineFacts } from "../domain/evidence.ts";
import type { MachineCondition, MachineKind } from "../domain/knowledge.ts";
import { fuels } from "../domain/vocabulary.ts";

/** Chance that a machine has a feature nobody ever said anything about. */
const UNKNOWN_FEATURE = 0.5;

/** The feature that the machine's own fact answers: which pole is on the frame. */
const POSITIVE_EARTH = "positive-earth";

/**
 * P(the condition holds) in [0, 1] for a machine of which some facts are unknown: an unknown fuel,
 * voltage or feature counts with its share among machines of the kind.
 * @param kind the machine's kind; absent: nothing is known of the shares
 * @param ageUnknown what an age condition counts for when the age is unknown, in [0, 1]
 */
export function chanceHolds(
  condition: MachineCondition,
  facts: MachineFacts,
  kind: MachineKind | undefined,
  ageUnknown: number,
): number {
  if (condition.kinds !== undefined && !condition.kinds.includes(facts.kind)) return 0;
  let chance = fuelChance(condition, facts, kind) * voltsChance(condition, facts, kind);
  for (const feature of condition.features ?? []) {
    const share = kind === undefined ? UNKNOWN_FEATURE : (kind.features.get(feature) ?? 0);
    const known = feature === POSITIVE_EARTH ? facts.positiveEarth : facts.features?.[feature];
    chance *= known === undefined ? share : Number(known);
  }
  return chance * ageChance(condition, facts, ageUnknown);
}

/** System volts with their chances: as stated, else the kind's shares, else 12. */
export function voltsOf(
  facts: MachineFacts,
  kind: MachineKind | undefined,
): readonly { readonly volts: number; readonly share: number }[] {
  if (facts.volts !== undefined) return [{ volts: facts.volts, share: 1 }];
  const shares = (kind?.volts ?? []).filter((entry) => entry.share > 0);
  const total = shares.reduce((sum, entry) => sum + entry.share, 0);
  if (total <= 0) return [{ volts: 12, share: 1 }];
  return shares.map((entry) => ({ volts: entry.volts, share: entry.share / total }));
}

function fuelChance(
  condition: MachineCondition,
  facts: MachineFacts,
  kind: MachineKind | undefined,
): number {
  const wanted = condition.fuels;
  if (wanted === undefined) return 1;
  if (facts.fuel !== undefined) return Number(wanted.includes(facts.fuel));
  if (kind === undefined) return wanted.length / fuels.length;
  let held = 0;
  let total = 0;
  for (const fuel of fuels) {
    const share = kind.fuels[fuel] ?? 0;
    total += share;
    if (wanted.includes(fuel)) held += share;
  }
  return total > 0 ? held / total : wanted.length / fuels.length;
}

function voltsChance(
  condition: MachineCondition,
  facts: MachineFacts,
  kind: MachineKind | undefined,
): number {
  const wanted = condition.volts;
  if (wanted === undefined) return 1;
  return voltsOf(facts, kind)
    .filter((entry) => wanted.includes(entry.volts))
    .reduce((sum, entry) => sum + entry.share, 0);
}

function ageChance(condition: MachineCondition, facts: MachineFacts, unknown: number): number {
  const { ageFrom, ageTo } = condition;
  if (ageFrom === undefined && ageTo === undefined) return 1;
  if (facts.ageYears === undefined) return unknown;
  return Number(facts.ageYears >= (ageFrom ?? -Infinity) && facts.ageYears <= (ageTo ?? Infinity));
}
