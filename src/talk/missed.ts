import type { Asking, CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import { advance } from "./advance.ts";
import { operatorReporter, takeAnswer } from "./answer.ts";
import { choicesFor, DONT_KNOW, SKIP } from "./choices.ts";
import { type Decision, line, phrase, together } from "./decision.ts";
import { THAT_IS_ALL } from "./equipment.ts";
import { repeatOpen } from "./more-menu.ts";
import { nearWords } from "./near-words.ts";
import { answer, type Given } from "./operator-press.ts";
import { isWritten } from "./spoken-answer.ts";
import { matchTyped } from "./typed.ts";

/** Who writes several messages in one breath has not yet read what came back. */
const ONE_BREATH_MS = 10_000;

/** The answer that passes the question, whatever its screen calls it. */
function dontKnowTo(asking: Asking, state: CaseState, { desk }: Given): string {
  if (asking.about === "equipment") return THAT_IS_ALL;
  if (asking.about === "trip") return "cannot";
  const { knowledge } = desk;
  const taken = takeAnswer(asking, DONT_KNOW, {
    ...{ state, knowledge, reporter: operatorReporter(state) },
  });
  return taken === null ? SKIP : DONT_KNOW;
}

/** Passes the open question as not known; null where none is open. */
export function passOpen(state: CaseState, given: Given): Decision | null {
  const open = state.open.operator;
  return open === null ? null : answer(state, dontKnowTo(open.asking, state, given), given);
}

/** "Can't", "no photo": said of what may be left out, it is left out. */
export function leftOut(state: CaseState, text: string, given: Given): Decision | null {
  const open = state.open.operator;
  const { desk } = given;
  if (open === null || !isWritten(text, "word-skip", { state, desk })) return null;
  const choices = choicesFor(open.asking, state, desk.knowledge);
  return choices.some(({ value }) => value === SKIP) ? answer(state, SKIP, given) : null;
}

/**
 * Words that say nothing as they stand, but are an answer on offer, or a don't-know, once spelling
 * does not count; null where they are neither.
 */
export function badlySpelt(state: CaseState, text: string, given: Given): Decision | null {
  const open = state.open.operator;
  if (open === null) return null;
  const near = { state, desk: given.desk, alike: nearWords };
  const meant = matchTyped(open.asking, text, near);
  if (meant !== null) return answer(state, meant, given);
  return isWritten(text, "word-dont-know", near) ? passOpen(state, given) : null;
}

/**
 * Words that answer the open question in no way. The first time it is put again with its answers; the
 * second time it is passed as not known, and that is said: nobody is kept at a question by what they
 * cannot spell.
 */
export function missed(state: CaseState, said: CaseHappening, given: Given): Decision {
  const { heard, desk } = given;
  const before = state.open.operator?.missedAt ?? null;
  const isAgain = before !== null && desk.now - before >= ONE_BREATH_MS;
  if (isAgain) {
    const kept = together({ happenings: [said], effects: [] });
    const passed = passOpen(advance(state, [said], heard), {
      ...given,
      before: [line(phrase("passed-unclear"))],
    });
    return passed === null ? kept : together(kept, passed);
  }
  const happenings: CaseHappening[] =
    before === null ? [said, { type: "question.missed" }] : [said];
  const kept = together({ happenings, effects: [] });
  return together(
    kept,
    repeatOpen(advance(state, happenings, heard), phrase("not-understood"), given),
  );
}
