import type { Asking, CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Line, Message } from "../domain/effects.ts";
import type { ReadingResult } from "../domain/reading.ts";
import { advance } from "./advance.ts";
import { takeAnswer } from "./answer.ts";
import { choicesFor, DONT_KNOW } from "./choices.ts";
import { back, type Given, withSlip } from "./counter-given.ts";
import { button, type Decision, line, phrase, say } from "./decision.ts";
import type { Desk, Heard } from "./desk.ts";
import { nextQuestion } from "./next-question.ts";
import { questionLines } from "./question.ts";
import { matchTyped } from "./typed.ts";
import { factsIn, notedLines } from "./understand.ts";

/** Questions read out in one breath. */
const AT_ONCE = 3;
/** Questions looked through for them: some are no questions for a phone. */
const LOOKED_THROUGH = 12;
/** What can be answered by somebody who stands elsewhere, phone in hand. */
const byPhone: ReadonlySet<Asking["about"]> = new Set([
  ...(["safety", "kind", "fuel", "check", "urgency", "where", "phone"] as const),
]);

function without(asking: Asking): CaseHappening {
  return asking.about === "safety"
    ? { type: "safety.answered", clear: true }
    : { type: "question.passed", asking, why: "dont-know" };
}

/** The next questions to read aloud, each as if the ones before were answered "don't know". */
export function questionsToRead(state: CaseState, given: Given): readonly Asking[] {
  const found: Asking[] = [];
  let ahead = state;
  for (let i = 0; i < LOOKED_THROUGH && found.length < AT_ONCE; i += 1) {
    const next = nextQuestion(ahead, given.desk);
    if (next.kind !== "ask") break;
    if (byPhone.has(next.asking.about)) found.push(next.asking);
    ahead = advance(ahead, [without(next.asking)], given.heard);
  }
  return found;
}

function readLines(asking: Asking, state: CaseState, desk: Desk): Line[] {
  const [first] = questionLines(asking, desk);
  if (first === undefined) return [];
  const answers = choicesFor(asking, state, desk.knowledge)
    .filter((choice) => choice.value !== DONT_KNOW && choice.value !== "-")
    .map((choice) => ({ phrase: choice.label }));
  const options =
    answers.length === 0 ? [] : [line(phrase("phone-options", { options: { list: answers } }))];
  return [{ ...first, style: "step" }, ...options];
}

function intakeMessage(state: CaseState, before: readonly Line[], given: Given): Message {
  const questions = questionsToRead(state, given);
  const press = (act: string) => ({ case: state.id, revision: 0, act });
  const asked = questions.flatMap((asking) => readLines(asking, state, given.desk));
  return {
    lines: [
      line(phrase("phone-case", { number: state.id }), "heading"),
      ...before,
      ...(asked.length === 0
        ? [line(phrase("phone-enough"))]
        : [line(phrase("phone-read"), "heading", true), ...asked, line(phrase("phone-answer"))]),
    ],
    buttons: [
      button(phrase("press-start-link"), press("start-link")),
      button(phrase("press-slip"), press("slip")),
      button(phrase("press-leave"), press("leave")),
    ],
  };
}

const noted = (facts: readonly CaseHappening[], desk: Desk): Line[] => {
  const lines = notedLines(facts, desk.knowledge);
  return lines.length === 0 ? [line(phrase("phone-nothing"))] : lines;
};

/** What the dispatcher noted on the phone becomes a case; the next questions are given to read out. */
export function phoneOpening(state: CaseState, text: string, given: Given): Decision {
  const { heard, desk } = given;
  const about = { state, knowledge: desk.knowledge, reporter: "second-hand" } as const;
  const facts = heard.reading === null ? [] : factsIn(heard.reading, about);
  const happenings: CaseHappening[] = [
    { type: "words.said", text },
    ...facts,
    { type: "shop.told" },
    { type: "shop.saw" },
    { type: "counter.prompted", about: "phone" },
  ];
  const after = advance(state, happenings, heard);
  const decision = withSlip(state, happenings, given);
  const message = intakeMessage(after, noted(facts, desk), given);
  return { ...decision, effects: [say(back(given), message), ...decision.effects] };
}

/** One answer for one question: its words, its number in the list, or whatever can be read in it. */
function answerTo(asking: Asking, text: string, given: Given & { state: CaseState }) {
  const { state, desk } = given;
  const { knowledge } = desk;
  const words = text.replace(/^\s*[1-9][.):]\s*/, "").trim();
  if (asking.about === "where") return [{ type: "where.told", words } as const];
  if (asking.about === "phone") return [{ type: "phone.told", phone: words } as const];
  const typed = matchTyped(asking, words, { state, desk });
  const reporter = "second-hand" as const;
  const taken = typed === null ? null : takeAnswer(asking, typed, { state, knowledge, reporter });
  if (taken !== null && taken.leadsTo === undefined) return taken.happenings;
  const yields = asking.about === "check" ? knowledge.checks.get(asking.check)?.yields : undefined;
  const reading: ReadingResult | null = desk.read?.(words, yields) ?? null;
  return reading === null ? [] : factsIn(reading, { state, knowledge, reporter });
}

/**
 * Answers as they were heard, in one line: as many as there were questions, parted by semicolons or
 * commas, are taken in their order; else everything that can be read in the line counts.
 */
export function phoneAnswers(state: CaseState, text: string, heard: Heard, desk: Desk): Decision {
  const given = { heard, desk };
  const asked = questionsToRead(state, given);
  const parts = text.split(/[;,\n]/).filter((part) => part.trim() !== "");
  const inOrder = parts.length === asked.length;
  const about = { state, knowledge: desk.knowledge, reporter: "second-hand" } as const;
  const read = heard.reading === null ? [] : factsIn(heard.reading, about);
  const facts: readonly CaseHappening[] = inOrder
    ? asked.flatMap((asking, i) => answerTo(asking, parts[i] ?? "", { ...given, state }))
    : read;
  const unanswered: CaseHappening[] = inOrder
    ? asked
        .filter((asking, i) => answerTo(asking, parts[i] ?? "", { ...given, state }).length === 0)
        .map((asking) => without(asking))
        .filter((one) => one.type === "question.passed")
    : [];
  const note: CaseHappening = { type: "note.added", text, from: "dispatcher" };
  const happenings = [...facts, ...unanswered, note];
  const after = advance(state, happenings, heard);
  const decision = withSlip(state, happenings, given);
  const message = intakeMessage(after, noted(facts, desk), given);
  return { ...decision, effects: [say(back(given), message), ...decision.effects] };
}
