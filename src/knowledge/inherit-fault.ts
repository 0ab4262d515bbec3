import type { Problem } from "../domain/result.ts";
import { suggestion } from "./nearest-word.ts";
import type { FaultText } from "./schema-system.ts";
import { type Placed, problemAt } from "./source-file.ts";

/**
 * Fills in what a fault takes over from the one it is `like`: its rows and the chances that acts
 * cure or hide it. What the fault says itself wins, observation by observation.
 */
export function inheritFaults(
  faults: ReadonlyMap<string, Placed<FaultText>>,
  broken: ReadonlySet<string> = new Set(),
): {
  faults: Map<string, Placed<FaultText>>;
  problems: Problem[];
} {
  const problems: Problem[] = [];
  const done = new Map<string, Placed<FaultText>>();
  const resolve = (id: string, chain: readonly string[]): Placed<FaultText> | undefined => {
    const ready = done.get(id);
    const place = faults.get(id);
    if (ready !== undefined || place === undefined) return ready;
    const parentId = place.value.like;
    if (parentId === undefined) return remember(done, place);
    if (chain.includes(parentId) || parentId === id) {
      problems.push(
        problemAt(place, `"like" goes round in a circle: ${[...chain, id, parentId].join(", ")}.`, [
          "like",
        ]),
      );
      return remember(done, place);
    }
    const parent = resolve(parentId, [...chain, id]);
    if (parent === undefined && !broken.has(parentId)) {
      problems.push(
        problemAt(place, `There is no fault "${parentId}".${suggestion(parentId, faults.keys())}`, [
          "like",
        ]),
      );
    }
    if (parent === undefined) return remember(done, place);
    return remember(done, { ...place, value: merged(place.value, parent.value) });
  };
  for (const id of faults.keys()) resolve(id, []);
  return { faults: done, problems };
}

function remember(
  done: Map<string, Placed<FaultText>>,
  place: Placed<FaultText>,
): Placed<FaultText> {
  done.set(place.id, place);
  return place;
}

function merged(own: FaultText, parent: FaultText): FaultText {
  return {
    ...own,
    cranking: own.cranking ?? parent.cranking,
    firing: own.firing ?? parent.firing,
    shows: { ...parent.shows, ...own.shows },
    "more-likely-when": { ...parent["more-likely-when"], ...own["more-likely-when"] },
    "cured-by": { ...parent["cured-by"], ...own["cured-by"] },
    "hidden-by": { ...parent["hidden-by"], ...own["hidden-by"] },
  };
}
