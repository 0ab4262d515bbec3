import { type CaseHappening, stamped } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Member } from "../domain/documents.ts";
import type { Message, Phrase } from "../domain/effects.ts";
import { applyEvent } from "../domain/fold-case.ts";
import { advance } from "./advance.ts";
import { shownChance } from "./chance.ts";
import { back, type Given, withSlip } from "./counter-given.ts";
import { button, type Decision, line, nothingToDo, phrase, say } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { causesEffects } from "./pictures.ts";
import { slipEffects, slipReaders } from "./slip.ts";
import { pinEffects, sheetEffects } from "./visit-sheet.ts";

/** Causes that are kept of what was foreseen. */
const FORESEEN = 8;

function technicians(desk: Desk): readonly Member[] {
  return desk.members.filter((member) => member.role !== "dispatcher");
}

/**
 * How much of the belief rests on causes that are this technician's trade, in [0, 1].
 * @returns null where the shop names no skills, or none was noted for them
 */
function fitOf(member: Member, state: CaseState, desk: Desk): number | null {
  const { skills } = desk.shop;
  const own = (member.skills ?? []).flatMap((name) => skills[name] ?? []);
  if (own.length === 0 || state.answers.length === 0) return null;
  const { causes } = desk.triage(state, "technician").ranking;
  return causes
    .filter(({ group }) => own.includes(group))
    .reduce((sum, { probability }) => sum + probability, 0);
}

/** One open job weighs as much as so much of the belief outside one's trade: our own choice. */
const JOB_WEIGHS = 0.15;
/** Of somebody whose trade is not noted half is taken to fit. */
const FIT_UNKNOWN = 0.5;

/** How much a technician has to do already: open cases handed to them. */
function loadOf(person: string, desk: Desk): number {
  return (desk.others?.() ?? []).filter((other) => other.technician?.id === person).length;
}

const worth = ({ load, fit }: { readonly load: number; readonly fit: number | null }) =>
  (fit ?? FIT_UNKNOWN) - JOB_WEIGHS * load;

const skilledLabel = (name: Phrase, { skills = [] }: Member, fit: number): Phrase =>
  phrase("technician-fit", {
    technician: { phrase: name },
    skills: { list: skills },
    fit: { quantity: shownChance(fit), unit: "percent" },
  });

/** Offers the technicians there are: whose trade it is and who has the least to do first. */
export function handOver(state: CaseState, given: Given): Decision {
  const people = technicians(given.desk)
    .map((member) => ({
      member,
      load: loadOf(member.person, given.desk),
      fit: fitOf(member, state, given.desk),
    }))
    .sort((a, b) => worth(b) - worth(a));
  const key = people.length === 0 ? "no-technicians" : "which-technician";
  const message: Message = {
    lines: [line(phrase(key, { number: state.id }), "heading")],
    buttons: people.map(({ member, load, fit }) => {
      const loaded =
        load === 0
          ? { raw: member.name }
          : phrase("technician-load", { technician: member.name, count: load });
      const label = fit === null ? loaded : skilledLabel(loaded, member, fit);
      const press = { case: state.id, revision: state.hands, act: "assign", value: member.person };
      return button(label, press);
    }),
  };
  return { happenings: [], effects: [say(back(given), message, `hand-${back(given).chat}`)] };
}

/** Somebody else moved the case since the button was made: they see what happened, no more. */
export function movedMeanwhile(state: CaseState): Decision {
  const technician = state.technician?.name;
  const words =
    technician === undefined
      ? phrase("nobody-has-it")
      : phrase("has-it-now", { technician, number: state.id });
  return { ...nothingToDo, toast: words };
}

/** What is expected of the visit: later it is held against what came of it. */
function foreseen(state: CaseState, desk: Desk): CaseHappening[] {
  if (state.answers.length === 0) return [];
  const { ranking, plan } = desk.triage(state, "technician");
  const causes = ranking.causes
    .slice(0, FORESEEN)
    .map(({ fault, probability }) => ({ fault, probability }));
  const { median: medianMinutes, p90: p90Minutes } = plan.minutes;
  return [{ type: "visit.foreseen", causes, medianMinutes, p90Minutes }];
}

/** Hands the case to a technician, who gets the sheet; everybody it concerns is told. */
export function assign(state: CaseState, person: string, given: Given): Decision {
  const { desk, heard } = given;
  const technician = technicians(desk).find((member) => member.person === person);
  if (technician === undefined) return { ...nothingToDo, toast: phrase("no-longer-there") };
  if (state.technician?.id === person) {
    return { ...nothingToDo, toast: phrase("has-it-already", { technician: technician.name }) };
  }
  const { name, chat, language } = technician;
  const assigned: CaseHappening = {
    type: "case.assigned",
    technician: person,
    name,
    chat,
    language,
  };
  const happenings = [assigned, ...foreseen(state, desk)];
  const after = advance(state, happenings, heard);
  const told = {
    lines: [line(phrase("operator-assigned", { technician: name, shop: desk.shop.name }))],
  };
  return {
    happenings,
    effects: [
      ...sheetEffects(after, desk),
      ...causesEffects(technician, after, desk),
      ...pinEffects(after),
      ...(after.operator.chat === "" ? [] : [say(after.operator, told)]),
      ...slipEffects(after, desk),
    ],
    toast: phrase("handed-to", { technician: name }),
  };
}

/** Its technician was taken out of the shop: the case is back, and the counter is told. */
export function technicianGone(state: CaseState, person: string, desk: Desk): Decision {
  const { technician, closed } = state;
  if (technician === null || technician.id !== person || closed !== null) return nothingToDo;
  const back: CaseHappening = { type: "case.taken-back" };
  const after = applyEvent(state, stamped(back, { at: desk.now, by: "turnrow", update: null }));
  const words = phrase("technician-gone", { technician: technician.name, number: state.id });
  const told = slipReaders(desk).map((reader) => say(reader, { lines: [line(words)] }));
  return { happenings: [back], effects: [...told, ...slipEffects(after, desk)] };
}

/** Takes the case back from whoever has it. */
export function takeBack(state: CaseState, given: Given): Decision {
  const technician = state.technician;
  if (technician === null) return { ...nothingToDo, toast: phrase("nobody-has-it") };
  const decision = withSlip(state, [{ type: "case.taken-back" }], given);
  const told = { lines: [line(phrase("technician-taken-back", { number: state.id }))] };
  return { ...decision, effects: [say(technician, told), ...decision.effects] };
}
