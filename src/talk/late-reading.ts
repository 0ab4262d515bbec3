import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Phrase, PlannedEffect } from "../domain/effects.ts";
import { wordKey } from "../domain/knowledge.ts";
import { advance } from "./advance.ts";
import { button, type Decision, line, nothingToDo, phrase, revise, say } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { slipEffects } from "./slip.ts";
import { factsIn } from "./understand.ts";
import { type Given, goOn, technicianOf } from "./visit-proceed.ts";

/** Two clocks may stand so far apart, and the chat service tells whole seconds; milliseconds. */
const CLOCKS_APART = 2_000;
/** Readings to choose from: more nobody looks through beside a machine. */
const MOST_OFFERED = 4;
/** What a number may carry and still name nothing: its unit. */
const BARE = /^[+-]?\d{1,4}(?:[.,]\d{1,3})?\s*(?:v|volts?|a|amps?|ah|ohms?|ω|bar|psi|°?c|%)?\.?$/iu;
const NONE = "-";

function readingOf(check: string, { knowledge }: Desk): string | null {
  const yields = knowledge.checks.get(check)?.yields ?? "";
  return knowledge.observations.get(yields)?.kind === "number" ? yields : null;
}

function openCheck(state: CaseState): string | null {
  const asking = state.open.technician?.asking;
  return asking?.about === "check" ? asking.check : null;
}

/** Readings that a number may be of: the step that is open, then those put before it, newest first. */
function checksOffered(state: CaseState, desk: Desk): readonly string[] {
  const asked = state.askedEver.flatMap(({ asking, to }) =>
    to === "technician" && asking.about === "check" ? [asking.check] : [],
  );
  const open = openCheck(state);
  const all = [...(open === null ? [] : [open]), ...asked.reverse()];
  return [...new Set(all)]
    .filter((check) => readingOf(check, desk) !== null)
    .slice(0, MOST_OFFERED);
}

/**
 * A bare number that cannot be meant for the open step: it was on its way before that step was put,
 * or the open step wants no number. Which reading it is is asked: taken for the wrong one it would
 * move the whole list.
 * @param given `isChoice`: the number stands for one of the open step's results
 * @returns null where the number answers the open step, or there is no reading that it could be
 */
export function whichReading(
  state: CaseState,
  text: string,
  given: Given & { readonly isChoice: boolean },
): Decision | null {
  const open = state.open.technician;
  const bare = text.trim();
  if (open === null || open.asking.about === "missing" || !BARE.test(bare)) return null;
  const isAsked = given.isChoice || readingOf(openCheck(state) ?? "", given.desk) !== null;
  const wasUnseen = given.heard.incoming.sentAt < open.askedAt - CLOCKS_APART;
  if (isAsked && !wasUnseen) return null;
  const offered = checksOffered(state, given.desk);
  if (offered.length === 0) return null;
  const press = (check: string) => ({
    ...{ case: state.id, revision: 0, act: "reading-of", value: `${check} ${bare}` },
  });
  const buttons = offered.map((check) => {
    const observation = readingOf(check, given.desk) ?? "";
    return button(named(observation), press(check));
  });
  const lines = [line(phrase("late-reading", { text: bare }), "heading")];
  const none = button(phrase("answer-none-of-these"), press(NONE));
  const message = { lines, buttons: [...buttons, none] };
  return { happenings: [], effects: [say(technicianOf(state), message, lateSlot(state, bare))] };
}

const lateSlot = (state: CaseState, text: string) => `late-${state.id}-${text}`;

/** Takes the number as the reading that was pressed; one that is none is kept as a note. */
export function takeReadingOf(state: CaseState, value: string, given: Given): Decision {
  const [, check = "", text = ""] = /^(\S+) (.+)$/.exec(value) ?? [];
  const { desk } = given;
  if (check === NONE) {
    const note: CaseHappening = { type: "note.added", text, from: "technician" };
    const kept = phrase("note-kept", { number: state.id });
    const closed = revise(technicianOf(state), { lines: [line(kept)] }, lateSlot(state, text));
    const slips = slipEffects(advance(state, [note], given.heard), desk);
    return { happenings: [note], effects: [closed, ...slips] };
  }
  const observation = readingOf(check, desk);
  const reading = observation === null ? undefined : desk.read?.(text, observation);
  if (reading === undefined) return nothingToDo;
  const facts = factsIn(reading, { state, knowledge: desk.knowledge, reporter: "technician" });
  const answers = facts.filter(
    (fact) => fact.type === "answer.given" && fact.report.observation === observation,
  );
  if (answers.length === 0 || stands(state, answers)) return nothingToDo;
  const decided = goOn(state, answers, given);
  return {
    ...decided,
    effects: [settled(state, text, named(observation ?? "")), ...decided.effects],
  };
}

/** The same reading was entered already: a button pressed twice. */
function stands(state: CaseState, answers: readonly CaseHappening[]): boolean {
  return answers.every(
    (answer) =>
      answer.type === "answer.given" &&
      state.answers.some(
        ({ report: { observation, said, epoch } }) =>
          observation === answer.report.observation &&
          epoch === answer.report.epoch &&
          JSON.stringify(said) === JSON.stringify(answer.report.said),
      ),
  );
}

const named = (observation: string): Phrase => ({ know: wordKey("observation", observation) });

/** The question without its buttons, with what the number was. */
function settled(state: CaseState, text: string, what: Phrase): PlannedEffect {
  const words = phrase("named-value", { name: { phrase: what }, value: text });
  return revise(technicianOf(state), { lines: [line(words)] }, lateSlot(state, text));
}
