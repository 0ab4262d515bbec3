import { chanceHolds } from "../diagnosis/machine-condition.ts";
import type { Asking, Meanings } from "../domain/case-events.ts";
import { askingKey, type CaseState } from "../domain/case-state.ts";
import type { MachineFacts } from "../domain/evidence.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import type { Next } from "../domain/triage.ts";
import { ON_START } from "../domain/vocabulary.ts";
import { type Desk, machineOf, toldMachine } from "./desk.ts";
import { equipmentDecides } from "./equipment.ts";
import { photoSubject } from "./photo-subject.ts";
import { AT_MACHINE, placeOf } from "./place.ts";
import { walkingQuestion } from "./trip.ts";

/** What comes next for the operator: a question, the end of the interview, or nothing any more. */
export type Following =
  | { readonly kind: "ask"; readonly asking: Asking; readonly aboutMore: number | null }
  | { readonly kind: "end"; readonly because: string }
  | { readonly kind: "done" };

/** Who went to the machine later is asked once this many answers stand. */
const ANSWERS_BEFORE_PHOTO = 3;

const answersOf = (state: CaseState) =>
  state.answers.filter((given) => given.from === "operator").length;

/**
 * The check by which an operator answers this observation: of several the one that fits the machine
 * best, of equals the first. Null where none may fit.
 */
export function operatorCheckFor(
  knowledge: Knowledge,
  observation: string,
  machine: MachineFacts,
): string | null {
  const kind = knowledge.machines.get(machine.kind);
  const [best] = [...knowledge.checks.values()]
    .filter((check) => check.yields === observation && check.performers.includes("operator"))
    .map(({ id, needs }) => ({ id, fits: chanceHolds(needs, machine, kind, 1) }))
    .filter(({ fits }) => fits > 0)
    .sort((a, b) => b.fits - a.fits);
  return best?.id ?? null;
}

/** A machine of which this share may be of one make or the other is worth a question. */
const WORTH_ASKING = 0.2;

/** What tells of the machine's own make and is not known: how it is started. */
function makeQuestion(state: CaseState, knowledge: Knowledge): string | null {
  const machine = machineOf(state);
  const kind = knowledge.machines.get(machine.kind);
  for (const { id, needs, tellsFeatures } of knowledge.observations.values()) {
    if (tellsFeatures === undefined || everTold(state, id)) continue;
    if (chanceHolds(needs, machine, kind, 1) < WORTH_ASKING) continue;
    const check = operatorCheckFor(knowledge, id, machine);
    if (check !== null && !passed(state, `check:${check}`)) return check;
  }
  return null;
}

/** Told since the machine last changed: an act that changed nothing leaves the symptom as it was. */
function isKnownNow(state: CaseState, observation: string): boolean {
  const changed = state.acts.findLast((act) => act.outcome === "changed")?.epoch ?? 0;
  return state.answers.some(
    (given) => given.report.observation === observation && given.report.epoch >= changed,
  );
}

const everTold = (state: CaseState, observation: string) =>
  state.answers.some((given) => given.report.observation === observation);

/** True where this was put before, whatever came of it. */
export const wasAsked = (state: CaseState, key: string) =>
  state.askedEver.some((asked) => askingKey(asked.asking) === key) || state.passed.includes(key);

const passed = (state: CaseState, key: string) => state.passed.includes(key);

/** True where the machine's fuel is not settled by its kind or by what was said. */
function fuelOpen(state: CaseState, knowledge: Knowledge): boolean {
  if (state.machine.fuel !== undefined || passed(state, "fuel")) return false;
  const kind = knowledge.machines.get(state.machine.kind ?? "other");
  return kind !== undefined && Object.keys(kind.fuels).length > 1;
}

/** Machines offered for one tap; the newest are likeliest. */
const MOST_KNOWN = 5;

/** Which machine: one of the person's own where there are any, else of which kind. */
function whichMachine(state: CaseState, desk: Desk): Asking {
  const machines = (desk.remembered?.machines ?? []).slice(-MOST_KNOWN).reverse();
  const isNew = machines.length === 0 || wasAsked(state, "kind");
  return isNew ? { about: "kind" } : { about: "known", machines };
}

/** Answered, or passed by somebody who does not know: that is said once, and not asked again. */
export const isSafetyAsked = (state: CaseState) =>
  state.safety !== "unasked" || passed(state, "safety");

const photoAsked = (state: CaseState) =>
  wasAsked(state, "photo") ||
  state.askedEver.some(({ asking }) => asking.about === "story" && asking.photo !== undefined);

/** One photo is asked for, once, of somebody who stands beside the machine. */
const wantsPhoto = (state: CaseState) =>
  placeOf(state) === "at-machine" &&
  state.files.every((file) => file.file.kind !== "photo") &&
  !photoAsked(state);

/** Neither asked about yet nor settled by an answer since. */
export function isMeaningOpen(options: Meanings, state: CaseState): boolean {
  const isKnown = options.some(({ observation }) => everTold(state, observation));
  return !isKnown && !wasAsked(state, askingKey({ about: "meaning", options }));
}

/** Which of them was meant; meanings of one thing are asked about in that thing's own words. */
export function meaningQuestion(options: Meanings, state: CaseState, knowledge: Knowledge): Asking {
  const [observation, ...others] = new Set(options.map((option) => option.observation));
  const isOne = observation !== undefined && others.length === 0;
  const check = isOne
    ? operatorCheckFor(knowledge, observation, toldMachine(state, knowledge))
    : null;
  return { about: "meaning", options, ...(check === null ? {} : { check }) };
}

/** The facts that everything else hangs on, in the order in which they are asked. */
function opening(state: CaseState, desk: Desk): Asking | null {
  if (!isSafetyAsked(state)) return { about: "safety" };
  const { unclear } = state;
  if (unclear !== null && isMeaningOpen(unclear, state)) {
    return meaningQuestion(unclear, state, desk.knowledge);
  }
  if (state.machine.kind === undefined && !passed(state, "kind")) {
    return whichMachine(state, desk);
  }
  const machine = toldMachine(state, desk.knowledge);
  const symptom = operatorCheckFor(desk.knowledge, ON_START, machine);
  if (symptom !== null && !passed(state, `check:${symptom}`) && !isKnownNow(state, ON_START)) {
    return { about: "check", check: symptom };
  }
  const make = makeQuestion(state, desk.knowledge);
  if (make !== null) return { about: "check", check: make };
  if (fuelOpen(state, desk.knowledge)) return { about: "fuel" };
  const place = operatorCheckFor(desk.knowledge, AT_MACHINE, machine);
  if (place !== null && !passed(state, `check:${place}`) && !everTold(state, AT_MACHINE)) {
    return { about: "check", check: place };
  }
  if (wasAsked(state, "story")) return null;
  const photo = wantsPhoto(state) ? photoSubject(state, desk) : null;
  return { about: "story", ...(photo === null ? {} : { photo }) };
}

/** What the shop needs to send somebody; each can be skipped. */
function closing(state: CaseState): Asking | null {
  if (state.urgency === null && !wasAsked(state, "urgency")) return { about: "urgency" };
  if (state.where === null && !wasAsked(state, "where")) {
    const isPhoneOpen = state.phone === null && !wasAsked(state, "phone");
    return { about: "where", ...(isPhoneOpen ? { phone: true } : {}) };
  }
  if (state.phone === null && !wasAsked(state, "phone")) return { about: "phone" };
  return null;
}

/** Asked for once, with the last message, of somebody who can see it: it is worth no screen. */
export const wantsPlate = (state: CaseState) =>
  placeOf(state) === "at-machine" &&
  state.machine.serial === undefined &&
  state.closed === null &&
  !wasAsked(state, "plate");

function asking(next: Extract<Next, { kind: "ask" }>): Asking {
  return next.isAct
    ? { about: "act", act: next.check, stage: "offer" }
    : { about: "check", check: next.check };
}

/** The operator's next question; pure, so that the same case always goes the same way. */
export function nextQuestion(state: CaseState, desk: Desk): Following {
  if (state.closed !== null) return { kind: "done" };
  if (state.interview === "ended") {
    const last = closing(state);
    return last === null ? { kind: "done" } : { kind: "ask", asking: last, aboutMore: null };
  }
  const first = opening(state, desk);
  if (first !== null) return { kind: "ask", asking: first, aboutMore: null };
  if (wantsPhoto(state) && answersOf(state) >= ANSWERS_BEFORE_PHOTO) {
    const subject = photoSubject(state, desk);
    const photo: Asking = { about: "photo", ...(subject === null ? {} : { of: subject }) };
    return { kind: "ask", asking: photo, aboutMore: null };
  }
  return engineQuestion(state, desk);
}

/** What the engine wants to know, as far as this person can tell it where they are. */
function engineQuestion(state: CaseState, desk: Desk): Following {
  const chosen = desk.next(state, "operator");
  if (!wasAsked(state, "equipment") && equipmentDecides(state, chosen, desk)) {
    return { kind: "ask", asking: { about: "equipment" }, aboutMore: null };
  }
  const walking = walkingQuestion(state, chosen, desk);
  if ("asking" in walking) return { kind: "ask", asking: walking.asking, aboutMore: null };
  const { next } = walking;
  if (next.kind === "stop") return { kind: "end", because: next.because };
  return { kind: "ask", asking: asking(next), aboutMore: next.aboutMore };
}
