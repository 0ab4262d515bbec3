import type { Knowledge } from "../domain/knowledge.ts";
import type { Problem } from "../domain/result.ts";
import { checkDeadEnds } from "./check-dead-ends.ts";
import type { Gathered } from "./gather.ts";
import { inheritFaults } from "./inherit-fault.ts";
import type { CheckText } from "./schema-system.ts";
import { createSeparator, meet } from "./separation.ts";
import { type Placed, problemAt } from "./source-file.ts";

/** Two faults count as told apart when their best check doubles the odds on average (3 dB). */
export const TOLD_APART_DECIBANS = 3;

/** A question fits six buttons, one of them "don't know". */
const MOST_ANSWERS = 5;

const drag: readonly string[] = ["control", "pull-in", "motor", "mesh", "engine-drag"];
const burning: readonly string[] = ["combustion", "keeps-running"];

/** What can be read, but does not make sense: incomplete rows, dead ends, faults nobody can tell apart. */
export function checkSense(gathered: Gathered, knowledge: Knowledge): Problem[] {
  return [
    ...missingStages(gathered),
    ...[...gathered.checks.values()].flatMap((place) => unfitMenu(place, gathered)),
    ...checkDeadEnds(gathered, knowledge),
    ...inseparable(gathered, knowledge),
  ];
}

/** A fault that blocks a stage must say what is then seen. */
function missingStages(gathered: Gathered): Problem[] {
  const { faults } = inheritFaults(gathered.faults);
  return [...faults.values()].flatMap((place) => {
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
  const { finds, by, menu } = place.value;
  const observation = gathered.observations.get(finds)?.value;
  const states = Object.keys(observation?.states ?? {});
  const listed = Object.values(menu ?? {}).flatMap((heading) => heading.states);
  if (menu === undefined) {
    const asked = observation?.kind === "states" && by.includes("operator");
    if (!asked || states.length <= MOST_ANSWERS || place.value.step === "try") return [];
    return [
      problemAt(
        place,
        `${states.length} answers do not fit the buttons (${MOST_ANSWERS} at most); group them under "menu:".`,
      ),
    ];
  }
  const odd = states.filter((state) => listed.filter((one) => one === state).length !== 1);
  if (odd.length === 0) return [];
  return [
    problemAt(place, `The menu must hold each answer once; missing or twice: ${odd.join(", ")}.`, [
      "menu",
    ]),
  ];
}

function inseparable(gathered: Gathered, knowledge: Knowledge): Problem[] {
  const faults = [...knowledge.faults.values()];
  const separate = createSeparator(knowledge);
  return faults.flatMap((one, index) =>
    faults.slice(index + 1).flatMap((other): Problem[] => {
      const place = gathered.faults.get(one.id);
      if (place === undefined) return [];
      const declared = declares(gathered, one.id, other.id) || declares(gathered, other.id, one.id);
      if (!meet(one, other, knowledge)) return [];
      const { check, decibans } = separate(one.id, other.id);
      const apart = decibans >= TOLD_APART_DECIBANS;
      if (apart !== declared) return [];
      const best =
        check === ""
          ? "no check touches either"
          : `the best, "${check}", gives ${decibans.toFixed(1)} dB`;
      return [
        declared
          ? problemAt(
              place,
              `"${one.id}" and "${other.id}" are said not to be told apart, but "${check}" does so (${decibans.toFixed(1)} dB); remove the line "cannot-be-told-from".`,
            )
          : problemAt(
              place,
              `No check tells "${one.id}" from "${other.id}" (${best}); add a check, merge the two, or say "cannot-be-told-from:".`,
            ),
      ];
    }),
  );
}

function declares(gathered: Gathered, one: string, other: string): boolean {
  return gathered.faults.get(one)?.value["cannot-be-told-from"]?.includes(other) ?? false;
}
