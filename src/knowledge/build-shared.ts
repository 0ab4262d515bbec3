import type { z } from "zod";
import type { Knowledge, MachineKind, Rates } from "../domain/knowledge.ts";
import type { Problem } from "../domain/result.ts";
import { MachineKindId } from "../domain/vocabulary.ts";
import { condition, onlyIf } from "./build-observation.ts";
import type { Gathered } from "./gather.ts";
import { normalised } from "./row.ts";
import type { MachineFile, RatesText } from "./schema-shared.ts";
import { type Placed, problemAt } from "./source-file.ts";

type Shared = Pick<
  Knowledge,
  | "parts"
  | "tools"
  | "hazards"
  | "redFlags"
  | "accessGroups"
  | "systems"
  | "features"
  | "photos"
  | "urgencyRules"
>;

/** The shared lists, in the words of the domain. */
export function buildShared(gathered: Gathered): Shared {
  return {
    parts: mapped(gathered.parts, ({ id, value, basis }) => ({
      id,
      title: value.title,
      alternates: value.alternates ?? [],
      universal: value.universal,
      fit: value.fit ?? [],
      needs: condition(value.needs),
      price: value.price,
      carryMinutes: value["carry-minutes"],
      source: basis,
    })),
    tools: mapped(gathered.tools, ({ id, value }) => ({ id, title: value.title })),
    hazards: mapped(gathered.hazards, ({ id, value, basis }) => ({
      id,
      title: value.title,
      caution: value.caution,
      safeState: value["safe-state"] ?? [],
      source: basis,
    })),
    redFlags: mapped(gathered.redFlags, ({ id, value, basis }) => ({
      id,
      title: value.title,
      say: value.say,
      emergency: value.emergency,
      offer: value.offer,
      seenAs: onlyIf(value["seen-as"]),
      source: basis,
    })),
    accessGroups: mapped(gathered.access, ({ id, value }) => ({
      id,
      title: value.title,
      minutes: value.minutes,
    })),
    systems: mapped(gathered.systems, ({ id, value }) => ({ id, title: value })),
    features: mapped(gathered.features, ({ id, value }) => ({ id, title: value })),
    photos: new Map([...gathered.photos].map(([id, { value }]) => [id, value])),
    urgencyRules: mapped(gathered.urgency, ({ id, value }) => ({ id, title: value.because })),
  };
}

/** One machine kind; its shares are normalised when they add up to about 1, reported otherwise. */
export function buildMachine(
  place: Placed<MachineFile>,
  systems: readonly string[],
  problems: Problem[],
): MachineKind | undefined {
  const { value, basis } = place;
  const kind = MachineKindId.safeParse(place.id);
  if (!kind.success) {
    problems.push(
      problemAt(place, `"${place.id}" is not one of the machine kinds the program knows.`),
    );
    return undefined;
  }
  checkShares(place, "fuels", Object.values(value.fuels), problems);
  checkShares(place, "volts", Object.values(value.volts), problems);
  const voltShares = normalised(Object.values(value.volts));
  return {
    id: kind.data,
    title: value.title,
    synonyms: value.synonyms,
    fuels: value.fuels,
    volts: Object.keys(value.volts).map((volts, index) => ({
      volts: Number(volts),
      share: voltShares[index] ?? 0,
    })),
    systems: (value.systems === "all" ? systems : value.systems).filter(
      (system) => !(value.without ?? []).includes(system),
    ),
    features: mapped(value.features, (share) => (share === "always" ? 1 : share)),
    circuits: {},
    offer: value.offer,
    family: value.family,
    source: basis,
  };
}

function checkShares(
  place: Placed<unknown>,
  key: string,
  shares: readonly number[],
  problems: Problem[],
): void {
  const sum = shares.reduce((total, share) => total + share, 0);
  if (Math.abs(sum - 1) <= 0.02) return;
  problems.push(
    problemAt(place, `These shares add up to ${sum.toFixed(2)}; they must add up to 1.`, [key]),
  );
}

/** The rates, all in technician-minutes. */
export function buildRates(text: z.infer<typeof RatesText>): Rates {
  return {
    travelMinutes: text["travel-minutes"],
    secondTripMinutes: text["second-trip-minutes"],
    collectMinutes: text["collect-minutes"],
    operatorMinute: text["operator-minute"],
    standstillPerHour: text["standstill-per-hour"],
    callForHelpMinutes: text["call-for-help-minutes"],
    somethingElse: text["something-else"],
    nothingWrong: text["nothing-wrong"],
    repeatsItself: text["repeats-itself"],
    curedByTheWay: text["cured-by-the-way"],
    pairCutOff: text["pair-cut-off"],
    shareStrength: text["share-strength"],
    unasked: text["told-unasked"],
  };
}

function mapped<In, Out>(
  from: ReadonlyMap<string, In> | Readonly<Record<string, In>>,
  make: (value: In) => Out,
): Map<string, Out> {
  const entries = from instanceof Map ? [...from] : Object.entries(from);
  return new Map(entries.map(([id, value]) => [id, make(value)]));
}
