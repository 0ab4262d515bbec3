import type { Fault, Knowledge } from "../domain/knowledge.ts";
import type { Problem } from "../domain/result.ts";
import type { Gathered } from "./gather.ts";
import { meet } from "./separation.ts";
import { type Placed, problemAt } from "./source-file.ts";
import { isOnStart } from "./start-rows.ts";

/** Things that lead nowhere: nobody asks for them, nothing depends on them, nobody uses them. */
export function checkDeadEnds(gathered: Gathered, knowledge: Knowledge): Problem[] {
  return [
    ...unaskedObservations(gathered, knowledge),
    ...impossibleFaults(gathered, knowledge),
    ...circularChecks(gathered),
    ...unused(gathered),
  ];
}

function unaskedObservations(gathered: Gathered, knowledge: Knowledge): Problem[] {
  const asked = new Set([...knowledge.checks.values()].map((check) => check.yields));
  for (const act of knowledge.acts.values()) asked.add(act.yields ?? "");
  const faults = [...knowledge.faults.values()];
  return [...gathered.observations.values()].flatMap((place) => {
    const problems: Problem[] = [];
    if (!asked.has(place.id) && !place.value["told-only"]) {
      problems.push(
        problemAt(place, `No check and no act finds "${place.id}"; add a check, or remove it.`),
      );
    }
    const touched = isOnStart(place.id) || faults.some((fault) => fault.rows.has(place.id));
    if (!touched && !place.value.context) {
      problems.push(
        problemAt(
          place,
          `No fault shows in "${place.id}", so asking for it is no use; add rows, or remove it.`,
        ),
      );
    }
    return problems;
  });
}

function impossibleFaults(gathered: Gathered, knowledge: Knowledge): Problem[] {
  const possible = (fault: Fault | undefined) =>
    fault !== undefined && meet(fault, fault, knowledge);
  return [...gathered.faults.values()]
    .filter((place) => !possible(knowledge.faults.get(place.id)))
    .map((place) =>
      problemAt(
        place,
        `No machine kind can have "${place.id}": look at its "needs:" and at the machines' ` +
          `fuels and features.`,
      ),
    );
}

/** Checks that wait for each other can never be asked. */
function circularChecks(gathered: Gathered): Problem[] {
  const waits = (id: string, chain: readonly string[]): boolean =>
    (gathered.checks.get(id)?.value.after ?? []).some(
      (before) => chain.includes(before) || waits(before, [...chain, before]),
    );
  return [...gathered.checks.values()]
    .filter((place) => waits(place.id, [place.id]))
    .map((place) =>
      problemAt(
        place,
        `"${place.id}" waits for a check that waits for it; neither can ever be asked.`,
        ["after"],
      ),
    );
}

function unused(gathered: Gathered): Problem[] {
  const remedies = [...gathered.faults.values()].flatMap(({ value }) => value.remedies);
  const parts = [...gathered.remedies.values()].flatMap(({ value }) => value.parts ?? []);
  const alternates = [...gathered.parts.values()].flatMap(({ value }) => value.alternates ?? []);
  return [
    ...notIn(
      gathered.remedies,
      remedies,
      "No fault names this remedy; add it to one, or remove it.",
    ),
    ...notIn(
      gathered.parts,
      [...parts, ...alternates],
      "No remedy needs this part; add it to one, or remove it.",
    ),
  ];
}

function notIn(
  section: ReadonlyMap<string, Placed<unknown>>,
  used: readonly string[],
  says: string,
): Problem[] {
  return [...section.values()]
    .filter((place) => !used.includes(place.id))
    .map((place) => problemAt(place, says));
}
