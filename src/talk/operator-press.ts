import type { Asking, CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Line, Press } from "../domain/effects.ts";
import { advance } from "./advance.ts";
import { raiseAlarm, standingFlag, stayStopped } from "./alarm.ts";
import { operatorReporter, takeAnswer } from "./answer.ts";
import { DONT_KNOW } from "./choices.ts";
import { dangersTold } from "./danger-told.ts";
import { type Decision, line, nothingToDo, phrase, revise, together } from "./decision.ts";
import type { Desk, Heard } from "./desk.ts";
import {
  goBack,
  listAnswers,
  pause,
  reopen,
  repeatOpen,
  showMore,
  showOpen,
  stopCase,
  withdraw,
} from "./more-menu.ts";
import { cameBack, runsAgain, staysFine } from "./outcome.ts";
import { wantPerson } from "./person.ts";
import { probesTold } from "./probes.ts";
import { closeQuestion, type Outcome, proceed } from "./proceed.ts";
import { questionMessage, questionSlot, showCheck, wasJustAsked } from "./question.ts";
import { whenItRuns } from "./solved.ts";
import { sendSummary } from "./summary.ts";

export interface Given {
  readonly heard: Heard;
  readonly desk: Desk;
  /** Lines to say before what comes of an answer. */
  readonly before?: readonly Line[];
}

/** Goes on after facts; a red flag among them stops everything else, a cure ends it. */
export function goOn(state: CaseState, told: Outcome, given: Given): Decision {
  const seen = dangersTold(told.happenings, state, given.desk.knowledge);
  const outcome = { ...told, happenings: [...told.happenings, ...seen] };
  const raised = outcome.happenings.some((happening) => happening.type === "flag.raised");
  if (raised) {
    // While a danger stands no question can be answered; it is put again once the danger is over.
    const closed = closeQuestion(state, outcome.answered, given.desk);
    const alarm = raiseAlarm(state, outcome.happenings, given);
    return { ...alarm, effects: [...alarm.effects, ...closed] };
  }
  const after = advance(state, outcome.happenings, given.heard);
  if (standingFlag(after) !== null) return stayStopped(state, outcome.happenings, given);
  return whenItRuns(state, outcome, given) ?? proceed(state, outcome, given);
}

/** An answer by button, or by words that name one of the answers. */
export function answer(state: CaseState, value: string, given: Given): Decision {
  const open = state.open.operator;
  if (open === null) return repeatOpen(state, phrase("here-we-are"), given);
  const taken = takeAnswer(open.asking, value, {
    state,
    knowledge: given.desk.knowledge,
    reporter: operatorReporter(state),
  });
  if (taken === null) return repeatOpen(state, phrase("choose-one"), given);
  if (taken.leadsTo !== undefined) return leadTo(state, taken.leadsTo, given);
  const answered = { question: open, label: taken.label };
  const isUnsure = open.asking.about === "safety" && value === DONT_KNOW;
  const unsure = isUnsure ? [line(phrase("safety-unsure"), "caution")] : [];
  const before = [...(given.before ?? []), ...unsure];
  return goOn(state, { happenings: taken.happenings, before, answered }, given);
}

/** The next list of answers replaces the first in the same message. */
function leadTo(state: CaseState, asking: Asking, given: Given): Decision {
  const open = state.open.operator;
  const revision = state.revision + 1;
  const parts = { asking, revision, aboutMore: null, before: [] };
  const message = questionMessage(state, parts, given.desk);
  const asked: CaseHappening = { type: "question.asked", to: "operator", asking, revision };
  if (open === null) return nothingToDo;
  const effects = [revise(state.operator, message, questionSlot(asking))];
  return { happenings: [asked], effects };
}

/** What the ways out of a question do, by the name on their buttons. */
const menuActs: Readonly<Record<string, (state: CaseState, given: Given) => Decision>> = {
  more: (state, { desk }) => showMore(state, desk),
  return: (state, given) =>
    state.open.operator === null
      ? repeatOpen(state, phrase("here-we-are"), given)
      : showOpen(state, given.desk),
  back: goBack,
  change: (state, { desk }) => listAnswers(state, desk),
  pause: (state) => pause(state),
  stop: stopCase,
  person: wantPerson,
  resume: (state, given) => resume(state, given),
  repeat: (state, given) => repeatOpen(state, phrase("here-we-are"), given),
  reopen,
  runs: runsAgain,
  fine: staysFine,
  "came-back": cameBack,
  summary: (state, { desk }) => sendSummary(state, desk),
  "safe-now": (state, given) =>
    proceed(state, { happenings: [{ type: "safety.answered", clear: true }], before: [] }, given),
};

/** Ways that are open while a red flag stands, pressed or typed. */
const whileStopped = new Set(["safe-now", "person", "stop", "reopen"]);

/** The way out of that name, or null: names come from outside as well. */
export function menuAct(name: string, state: CaseState, given: Given): Decision | null {
  const act = Object.hasOwn(menuActs, name) ? menuActs[name] : undefined;
  if (act === undefined) return null;
  const isStopped = standingFlag(state) !== null && !whileStopped.has(name);
  return isStopped ? stayStopped(state, [], given) : act(state, given);
}

/** Goes on where the interview was left. */
export function resume(state: CaseState, given: Given): Decision {
  const happenings: CaseHappening[] =
    state.interview === "paused" ? [{ type: "interview.resumed" }] : [];
  const after = advance(state, happenings, given.heard);
  return together({ happenings, effects: [] }, repeatOpen(after, phrase("here-we-are"), given));
}

/** Buttons that may be pressed long after they were made; all others belong to one revision. */
const lasting = new Set([
  "resume",
  "repeat",
  "reopen",
  "person",
  "safe-now",
  "withdraw",
  "show",
  "probes",
  "fine",
  "came-back",
  "summary",
]);

/** Where a reading was taken, told after it was. */
function probes(state: CaseState, value: string, given: Given): Decision {
  const told = probesTold(state, value);
  if (told === null) return nothingToDo;
  const toast = phrase("probes-noted");
  return { ...goOn(state, { happenings: [told], before: [] }, given), toast };
}

/** A pressed button: believed only for the question it was made for. */
export function press(state: CaseState, pressed: Press, given: Given): Decision {
  if (standingFlag(state) !== null && !whileStopped.has(pressed.act)) {
    return stayStopped(state, [], given);
  }
  const current = state.open.operator?.revision ?? state.revision;
  if (!lasting.has(pressed.act) && pressed.revision !== current) {
    const toast = phrase("step-is-closed");
    if (wasJustAsked(state.open.operator, given.desk.now)) return { ...nothingToDo, toast };
    return { ...repeatOpen(state, toast, given), toast };
  }
  if (pressed.act === "answer") return answer(state, pressed.value ?? "", given);
  if (pressed.act === "probes") return probes(state, pressed.value ?? "", given);
  if (pressed.act === "show") return showCheck(state, pressed.value ?? "", given.desk.knowledge);
  if (pressed.act === "withdraw") return withdraw(state, pressed.value ?? "", given);
  return menuAct(pressed.act, state, given) ?? nothingToDo;
}
