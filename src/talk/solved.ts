import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Line, Message } from "../domain/effects.ts";
import type { Act } from "../domain/knowledge.ts";
import { wordKey } from "../domain/knowledge.ts";
import type { Ranking } from "../domain/triage.ts";
import { ON_START } from "../domain/vocabulary.ts";
import { advance } from "./advance.ts";
import { button, type Decision, line, phrase, say } from "./decision.ts";
import type { Desk, Heard } from "./desk.ts";
import { plainState } from "./place.ts";
import { closeQuestion, type Outcome, proceed } from "./proceed.ts";
import { slipEffects } from "./slip.ts";

interface Given {
  readonly heard: Heard;
  readonly desk: Desk;
}

/** What an act after which the machine runs has done with the trouble. */
export interface Cure {
  /** True where it is gone; false where it is only hidden for now, or not known at all. */
  readonly isGone: boolean;
  /** The likeliest fault that the act does away with, or hides; null where it does neither. */
  readonly fault: string | null;
}

/**
 * Weighs whether the act cured or hid. Each fault counts with its belief, split by how often the
 * act cures it and how often it only hides it; a jump start cures nothing, so it is never a cure.
 * @param ranking the causes as they stand once it is known that the machine ran
 */
export function judgeCure(act: Pick<Act, "cures" | "masks">, ranking: Ranking): Cure {
  let gone = 0;
  let hidden = 0;
  for (const { fault, probability } of ranking.causes) {
    const cures = act.cures.get(fault) ?? 0;
    const masks = act.masks.get(fault) ?? 0;
    if (cures + masks === 0) continue;
    gone += (probability * cures) / (cures + masks);
    hidden += (probability * masks) / (cures + masks);
  }
  const isGone = gone > hidden;
  const touched = isGone ? act.cures : act.masks;
  const leader = ranking.causes.find((cause) => (touched.get(cause.fault) ?? 0) > 0);
  return { isGone, fault: leader?.fault ?? null };
}

/** The act among these happenings after which the machine ran, or null. */
export function curingAct(happenings: readonly CaseHappening[]): string | null {
  const done = happenings.find((one) => one.type === "act.done" && one.outcome === "cured");
  return done?.type === "act.done" ? done.act : null;
}

/** What the complaint was: the symptom where it is known, else the first words. */
export function complaintOf(state: CaseState): string {
  return plainState(state, ON_START) ?? state.words[0] ?? "";
}

function solvedMessage(state: CaseState, fault: string): Message {
  const again = { case: state.id, revision: state.revision, act: "reopen" };
  return {
    lines: [
      line(phrase("solved-cause", { cause: { know: wordKey("fault", fault) } }), "heading"),
      line({ know: wordKey("fault", fault, "explain") }),
      line(phrase("solved-closed", { number: state.id }), undefined, true),
    ],
    buttons: [button(phrase("answer-open-again"), again)],
    endOffer: true,
  };
}

function close(
  state: CaseState,
  outcome: Outcome,
  given: Given & { readonly act: string; readonly fault: string },
): Decision {
  const { heard, desk, act, fault } = given;
  const happenings: CaseHappening[] = [
    ...outcome.happenings,
    { type: "cause.confirmed", faults: [fault], how: "ran-after-this" },
    {
      type: "case.closed",
      end: "solved-by-chat",
      complaint: complaintOf(state),
      cause: fault,
      correction: act,
    },
  ];
  const after = advance(state, happenings, heard);
  const { technician } = state;
  const saved = { lines: [line(phrase("solved-for-technician", { number: state.id }))] };
  return {
    happenings,
    effects: [
      ...closeQuestion(state, outcome.answered, desk),
      say(state.operator, solvedMessage(after, fault), "ending"),
      ...(technician === null ? [] : [say(technician, saved)]),
      ...(state.shopTold ? slipEffects(after, desk) : []),
    ],
  };
}

function hiddenLines(fault: string | null, desk: Desk): Line[] {
  const cause =
    fault === null
      ? phrase("runs-for-now-unknown")
      : phrase("runs-for-now", { cause: { know: wordKey("fault", fault) } });
  return [line(cause, "heading"), line(phrase("runs-and-kept", { shop: desk.shop.name }))];
}

/**
 * The machine runs after something the operator did. Where that cured it the case closes; where it
 * only hides the trouble the operator is told so, and the shop gets the case.
 * @returns null where nothing the operator did made it run
 */
export function whenItRuns(state: CaseState, outcome: Outcome, given: Given): Decision | null {
  const id = curingAct(outcome.happenings);
  const act = id === null ? undefined : given.desk.knowledge.acts.get(id);
  if (act === undefined) return null;
  const after = advance(state, outcome.happenings, given.heard);
  const { isGone, fault } = judgeCure(act, given.desk.triage(after, "operator").ranking);
  if (isGone && fault !== null) return close(state, outcome, { ...given, act: act.id, fault });
  const ended: CaseHappening[] = [
    { type: "interview.ended", because: "runs-for-now" },
    { type: "shop.told" },
  ];
  const happenings = [...outcome.happenings, ...ended];
  const before = [...outcome.before, ...hiddenLines(fault, given.desk)];
  return proceed(state, { ...outcome, happenings, before }, given);
}
