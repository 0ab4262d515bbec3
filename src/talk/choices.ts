import type { Asking, KnownMachine } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Arg, Phrase } from "../domain/effects.ts";
import type { Check, Knowledge, MachineKind, Observation } from "../domain/knowledge.ts";
import { wordKey } from "../domain/knowledge.ts";
import { phrase } from "./decision.ts";
import { equipment, THAT_IS_ALL } from "./equipment.ts";
import { tripAnswers } from "./trip.ts";

/** One answer that can be pressed; the same list also reads typed answers. */
export interface Choice {
  readonly value: string;
  readonly label: Phrase;
  /** The state it stands for, where the question asks for an observation. */
  readonly state?: string;
}

/** Values that mean the same in every question. */
export const DONT_KNOW = "?";
export const SKIP = "-";
/** Nothing of what the safety question names. */
export const ALL_CLEAR = "clear";
/** Prefix of a value that only leads to another list of answers. */
export const LEADS_TO = ">";

/** Answer buttons on one screen, don't-know among them. */
const MOST_BUTTONS = 6;

export const dontKnow: Choice = { value: DONT_KNOW, label: phrase("answer-dont-know") };
const skip: Choice = { value: SKIP, label: phrase("answer-skip") };

const know = (key: string): Phrase => ({ know: key });

export const stateLabel = (observation: string, state: string): Phrase =>
  know(wordKey("state", `${observation}.${state}`));

function stateChoice(observation: Observation, state: string): Choice {
  return { value: state, label: stateLabel(observation.id, state), state };
}

/** Answers that do not fit on one screen go on under "other answers". */
function page(choices: readonly Choice[], from: number): Choice[] {
  const room = MOST_BUTTONS - 1;
  if (choices.length - from <= room) return [...choices.slice(from), dontKnow];
  const shown = choices.slice(from, from + room - 1);
  const rest = { value: `${LEADS_TO}page:${from + room - 1}`, label: phrase("answer-other") };
  return [...shown, rest, dontKnow];
}

function checkChoices(check: Check, observation: Observation, menu: string | undefined): Choice[] {
  if (observation.kind === "number" || observation.kind === "text") return [dontKnow];
  if (check.menu.length > 0 && menu === undefined) {
    const heads = check.menu.map((head): Choice => {
      const label = know(wordKey("menu", `${check.id}.${head.id}`));
      const [only, ...more] = head.states;
      // A heading over a single answer is that answer.
      return only !== undefined && more.length === 0
        ? { value: only, label, state: only }
        : { value: `${LEADS_TO}${head.id}`, label };
    });
    return [...heads, dontKnow];
  }
  const head = check.menu.find((candidate) => candidate.id === menu);
  const states = head?.states ?? observation.states.map((state) => state.id);
  const choices = states.map((state) => stateChoice(observation, state));
  const none = { value: "none", label: phrase("answer-none-of-these") };
  const all =
    observation.kind === "list" && !states.includes("none") ? [none, ...choices] : choices;
  const from = menu?.startsWith("page:") === true ? Number(menu.slice("page:".length)) : 0;
  return page(all, from);
}

function kindChoices(knowledge: Knowledge, family: string | undefined): Choice[] {
  const order = (kind: MachineKind) => (kind.offer === 0 ? Number.POSITIVE_INFINITY : kind.offer);
  const kinds = [...knowledge.machines.values()].sort((a, b) => order(a) - order(b));
  const first = kinds.slice(0, MOST_BUTTONS - 1);
  const later = kinds.slice(MOST_BUTTONS - 1);
  const label = (kind: MachineKind) => ({
    value: kind.id,
    label: know(wordKey("machine", kind.id)),
  });
  if (family === undefined) {
    const other = { value: `${LEADS_TO}families`, label: phrase("answer-another-machine") };
    return [...first.map(label), other];
  }
  if (family === "families") {
    const families = [...new Set(later.map((kind) => kind.family))];
    const heads = families.map((id) => ({
      value: `${LEADS_TO}${id}`,
      label: know(wordKey("machine", id, "family")),
    }));
    return [...heads, dontKnow];
  }
  return [...later.filter((kind) => kind.family === family).map(label), dontKnow];
}

/** Machines of this person's own list, and the way to all the others. */
function knownChoices(machines: readonly KnownMachine[]): Choice[] {
  const own = machines.map(({ title, facts }, index) => {
    const machine: Arg = title === "" ? { know: wordKey("machine", facts.kind) } : title;
    const { fuel } = facts;
    const label =
      fuel === undefined || title !== ""
        ? phrase("known-again", { machine })
        : phrase("known-again-fuel", { machine, fuel: { phrase: phrase(`fuel-${fuel}`) } });
    return { value: String(index), label };
  });
  return [...own, { value: `${LEADS_TO}kinds`, label: phrase("answer-another-machine") }];
}

/** Things to tick; pressing one again takes the tick away. */
function equipmentChoices(has: readonly string[]): Choice[] {
  const things = equipment.map((thing) => ({
    value: `${LEADS_TO}${thing}`,
    label: has.includes(thing)
      ? phrase("equipment-ticked", { thing: { phrase: phrase(`equipment-${thing}`) } })
      : phrase(`equipment-${thing}`),
  }));
  const done = phrase(has.length === 0 ? "equipment-none" : "equipment-all");
  return [...things, { value: THAT_IS_ALL, label: done }];
}

function safetyChoices(knowledge: Knowledge): Choice[] {
  const offered = [...knowledge.redFlags.values()].filter((flag) => flag.offer);
  const flags = offered.slice(0, MOST_BUTTONS - 2).map((flag) => ({
    value: flag.id,
    label: know(wordKey("flag", flag.id)),
  }));
  return [{ value: ALL_CLEAR, label: phrase("answer-all-clear") }, ...flags, dontKnow];
}

function fuelChoices(state: CaseState, knowledge: Knowledge): Choice[] {
  const kind = knowledge.machines.get(state.machine.kind ?? "other");
  const fuels = Object.keys(kind?.fuels ?? {});
  return [...fuels.map((fuel) => ({ value: fuel, label: phrase(`fuel-${fuel}`) })), dontKnow];
}

function actChoices(knowledge: Knowledge, act: string, stage: "offer" | "result"): Choice[] {
  if (stage === "offer") {
    return [
      { value: "done", label: phrase("answer-done") },
      { value: SKIP, label: phrase("answer-cannot") },
    ];
  }
  const yields = knowledge.acts.get(act)?.yields;
  const observation = yields === undefined ? undefined : knowledge.observations.get(yields);
  if (observation !== undefined) {
    const told = observation.states.filter((state) => state.id !== "not-tried");
    return page(
      told.map((state) => stateChoice(observation, state.id)),
      0,
    );
  }
  return ["cured", "no-change", "changed"].map((outcome) => ({
    value: outcome,
    label: phrase(`outcome-${outcome}`),
  }));
}

const plainChoices = (about: string, values: readonly string[]): Choice[] =>
  values.map((value) => ({ value, label: phrase(`${about}-${value}`) }));

/** The answers that can be pressed, at most six; typed words are matched against the same. */
export function choicesFor(asking: Asking, state: CaseState, knowledge: Knowledge): Choice[] {
  switch (asking.about) {
    case "safety":
      return safetyChoices(knowledge);
    case "known":
      return knownChoices(asking.machines);
    case "kind":
      return kindChoices(knowledge, asking.family);
    case "fuel":
      return fuelChoices(state, knowledge);
    case "check": {
      const check = knowledge.checks.get(asking.check);
      const observation = knowledge.observations.get(check?.yields ?? "");
      if (check === undefined || observation === undefined) return [dontKnow];
      return checkChoices(check, observation, asking.menu);
    }
    case "act":
      return actChoices(knowledge, asking.act, asking.stage);
    case "story":
      return [{ value: SKIP, label: phrase("answer-nothing-more") }];
    case "urgency":
      return [...plainChoices("urgency", ["high", "normal", "low"]), skip];
    case "meaning":
      return [
        ...asking.options.map((option, index) => ({
          value: String(index),
          label: stateLabel(option.observation, option.state),
          state: option.state,
        })),
        dontKnow,
      ];
    case "remedy":
      return plainChoices("remedy", ["runs", "no-change", SKIP]);
    case "ran":
      return plainChoices("ran", ["yes", "not-yet"]);
    case "cause":
      return [...plainChoices("cause", ["other"])];
    case "equipment":
      return equipmentChoices(asking.has ?? []);
    case "trip":
      return plainChoices("trip", tripAnswers);
    default:
      return [skip];
  }
}
