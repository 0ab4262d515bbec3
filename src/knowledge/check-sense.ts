import type { Problem } from "../domain/result.ts";
import type { Gathered } from "./gather.ts";
import { inheritFaults } from "./inherit-fault.ts";
import type { CheckText } from "./schema-system.ts";
import { type Placed, problemAt } from "./source-file.ts";

/** A question fits six buttons, one of them "don't know". */
const MOST_ANSWERS = 5;

const drag: readonly string[] = ["control", "pull-in", "motor", "mesh", "engine-drag"];
const burning: readonly string[] = ["combustion", "keeps-running"];

/** What can be read, but makes no sense: incomplete rows, unfit menus. */
export function checkSense(gathered: Gathered): Problem[] {
  return [
    ...missingStages(gathered),
    ...[...gathered.checks.values()].flatMap((place) => unfitMenu(place, gathered)),
  ];
}

/** A fault that blocks a stage must say what is then seen. */
function missingStages(gathered: Gathered): Problem[] {
  const { faults, problems } = inheritFaults(gathered.faults, gathered.broken);
  return [...faults.values()].flatMap((place) => {
    if (problems.length > 0 && place.value.like !== undefined) return [];
    const { blocks, cranking, firing } = place.value;
    if (drag.includes(blocks) && cranking === undefined) {
      return [
        problemAt(place, `It blocks "${blocks}", so say what the key then does: add "cranking:".`, [
          "blocks",
        ]),
      ];
    }
    if (burning.includes(blocks) && firing === undefined) {
      return [
        problemAt(
          place,
          `It blocks "${blocks}", so say what the engine then does: add "firing:".`,
          ["blocks"],
        ),
      ];
    }
    return [];
  });
}

/** Many answers need a menu, and a menu must hold each answer once. */
function unfitMenu(place: Placed<CheckText>, gathered: Gathered): Problem[] {
  const { finds, by, menu, "not-offered": left } = place.value;
  const observation = gathered.observations.get(finds)?.value;
  const states = Object.keys(observation?.states ?? {});
  const listed = Object.values(menu ?? {}).flatMap((heading) => heading.states);
  if (menu === undefined) {
    const asked = observation?.kind === "states" && by.includes("operator");
    if (!asked || states.length <= MOST_ANSWERS || place.value.step === "try") return [];
    return [
      problemAt(
        place,
        `${states.length} answers do not fit the buttons (${MOST_ANSWERS} at most); group ` +
          `them under "menu:".`,
      ),
    ];
  }
  const wanted = (state: string) => (left?.includes(state) ? 0 : 1);
  const odd = states.filter(
    (state) => listed.filter((one) => one === state).length !== wanted(state),
  );
  if (odd.length === 0) return [];
  return [
    problemAt(place, `The menu must hold each answer once; missing or twice: ${odd.join(", ")}.`, [
      "menu",
    ]),
  ];
}
