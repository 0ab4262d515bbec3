import type { LatentGroup, Observation, Row } from "../domain/knowledge.ts";
import type { BuiltFault } from "./build-fault.ts";
import { suggestion } from "./nearest-word.ts";
import { checkState, distribution, type RowContext } from "./row.ts";
import type { LatentText } from "./schema-system.ts";
import type { RowText } from "./schema-words.ts";
import { type Path, type Placed, problemAt } from "./source-file.ts";

/** What the latent groups are built from. */
export interface LatentContext extends RowContext {
  readonly observations: ReadonlyMap<string, Observation>;
}

/** A latent group without its faults, which are added by `withFaults`. */
export function buildLatent(place: Placed<LatentText>, context: LatentContext): LatentGroup {
  const { title, states, usual } = place.value;
  const emission = new Map<string, readonly Row[]>();
  for (const [member, rows] of Object.entries(place.value["shown-by"])) {
    const inside = ["shown-by", member];
    const table = rowTable(rows, { place, inside, parentStates: states, member }, context);
    if (table !== undefined) emission.set(member, table);
  }
  return {
    id: place.id,
    title,
    states,
    usual: distribution(usual, states, { place, inside: ["usual"] }, context),
    members: [...emission.keys()],
    byFault: new Map(),
    emission,
  };
}

/** Adds P(latent state | fault) of every fault that names the group. */
export function withFaults(group: LatentGroup, faults: Iterable<BuiltFault>): LatentGroup {
  const byFault = new Map<string, Row>();
  for (const { fault, latentRows } of faults) {
    const row = latentRows.get(group.id);
    if (row !== undefined) byFault.set(fault.id, row);
  }
  return { ...group, byFault };
}

/** Where a table of rows stands, and what its rows and columns are. */
export interface TablePlace {
  readonly place: Placed<unknown>;
  readonly inside: Path;
  readonly parentStates: readonly string[];
  readonly member: string;
}

/** One row for each parent state over the states of the member; a missing row is reported. */
export function rowTable(
  rows: Readonly<Record<string, RowText>>,
  at: TablePlace,
  context: LatentContext,
): readonly Row[] | undefined {
  const member = context.observations.get(at.member);
  if (member === undefined) {
    if (context.broken.has(at.member)) return undefined;
    const near = suggestion(at.member, context.observations.keys());
    context.problems.push(
      problemAt(at.place, `There is no observation "${at.member}".${near}`, at.inside),
    );
    return undefined;
  }
  for (const state of Object.keys(rows)) {
    context.problems.push(
      ...checkState(state, at.parentStates, { place: at.place, inside: [...at.inside, state] }),
    );
  }
  const states = member.states.map((state) => state.id);
  return at.parentStates.map((state) => {
    const row = rows[state];
    if (row !== undefined)
      return distribution(row, states, { place: at.place, inside: [...at.inside, state] }, context);
    context.problems.push(problemAt(at.place, `The row for "${state}" is missing.`, at.inside));
    return states.map(() => 1 / states.length);
  });
}
