import type { CaseHappening, ConfirmedHow } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Arg, Button, Line, Message, PlannedEffect } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import { advance } from "./advance.ts";
import { button, type Decision, line, nothingToDo, phrase, revise } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { minutesOnSite } from "./minutes-on-site.ts";
import { slipEffects } from "./slip.ts";
import type { Given } from "./visit-proceed.ts";

const MINUTES_OFFERED = [15, 30, 45, 60, 90, 120] as const;
const PARTS_OFFERED = 6;
const CAUSES_OFFERED = 5;
const HOW: readonly ConfirmedHow[] = ["ran-after-this", "measured", "several-at-once", "guess"];
/** Further causes are offered only where they are not out of the question. */
const LEAST_CHANCE = 0.02;

const slotOf = (state: CaseState) => `record-${state.id}`;

/** What it was, in words: every confirmed cause, or the technician's own. */
export function causeWords(state: CaseState): Arg {
  const faults = (state.confirmed?.faults ?? []).filter((fault) => fault !== "");
  if (faults.length === 0) return { phrase: { raw: state.confirmed?.words ?? "" } };
  return { list: faults.map((fault) => ({ know: wordKey("fault", fault) })) };
}

const loadedParts = (state: CaseState, desk: Desk): string[] =>
  desk
    .triage(state, "technician")
    .kit.items.filter((item) => item.carry)
    .map((item) => item.part);

/** Parts that the repair may have taken: those of what was done, then those that were loaded. */
function partsOf(state: CaseState, desk: Desk): string[] {
  const { faults, remedies } = desk.knowledge;
  const done = state.remediesDone.map((one) => one.remedy);
  const likely = (state.confirmed?.faults ?? []).flatMap((id) => faults.get(id)?.remedies ?? []);
  const parts = [...done, ...likely].flatMap((id) => remedies.get(id)?.parts ?? []);
  return [...new Set([...parts, ...loadedParts(state, desk)])].slice(0, PARTS_OFFERED);
}

const partWords = (parts: readonly string[]): Arg => ({
  list: parts.map((part) => ({ know: wordKey("part", part) })),
});

/** The repair or the act that put it right; words of one's own already stand as the cause. */
function correctionLines({ closed }: CaseState, { knowledge }: Desk): Line[] {
  const id = closed?.correction ?? "";
  const kind = knowledge.remedies.has(id) ? "remedy" : knowledge.acts.has(id) ? "act" : null;
  if (kind === null) return [];
  return [line(phrase("record-done", { what: { know: wordKey(kind, id) } }))];
}

/** What is on record of a closed case: cause and how it is known, minutes, parts. */
export function recordLines(state: CaseState, desk: Desk): Line[] {
  const { minutes, used = [], back = [] } = state.work;
  const taken = minutes ?? minutesOnSite(state);
  const how = { phrase: phrase(`how-${state.confirmed?.how ?? "guess"}`) };
  return [
    line(phrase("record-title", { number: state.id }), "heading"),
    line(phrase("record-cause", { what: causeWords(state), how })),
    ...correctionLines(state, desk),
    ...(taken === null
      ? []
      : [line(phrase("record-minutes", { minutes: { quantity: taken, unit: "min" } }))]),
    ...(used.length === 0 ? [] : [line(phrase("record-used", { parts: partWords(used) }))]),
    ...(back.length === 0 ? [] : [line(phrase("record-back", { parts: partWords(back) }))]),
  ];
}

const recordPress = (state: CaseState, value: string) => ({
  case: state.id,
  revision: 0,
  act: "record",
  value,
});

const ticked = (is: boolean, label: Arg) => phrase(is ? "ticked" : "unticked", { label });

function recordButtons(state: CaseState, desk: Desk): (readonly Button[])[] {
  const used = state.work.used ?? [];
  const minutes = MINUTES_OFFERED.map((count): Button => {
    const label = phrase("record-minutes-choice", { minutes: { quantity: count, unit: "min" } });
    return { label, press: recordPress(state, `minutes:${count}`) };
  });
  const parts = partsOf(state, desk).map((part) => {
    const label = ticked(used.includes(part), { know: wordKey("part", part) });
    return button(label, recordPress(state, `used:${part}`));
  });
  const how = HOW.map((one) => {
    const label = ticked(state.confirmed?.how === one, { phrase: phrase(`how-${one}`) });
    return button(label, recordPress(state, `how:${one}`));
  });
  const another = button(phrase("press-another-cause"), recordPress(state, "also"));
  const paper = button(phrase("press-report"), { case: state.id, revision: 0, act: "paper" });
  return [minutes.slice(0, 3), minutes.slice(3), ...parts, ...how, another, paper];
}

/** The record, to be put right by pressing; the case itself is closed already. */
export function recordEffects(state: CaseState, desk: Desk): PlannedEffect[] {
  if (state.technician === null) return [];
  const message: Message = {
    lines: [
      ...recordLines(state, desk),
      line(phrase("record-correct")),
      line(phrase("record-photos")),
    ],
    buttons: recordButtons(state, desk),
  };
  return [revise(state.technician, message, slotOf(state))];
}

/** Further causes to choose from: two things may have been wrong. */
function otherCauses(state: CaseState, given: Given): PlannedEffect[] {
  const { technician } = state;
  if (technician === null) return [];
  const found = state.confirmed?.faults ?? [];
  const causes = given.desk
    .triage(state, "technician")
    .ranking.causes.filter((one) => found.includes(one.fault) || one.probability > LEAST_CHANCE)
    .slice(0, CAUSES_OFFERED)
    .map(({ fault }) => {
      const label = ticked(found.includes(fault), { know: wordKey("fault", fault) });
      return button(label, recordPress(state, `cause:${fault}`));
    });
  const message: Message = {
    lines: [line(phrase("which-causes"), "heading")],
    buttons: [...causes, button(phrase("answer-done"), recordPress(state, "show"))],
  };
  return [revise(technician, message, slotOf(state))];
}

const toggled = (list: readonly string[], one: string): string[] =>
  list.includes(one) ? list.filter((other) => other !== one) : [...list, one];

function causeChange(state: CaseState, fault: string): CaseHappening | null {
  const { how = "guess", faults = [], words } = state.confirmed ?? {};
  const now = toggled(faults, fault);
  if (now.length === 0) return null;
  // Two that were put right before it ran again: neither alone is known to have been it.
  const known = now.length > 1 && how === "ran-after-this" ? "several-at-once" : how;
  return {
    type: "cause.confirmed",
    faults: now,
    how: known,
    ...(words === undefined ? {} : { words }),
  };
}

function changeOf(state: CaseState, value: string, desk: Desk): CaseHappening | null {
  const colon = value.indexOf(":");
  const [what, which] = [value.slice(0, colon), value.slice(colon + 1)];
  if (what === "minutes" && Number(which) > 0) return { type: "work.told", minutes: Number(which) };
  if (what === "used" && desk.knowledge.parts.has(which)) {
    const used = toggled(state.work.used ?? [], which);
    const back = loadedParts(state, desk).filter((part) => !used.includes(part));
    return { type: "work.told", used, back };
  }
  const how = HOW.find((one) => one === which);
  if (what === "how" && how !== undefined && state.confirmed !== null) {
    return { type: "cause.confirmed", ...state.confirmed, how };
  }
  if (what !== "cause" || !desk.knowledge.faults.has(which)) return null;
  return causeChange(state, which);
}

/** The technician puts the record of a closed case right. */
export function changeRecord(state: CaseState, value: string, given: Given): Decision {
  if (state.closed === null) return nothingToDo;
  if (value === "also") return { happenings: [], effects: otherCauses(state, given) };
  if (value === "show") return { happenings: [], effects: recordEffects(state, given.desk) };
  const change = changeOf(state, value, given.desk);
  if (change === null) return nothingToDo;
  const after = advance(state, [change], given.heard);
  const stillChoosing = value.startsWith("cause:");
  const shown = stillChoosing ? otherCauses(after, given) : recordEffects(after, given.desk);
  return { happenings: [change], effects: [...shown, ...slipEffects(after, given.desk)] };
}
