import { chanceHolds } from "../diagnosis/machine-condition.ts";
import type { Asking, CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Line, Message } from "../domain/effects.ts";
import { type Act, wordKey } from "../domain/knowledge.ts";
import { advance } from "./advance.ts";
import { standingFlag } from "./alarm.ts";
import { shownChance } from "./chance.ts";
import { back, type Given, saying } from "./counter-given.ts";
import { button, type Decision, line, nothingToDo, phrase, say } from "./decision.ts";
import { type Desk, machineOf } from "./desk.ts";
import { ask } from "./proceed.ts";
import { cautionsFor, questionLines } from "./question.ts";
import { slipEffects } from "./slip.ts";

const OFFERED = 6;
/** What helps less often than this is not worth an operator's walk. */
const LEAST_CHANCE = 0.01;
/** Less likely than this the machine does not have what the act is about. */
const LEAST_FIT = 0.05;

/** Something safe that the operator can do, and how likely it makes the machine run. */
export interface Help {
  readonly act: Act;
  /** P(it ends the trouble), in [0, 1]. */
  readonly cures: number;
  /** P(it makes the machine run for now, and hides the trouble), in [0, 1]. */
  readonly masks: number;
}

/** What the operator could try now, what helps most often first. */
export function helpsFor(state: CaseState, desk: Desk): readonly Help[] {
  const { acts, machines } = desk.knowledge;
  const facts = machineOf(state);
  const kind = machines.get(facts.kind);
  const { causes } = desk.triage(state, "technician").ranking;
  const sumOf = (chances: ReadonlyMap<string, number>) =>
    causes.reduce(
      (sum, { fault, probability }) => sum + probability * (chances.get(fault) ?? 0),
      0,
    );
  const isDone = (act: Act) => state.acts.some((done) => done.act === act.id);
  const hasAll = (act: Act) =>
    state.has === null || act.operatorHas.every((thing) => state.has?.includes(thing) === true);
  return [...acts.values()]
    .filter((act) => act.performers.includes("operator") && !isDone(act) && hasAll(act))
    .filter((act) => chanceHolds(act.needs, facts, kind, 1) > LEAST_FIT)
    .map((act) => ({ act, cures: sumOf(act.cures), masks: sumOf(act.masks) }))
    .filter(({ cures, masks }) => cures + masks > LEAST_CHANCE)
    .sort((a, b) => b.cures + b.masks / 2 - (a.cures + a.masks / 2))
    .slice(0, OFFERED);
}

const percent = (chance: number) => ({ quantity: shownChance(chance), unit: "percent" }) as const;

/** Which safe help shall the operator be given? */
export function offerHelps(state: CaseState, given: Given): Decision {
  const helps = helpsFor(state, given.desk);
  const buttons = helps.map(({ act, cures, masks }) => {
    const words = { what: { know: wordKey("act", act.id) }, cures: percent(cures) };
    const hides = masks > LEAST_CHANCE ? (cures > LEAST_CHANCE ? "-hides" : "-only-hides") : "";
    const label = phrase(`help-choice${hides}`, { ...words, masks: percent(masks) });
    return button(label, { case: state.id, revision: 0, act: "help", value: act.id });
  });
  const key = helps.length === 0 ? "help-none" : "help-which";
  const message: Message = { lines: [line(phrase(key, { number: state.id }), "heading")], buttons };
  return { happenings: [], effects: [say(back(given), message)] };
}

/** To be read aloud where the operator has no chat. */
function aloud(state: CaseState, asking: Asking, given: Given): Decision {
  const { desk } = given;
  const cautions = cautionsFor(asking, { state, to: "operator", knowledge: desk.knowledge });
  const lines: Line[] = [
    line(phrase("help-aloud", { number: state.id }), "heading"),
    ...cautions,
    ...questionLines(asking, desk),
  ];
  return { happenings: [], effects: [say(back(given), { lines })] };
}

/**
 * Gives the operator something safe to try. It is put like any other act of the interview: cautions
 * first, then what came of it, which is evidence.
 */
export function giveHelp(state: CaseState, id: string, given: Given): Decision {
  const { desk, heard } = given;
  if (id === "") return offerHelps(state, given);
  const help = helpsFor(state, desk).find(({ act }) => act.id === id);
  if (help === undefined) return { ...nothingToDo, toast: phrase("help-over") };
  if (standingFlag(state) !== null) {
    return saying([line(phrase("help-danger"), "caution")], nothingToDo, given);
  }
  const asking: Asking = { about: "act", act: id, stage: "offer" };
  const handed: CaseHappening = { type: "help.given", act: id };
  if (state.operator.chat === "") {
    const read = aloud(state, asking, given);
    return { ...read, happenings: [handed] };
  }
  const who = heard.member?.name ?? desk.shop.name;
  const before = [line(phrase("shop-suggests", { who }))];
  const resumed: CaseHappening[] =
    state.interview === "paused" ? [{ type: "interview.resumed" }] : [];
  const begun = advance(state, [handed, ...resumed], heard);
  const asked = ask(begun, { asking, before, aboutMore: null }, desk);
  const after = advance(begun, asked.happenings, heard);
  return {
    happenings: [handed, ...resumed, ...asked.happenings],
    effects: [...asked.effects, ...slipEffects(after, desk)],
    toast: phrase("help-given"),
  };
}
