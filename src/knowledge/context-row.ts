import type { Observation, Row } from "../domain/knowledge.ts";
import { suggestion } from "./nearest-word.ts";
import { checkState, normalised, type RowContext } from "./row.ts";
import type { FaultText } from "./schema-system.ts";
import { type Placed, problemAt } from "./source-file.ts";

/**
 * P(state | fault) of a circumstance, from how many times more likely each state makes the fault:
 * in proportion to usual × factor, with factor 1 where a state is not named. For a list each
 * member stands alone: present usual × factor against absent (1 − usual).
 */
export function contextRow(
  place: Placed<FaultText>,
  id: string,
  factors: Readonly<Record<string, number>>,
  context: RowContext & { readonly observations: ReadonlyMap<string, Observation> },
): Row | undefined {
  const inside = ["more-likely-when", id];
  const observation = context.observations.get(id);
  if (observation === undefined) {
    if (context.broken.has(id)) return undefined;
    const circumstances = [...context.observations.values()].filter((one) => one.context);
    const known = circumstances.map((one) => one.id);
    context.problems.push(
      problemAt(place, `There is no circumstance "${id}".${suggestion(id, known)}`, inside),
    );
    return undefined;
  }
  if (!observation.context) {
    context.problems.push(
      problemAt(
        place,
        `"${id}" is no circumstance (context: true); write a row under "shows:".`,
        inside,
      ),
    );
    return undefined;
  }
  const states = observation.states.map((state) => state.id);
  for (const state of Object.keys(factors)) {
    context.problems.push(...checkState(state, states, { place, inside: [...inside, state] }));
  }
  const weights = observation.usual.map(
    (usual, index) => usual * (factors[states[index] ?? ""] ?? 1),
  );
  if (observation.kind !== "list") return normalised(weights);
  return weights.map((present, index) => present / (present + 1 - (observation.usual[index] ?? 0)));
}
