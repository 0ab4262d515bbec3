import type { JointLikelihood } from "../domain/joint-likelihood.ts";
import type { Knowledge, LatentGroup, Observation, Row } from "../domain/knowledge.ts";
import { OutOfRange, UnknownId } from "../domain/result.ts";
import { crankingStates, ON_START } from "../domain/vocabulary.ts";
import { combiningOf, earlierDecides } from "./combine-faults.ts";
import { createJointGroup } from "./joint-group.ts";
import { createListGroup } from "./list-group.ts";
import type { EvidenceGroup, Hypotheses } from "./model.ts";
import { shareRows } from "./shared-rows.ts";
import { bothInChain, composeStart, startRow } from "./start-rows.ts";
import { createStateGroup, type Member } from "./state-group.ts";

/**
 * Every observation in exactly one group: views of another observation hang below it, members of
 * a latent group hang on its state, all others stand alone.
 * @throws UnknownId, OutOfRange
 */
export function buildGroups(
  knowledge: Knowledge,
  hypotheses: Hypotheses,
  circuits: Circuits,
): readonly EvidenceGroup[] {
  let groups = rowGroups(knowledge, hypotheses);
  for (const joint of circuits.joint) {
    const touched = (group: EvidenceGroup): boolean =>
      group.observations.some((id) => joint.observations.has(id));
    const rows = groups.filter(touched);
    if (rows.length === 0) continue;
    const group = createJointGroup({ knowledge, hypotheses, joint, rows, volts: circuits.volts });
    groups = [...groups.filter((other) => !touched(other)), group];
  }
  return groups;
}

/** Simulated circuits of the machine and its most likely volts. */
export interface Circuits {
  readonly joint: readonly JointLikelihood[];
  readonly volts: number;
}

function rowGroups(knowledge: Knowledge, hypotheses: Hypotheses): readonly EvidenceGroup[] {
  const groups: EvidenceGroup[] = [];
  const views = viewsOf(knowledge);
  const placed = new Set<string>();
  for (const latent of knowledge.latentGroups.values()) {
    const members = latent.members.flatMap((id) => {
      const observation = knowledge.observations.get(id);
      if (observation === undefined) throw new UnknownId("observation", id);
      if (observation.follows !== undefined || id === ON_START) return [];
      placed.add(id);
      return [memberOf(observation, views, emissionOf(latent, observation))];
    });
    if (members.length === 0) continue;
    const rows = shareRows(knowledge, hypotheses, latentSource(latent));
    groups.push(createStateGroup(latent.id, rows, members));
  }
  for (const observation of knowledge.observations.values()) {
    if (placed.has(observation.id) || observation.follows !== undefined) continue;
    if (observation.states.length === 0) continue;
    groups.push(aloneGroup(knowledge, hypotheses, { observation, views }));
  }
  return groups;
}

type Views = ReadonlyMap<string, readonly Observation[]>;

function viewsOf(knowledge: Knowledge): Views {
  const views = new Map<string, Observation[]>();
  for (const observation of knowledge.observations.values()) {
    const above = observation.follows?.observation;
    if (above === undefined) continue;
    if (!knowledge.observations.has(above)) throw new UnknownId("observation", above);
    views.set(above, [...(views.get(above) ?? []), observation]);
  }
  return views;
}

function memberOf(observation: Observation, views: Views, emission: Float64Array | null): Member {
  return {
    id: observation.id,
    states: observation.states.length,
    emission,
    views: (views.get(observation.id) ?? []).map((view) => {
      const rows = view.follows?.rows ?? [];
      const shape = { above: observation.states.length, states: view.states.length };
      return memberOf(view, views, flatten(view.id, rows, shape));
    }),
  };
}

function emissionOf(latent: LatentGroup, observation: Observation): Float64Array {
  const rows = latent.emission.get(observation.id);
  if (rows === undefined) throw new UnknownId("emission", `${latent.id} ${observation.id}`);
  const shape = { above: latent.states.length, states: observation.states.length };
  return flatten(observation.id, rows, shape);
}

function flatten(
  id: string,
  rows: readonly Row[],
  shape: { readonly above: number; readonly states: number },
): Float64Array {
  if (rows.length !== shape.above) throw new OutOfRange(id, rows.length, `${shape.above} rows`);
  for (const row of rows) {
    const sum = row.reduce((total, value) => total + value, 0);
    const sound = row.length === shape.states && row.every((value) => value >= 0);
    if (!sound || Math.abs(sum - 1) > 1e-6) throw new OutOfRange(id, sum, "a row that sums to 1");
  }
  return Float64Array.from(rows.flat());
}

function latentSource(latent: LatentGroup) {
  return {
    id: latent.id,
    width: latent.states.length,
    usual: latent.usual,
    rowOf: (fault: string) => latent.byFault.get(fault),
    combining: { alone: (row: Row) => row, both: earlierDecides },
  };
}

function aloneGroup(
  knowledge: Knowledge,
  hypotheses: Hypotheses,
  at: { readonly observation: Observation; readonly views: Views },
): EvidenceGroup {
  const { observation, views } = at;
  const { id, usual } = observation;
  const width = observation.states.length;
  const isList = observation.kind === "list" || observation.kind === "text";
  if (id === ON_START) {
    const rows = shareRows(knowledge, hypotheses, startSource(knowledge, observation));
    return createStateGroup(id, rows, [memberOf(observation, views, null)]);
  }
  const rows = shareRows(knowledge, hypotheses, {
    id,
    width,
    usual,
    rowOf: (fault) => knowledge.faults.get(fault)?.rows.get(id),
    combining: combiningOf(observation, usual, isList),
    separate: isList,
  });
  if (isList) return createListGroup(id, rows);
  return createStateGroup(id, rows, [memberOf(observation, views, null)]);
}

function startSource(knowledge: Knowledge, observation: Observation) {
  const states = observation.states.map((state) => state.id);
  const usual = twoStages(observation.usual, states);
  return {
    id: ON_START,
    width: usual.length,
    usual,
    rowOf: (id: string) => {
      const fault = knowledge.faults.get(id);
      return fault === undefined ? undefined : startRow(fault);
    },
    combining: { alone: (row: Row) => row, both: bothInChain },
    finish: (row: Row) => composeStart(row, states),
    separate: true,
  };
}

/** The usual row of `on-start` taken apart into its two stages. */
function twoStages(usual: Row, states: readonly string[]): Row {
  const cranking = crankingStates.slice(0, -1).map((state) => usual[states.indexOf(state)] ?? 0);
  const turns = Math.max(0, 1 - cranking.reduce((sum, value) => sum + value, 0));
  const firing = ["turns-no-fire", "fires-then-dies", "runs-only-while-held"].map((state) =>
    turns > 0 ? (usual[states.indexOf(state)] ?? 0) / turns : 0,
  );
  const runs = Math.max(0, 1 - firing.reduce((sum, value) => sum + value, 0));
  return [...cranking, turns, ...firing, runs];
}
