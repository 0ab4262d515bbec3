import type {
  Act,
  Fault,
  Knowledge,
  LatentGroup,
  MachineKind,
  Observation,
} from "../domain/knowledge.ts";
import type { Problem } from "../domain/result.ts";
import type { MachineKindId } from "../domain/vocabulary.ts";
import { ON_START } from "../domain/vocabulary.ts";
import { type BuiltFault, buildFault } from "./build-fault.ts";
import { buildLatent, rowTable, withFaults } from "./build-latent.ts";
import { buildObservation } from "./build-observation.ts";
import { buildMachine, buildRates, buildShared } from "./build-shared.ts";
import { buildAct, buildCheck, buildRemedy } from "./build-tasks.ts";
import { type ActOutcome, derivedRows, silenced } from "./derive-rows.ts";
import type { Gathered } from "./gather.ts";
import { inheritFaults } from "./inherit-fault.ts";
import type { RowContext } from "./row.ts";
import { usualStartRows } from "./start-rows.ts";

/**
 * Resolves everything that was gathered into the checked model.
 * @param version fingerprint of the content
 * @returns undefined only where rates or frequency words are missing altogether
 */
export function buildKnowledge(
  written: Gathered,
  version: string,
): { knowledge: Knowledge | undefined; problems: Problem[] } {
  const rates = written.rates.get("rates")?.value;
  const words = written.words.get("words")?.value;
  if (rates === undefined || words === undefined) {
    return { knowledge: undefined, problems: missingShared(rates, words, written.broken) };
  }
  const inherited = inheritFaults(written.faults, written.broken);
  const gathered: Gathered = { ...written, faults: inherited.faults };
  const problems: Problem[] = [...inherited.problems];
  const context: RowContext = { frequencies: words.frequency, problems, broken: written.broken };
  const defaults = { byReporter: words.reliability, namedFalsely: words["named-falsely"] };

  const bare = mapValues(gathered.observations, (place) =>
    buildObservation(place, { ...context, defaults }),
  );
  const groups = mapValues(gathered.latent, (place) =>
    buildLatent(place, { ...context, observations: bare }),
  );
  const observations = linked(bare, groups, { gathered, context });
  const built = mapValues(gathered.faults, (place) =>
    buildFault(place, {
      ...context,
      observations,
      latentStates: mapValues(groups, (group) => group.states),
      usualStart: usualStartRows(observations.get(ON_START)),
    }),
  );
  const latentGroups = mapValues(groups, (group) => withFaults(group, built.values()));
  const ownRows = mapValues(built, ({ fault }) => fault);
  const acts = mapValues(gathered.acts, (place) =>
    buildAct(place, { ...context, gathered, faults: ownRows, observations }),
  );
  const knowledge: Knowledge = {
    version,
    faults: finished(built, { observations, acts, latentGroups, gathered }),
    observations,
    checks: mapValues(gathered.checks, (place) => buildCheck(place, gathered)),
    acts,
    remedies: mapValues(gathered.remedies, (place) => buildRemedy(place, gathered, context)),
    latentGroups,
    machines: machinesOf(gathered, problems),
    rates: buildRates(rates),
    ...buildShared(gathered),
  };
  return { knowledge, problems };
}

function missingShared(rates: unknown, words: unknown, broken: ReadonlySet<string>): Problem[] {
  const missing = [rates === undefined ? "rates" : "", words === undefined ? "words" : ""];
  return missing
    .filter((name) => name !== "" && !broken.has(name))
    .map((name) => ({
      file: `flows/shared/${name}.yaml`,
      says: `The section "${name}:" is missing or cannot be read.`,
    }));
}

/** Adds to each observation its latent group, and the table it follows another by. */
function linked(
  bare: ReadonlyMap<string, Observation>,
  groups: ReadonlyMap<string, LatentGroup>,
  { gathered, context }: { gathered: Gathered; context: RowContext },
): Map<string, Observation> {
  const groupOf = new Map<string, string>();
  for (const group of groups.values()) for (const id of group.members) groupOf.set(id, group.id);
  return mapValues(bare, (observation, id) => {
    const latent = groupOf.get(id);
    const place = gathered.observations.get(id);
    const [parent, rows] = Object.entries(place?.value.follows ?? {})[0] ?? [];
    const withLatent = latent === undefined ? observation : { ...observation, latent };
    if (place === undefined || parent === undefined || rows === undefined) return withLatent;
    const parentStates = (bare.get(parent)?.states ?? []).map((state) => state.id);
    const at = { place, inside: ["follows", parent], parentStates, member: id };
    const table = rowTable(rows, at, { ...context, observations: bare });
    if (table === undefined) return withLatent;
    return { ...withLatent, follows: { observation: parent, rows: table } };
  });
}

interface Finish {
  readonly observations: ReadonlyMap<string, Observation>;
  readonly acts: ReadonlyMap<string, Act>;
  readonly latentGroups: ReadonlyMap<string, LatentGroup>;
  readonly gathered: Gathered;
}

/** Faults with the rows that nobody writes, and with silent states made silent. */
function finished(built: ReadonlyMap<string, BuiltFault>, all: Finish): Map<string, Fault> {
  const outcomes = [...all.acts.values()].flatMap((act): ActOutcome[] => {
    const { yields, curedState } = act;
    if (yields === undefined || curedState === undefined) return [];
    const silent = all.gathered.observations.get(yields)?.value["says-nothing"] ?? [];
    return [{ id: act.id, cures: act.cures, masks: act.masks, yields, curedState, silent }];
  });
  const latent = [...all.latentGroups.values()];
  return mapValues(built, ({ fault }) => {
    const rows = new Map(derivedRows(fault, all.observations, { outcomes, latent }));
    for (const [id, row] of rows) {
      const observation = all.observations.get(id);
      const silent = all.gathered.observations.get(id)?.value["says-nothing"] ?? [];
      if (observation === undefined || silent.length === 0) continue;
      const indexes = observation.states.flatMap((state, index) =>
        silent.includes(state.id) ? [index] : [],
      );
      rows.set(id, silenced(row, indexes, observation.usual));
    }
    return { ...fault, rows };
  });
}

function machinesOf(gathered: Gathered, problems: Problem[]): Map<MachineKindId, MachineKind> {
  const machines = new Map<MachineKindId, MachineKind>();
  for (const place of gathered.machines.values()) {
    const machine = buildMachine(place, [...gathered.systems.keys()], problems);
    if (machine !== undefined) machines.set(machine.id, machine);
  }
  return machines;
}

function mapValues<In, Out>(
  from: ReadonlyMap<string, In>,
  make: (value: In, id: string) => Out,
): Map<string, Out> {
  return new Map([...from].map(([id, value]) => [id, make(value, id)]));
}
