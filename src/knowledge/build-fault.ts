import type { Fault, Observation, Row } from "../domain/knowledge.ts";
import { crankingStates, firingStates } from "../domain/vocabulary.ts";
import { condition } from "./build-observation.ts";
import { contextRow } from "./context-row.ts";
import { suggestion } from "./nearest-word.ts";
import { distribution, presences, probabilityOf, type RowContext } from "./row.ts";
import type { FaultText } from "./schema-system.ts";
import type { Often, RowText } from "./schema-words.ts";
import { type Placed, problemAt } from "./source-file.ts";
import { isOnStart, type StartRows } from "./start-rows.ts";

/** What is known when the faults are built. */
export interface FaultContext extends RowContext {
  readonly observations: ReadonlyMap<string, Observation>;
  readonly latentStates: ReadonlyMap<string, readonly string[]>;
  readonly usualStart: StartRows;
}

/** A fault, and its rows over latent groups, which the groups take over. */
export interface BuiltFault {
  readonly fault: Fault;
  readonly latentRows: ReadonlyMap<string, Row>;
}

/** Turns one written fault (already inherited) into rows; mistakes go to the context. */
export function buildFault(place: Placed<FaultText>, context: FaultContext): BuiltFault {
  const text = place.value;
  const rows = new Map<string, Row>();
  const latentRows = new Map<string, Row>();
  for (const [id, row] of Object.entries(text.shows ?? {})) {
    const states = context.latentStates.get(id);
    if (states !== undefined) {
      latentRows.set(id, distribution(row, states, { place, inside: ["shows", id] }, context));
    } else {
      const shown = shownRow(place, id, row, context);
      if (shown !== undefined) rows.set(id, shown);
    }
  }
  for (const [id, factors] of Object.entries(text["more-likely-when"] ?? {})) {
    const row = contextRow(place, id, factors, context);
    if (row !== undefined) rows.set(id, row);
  }
  return { fault: { ...plainParts(place, context), rows }, latentRows };
}

function shownRow(
  place: Placed<FaultText>,
  id: string,
  row: RowText,
  context: FaultContext,
): Row | undefined {
  const observation = context.observations.get(id);
  const inside = ["shows", id];
  const refuse = (says: string): undefined => {
    context.problems.push(problemAt(place, says, inside));
    return undefined;
  };
  if (isOnStart(id))
    return refuse('Write "cranking:" and "firing:" instead: they are the two stages of on-start.');
  if (observation === undefined) {
    if (context.broken.has(id)) return undefined;
    const known = [...context.observations.keys(), ...context.latentStates.keys()];
    return refuse(`There is no observation "${id}".${suggestion(id, known)}`);
  }
  if (observation.context)
    return refuse(`"${id}" is a circumstance; write it under "more-likely-when:" as factors.`);
  if (observation.follows)
    return refuse(
      `"${id}" follows from "${observation.follows.observation}"; no row of its own is needed.`,
    );
  if (observation.latent)
    return refuse(
      `"${id}" belongs to the group "${observation.latent}"; give a row for that instead.`,
    );
  const states = observation.states.map((state) => state.id);
  const at = { place, inside };
  return observation.kind === "list"
    ? presences(row, states, { ...at, otherwise: observation.usual }, context)
    : distribution(row, states, at, context);
}

function plainParts(place: Placed<FaultText>, context: FaultContext): Omit<Fault, "rows"> {
  const text = place.value;
  const stage = (key: "cranking" | "firing", states: readonly string[]): Row => {
    const row = text[key];
    if (row === undefined) return context.usualStart[key];
    return distribution(row, states, { place, inside: [key] }, context);
  };
  return {
    id: place.id,
    title: text.title,
    system: place.source.id,
    group: text.group,
    share: text.share,
    source: place.basis,
    blocks: text.blocks,
    needs: condition(text.needs),
    factors: (text["more-likely"] ?? []).map((factor) => ({
      when: condition(factor.when),
      times: factor.times,
      because: factor.because,
    })),
    cranking: stage("cranking", crankingStates),
    firing: stage("firing", firingStates),
    brings: chances(text.brings, context),
    remedies: text.remedies,
    explain: text.explain,
    notYet: Object.entries(text["not-yet"] ?? {}).map(([part, before]) => ({ part, before })),
    circuit: text.circuit ?? false,
  };
}

/** Words or numbers by id, as probabilities. */
export function chances(
  text: Readonly<Record<string, Often>> | undefined,
  context: RowContext,
): ReadonlyMap<string, number> {
  return new Map(
    Object.entries(text ?? {}).map(([id, often]) => [
      id,
      probabilityOf(often, context.frequencies),
    ]),
  );
}
