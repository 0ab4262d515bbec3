import type { CaseHappening, PhotoFound } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Due } from "../domain/follow-up.ts";
import { button, type Decision, line, nothingToDo, phrase, revise, say } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { SILENCE, tell } from "./follow-ups.ts";
import { notAtNight } from "./hours.ts";
import { ask } from "./proceed.ts";

/** Reminds once of the open question; while the person is answering it only looks in again later. */
function lookIn(state: CaseState, desk: Desk): Decision {
  const open = state.open.operator;
  const isOver = state.closed !== null || state.operator.chat === "" || state.technician !== null;
  if (isOver || state.reminded || state.safety === "not-clear") return nothingToDo;
  if (open === null) return nothingToDo;
  const due = open.askedAt + SILENCE;
  if (due > desk.now) {
    const notBefore = notAtNight(due, desk.shop.timeZone, desk.shop.quietHours);
    const again = tell("case", state.id, { event: { type: "look-in" }, notBefore });
    return { happenings: [], effects: [again] };
  }
  const before = [line(phrase("reminder", { number: state.id }))];
  const asked = ask(state, { asking: open.asking, before, aboutMore: null }, desk);
  const reminded: CaseHappening = { type: "operator.reminded" };
  const woken: CaseHappening[] =
    state.interview === "paused" ? [{ type: "interview.resumed" }] : [];
  return { ...asked, happenings: [reminded, ...woken, ...asked.happenings] };
}

/** Some days after the end: a machine that came back teaches more than a silent one. */
function stillFine(state: CaseState): Decision {
  if (state.closed === null || state.aftermath !== "unasked" || state.operator.chat === "") {
    return nothingToDo;
  }
  const press = (act: string) => ({ case: state.id, revision: 0, act });
  const message = {
    lines: [line(phrase("still-fine", { number: state.id }), "heading")],
    buttons: [
      button(phrase("answer-still-fine"), press("fine")),
      button(phrase("answer-came-back"), press("came-back")),
    ],
  };
  return {
    happenings: [{ type: "aftermath.asked" }],
    effects: [say(state.operator, message, "aftermath")],
  };
}

/** What the clock alone brings about in a case. */
export function laterTurn(state: CaseState, due: Due, desk: Desk): Decision {
  return due.type === "look-in" ? lookIn(state, desk) : stillFine(state);
}

/** A photo was looked at: the person is told how to take a better one where it is of no use. */
export function photoTurn(state: CaseState, file: string, found: PhotoFound): Decision {
  const kept = state.files.find((one) => one.file.id === file);
  if (kept === undefined || kept.found !== undefined) return nothingToDo;
  const happenings: CaseHappening[] = [{ type: "photo.checked", file, found }];
  const isOver = state.closed !== null || state.operator.chat === "";
  if (found === "fine" || found === "not-checked" || isOver) return { happenings, effects: [] };
  const hint = { lines: [line(phrase(`photo-${found}`)), line(phrase("photo-if-you-can"))] };
  return { happenings, effects: [revise(state.operator, hint, `photo-hint-${found}`)] };
}
