import type { CaseState } from "../../src/domain/case-state.ts";
import type { Next, Triage } from "../../src/domain/triage.ts";
import { holds } from "../../src/talk/still-open.ts";
import { Dialog, workshop } from "./dialog.ts";

const { knowledge } = workshop;

/** Numerical Recipes' linear congruential generator: the same monkey for the same seed. */
export function dice(seed: number) {
  let state = seed >>> 0;
  return (sides: number): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * sides);
  };
}

export const pick = <T>(list: readonly T[], roll: (sides: number) => number): T => {
  const one = list[roll(list.length)];
  if (one === undefined) throw new RangeError("nothing to pick from");
  return one;
};

const first = new Dialog().say("petrol garden tractor, one click, lights stay bright");
export const standing: Triage = first.desk.triage(first.state, "technician");

const askable = [...knowledge.checks.values(), ...knowledge.acts.values()].filter((one) =>
  one.performers.includes("operator"),
);

const known = (state: CaseState, observation: string) =>
  state.answers.some((given) => given.report.observation === observation);

/**
 * In the place of the engine, which takes too long for so many updates: asks any check or act of the
 * knowledge that may be asked, in an order and with a count of what is left that follow no reason.
 */
export function whim(state: CaseState): Next {
  const { askedNow, passed, answers } = state;
  const open = askable.filter(
    (one) =>
      !askedNow.includes(one.id) &&
      !passed.includes(`check:${one.id}`) &&
      !passed.includes(`act:${one.id}`) &&
      (!("onlyIf" in one) || holds(state, one.onlyIf)) &&
      (!("yields" in one) || one.yields === undefined || !known(state, one.yields)),
  );
  const turn = answers.length * 7 + state.acts.length * 13;
  const chosen = open[turn % Math.max(1, open.length)];
  if (chosen === undefined || answers.length > 14) return { kind: "stop", because: "clear-enough" };
  return {
    kind: "ask",
    check: chosen.id,
    isAct: knowledge.acts.has(chosen.id),
    decides: "chat",
    valueMinutes: 1 + (turn % 5),
    aboutMore: (turn * 5) % 9,
    trip: open.slice(0, 4).map(({ id }) => id),
  };
}

/** What people write, and what nobody would. */
export const texts = [
  "one click",
  "2",
  "I don't know",
  "the lights stay bright",
  "the cat sat on the mat",
  "battery 12.4 V at rest",
  "48 volts",
  "diesel",
  "ride-on mower",
  "back",
  "more",
  "stop",
  "I want to talk to a person",
  "i smell petrol, there is a puddle",
  "It is safe now, go on",
  "no",
  "",
  "🙈🙈🙈",
  "x".repeat(4000),
  "it started again by itself",
  "my husband says the starter is new",
];
