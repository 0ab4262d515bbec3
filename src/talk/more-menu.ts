import type { Asking, CaseHappening } from "../domain/case-events.ts";
import { askingKey, type CaseState, type GivenAnswer } from "../domain/case-state.ts";
import type { Message, Phrase } from "../domain/effects.ts";
import type { Report } from "../domain/evidence.ts";
import { wordKey } from "../domain/knowledge.ts";
import { advance } from "./advance.ts";
import { standingFlag, stayStopped } from "./alarm.ts";
import {
  button,
  type Decision,
  line,
  nothingToDo,
  phrase,
  revise,
  say,
  together,
} from "./decision.ts";
import { type Desk, type Heard, toldMachine } from "./desk.ts";
import { operatorCheckFor } from "./next-question.ts";
import { ask, proceed, sayStill, silenceOpen } from "./proceed.ts";
import { questionLines, questionMessage, questionSlot } from "./question.ts";
import { slipEffects } from "./slip.ts";
import { reportWords } from "./understand.ts";

interface Given {
  readonly heard: Heard;
  readonly desk: Desk;
}

const ANSWERS_PER_LIST = 8;

/** The open question's message with the ways out in place of the answers. */
export function showMore(state: CaseState, desk: Desk): Decision {
  const open = state.open.operator;
  const revision = open?.revision ?? state.revision;
  const press = (act: string) => ({ case: state.id, revision, act });
  const ways = ["back", "change", "pause", "person", "runs", "stop", "return"];
  const message: Message = {
    lines: [
      ...(open === null ? [] : questionLines(open.asking, desk)),
      line(phrase("more-choose"), undefined, true),
    ],
    buttons: ways.map((way) => button(phrase(`more-${way}`), press(way))),
  };
  const slot = open === null ? "more" : questionSlot(open.asking);
  return { happenings: [], effects: [revise(state.operator, message, slot)] };
}

/** Puts the answers back under the open question. */
export function showOpen(state: CaseState, desk: Desk): Decision {
  const open = state.open.operator;
  if (open === null) return { happenings: [], effects: [] };
  const { asking, revision } = open;
  const message = questionMessage(state, { asking, revision, aboutMore: null, before: [] }, desk);
  return { happenings: [], effects: [revise(state.operator, message, questionSlot(asking))] };
}

/**
 * Says the open question again, at the bottom of the chat where it will be seen. It stays the same
 * question: the buttons of every copy answer it, so that nobody who presses faster than messages
 * come presses one that is out of date for ever.
 */
export function repeatOpen(state: CaseState, before: Phrase, given: Given): Decision {
  if (standingFlag(state) !== null) return stayStopped(state, [], given);
  if (state.open.operator !== null) return sayOpen(state, before, given.desk);
  return proceed(state, { happenings: [], before: [line(before)] }, given);
}

/** The open question once more; nothing where none is open. */
export function sayOpen(state: CaseState, before: Phrase, desk: Desk): Decision {
  const open = state.open.operator;
  if (open === null) return nothingToDo;
  const again = sayStill(state, open, { before: [line(before)], desk });
  return { ...again, effects: [...silenceOpen(state), ...again.effects] };
}

const operatorAnswers = (state: CaseState) =>
  state.answers.filter(({ from, report }) => from === "operator" && report.reporter !== "photo");

/** The questions on the way to the open one; asking one again cuts off what came after it. */
function trail(state: CaseState): Asking[] {
  const path: Asking[] = [];
  for (const { asking, to } of state.askedEver) {
    if (to !== "operator") continue;
    const again = path.findIndex((one) => askingKey(one) === askingKey(asking));
    if (again >= 0) path.length = again;
    path.push(asking);
  }
  return path;
}

/** Takes the newest answer back and asks for it again. */
export function goBack(state: CaseState, given: Given): Decision {
  const path = trail(state);
  const earlier = path[path.length - (state.open.operator === null ? 1 : 2)];
  if (earlier === undefined) return repeatOpen(state, phrase("nothing-before"), given);
  return askAgain(state, earlier, given);
}

const withdrawn = ({ observation, epoch, reporter }: Report): CaseHappening => ({
  ...{ type: "answer.withdrawn", observation, epoch, reporter },
});

function withdrawals(state: CaseState, asking: Asking, desk: Desk): CaseHappening[] {
  if (asking.about !== "check") return [];
  const observation = desk.knowledge.checks.get(asking.check)?.yields;
  return operatorAnswers(state)
    .filter((answer) => answer.report.observation === observation)
    .map(({ report }) => withdrawn(report));
}

/** Withdraws what was answered to a question and puts the question again, from its first step. */
export function askAgain(state: CaseState, asking: Asking, given: Given): Decision {
  const taken = withdrawals(state, asking, given.desk);
  const fresh: Asking = asking.about === "check" ? { about: "check", check: asking.check } : asking;
  const after = advance(state, taken, given.heard);
  const asked = ask(
    after,
    { asking: fresh, before: [line(phrase("asked-again"))], aboutMore: null },
    given.desk,
  );
  return { ...asked, happenings: [...taken, ...asked.happenings] };
}

function answerLabel(answer: GivenAnswer, desk: Desk): Phrase {
  const words = reportWords(answer.report, desk.knowledge);
  const name = { know: wordKey("observation", answer.report.observation) };
  return phrase("answer-in-list", { name, value: { list: words } });
}

/** A list of what was answered so far; each can be taken back. */
export function listAnswers(state: CaseState, desk: Desk): Decision {
  const answers = operatorAnswers(state).slice(-ANSWERS_PER_LIST);
  const revision = state.revision;
  const press = (act: string, value?: string) => ({
    case: state.id,
    revision,
    act,
    ...(value === undefined ? {} : { value }),
  });
  const message: Message = {
    lines: [line(phrase(answers.length === 0 ? "no-answers-yet" : "which-answer"), "heading")],
    buttons: [
      ...answers.map((answer) =>
        button(answerLabel(answer, desk), press("withdraw", answer.report.observation)),
      ),
      button(phrase("more-return"), press("repeat")),
    ],
  };
  return { happenings: [], effects: [say(state.operator, message, "answers")] };
}

/** Takes one answer back; it is asked again where a question yields it. */
export function withdraw(state: CaseState, observation: string, given: Given): Decision {
  const answer = operatorAnswers(state).findLast((one) => one.report.observation === observation);
  if (answer === undefined) return repeatOpen(state, phrase("nothing-to-change"), given);
  const { knowledge } = given.desk;
  const check =
    answer.check ?? operatorCheckFor(knowledge, observation, toldMachine(state, knowledge));
  if (check !== null) return askAgain(state, { about: "check", check }, given);
  const happenings = [withdrawn(answer.report)];
  return proceed(state, { happenings, before: [line(phrase("taken-back"))] }, given);
}

/** Leaves the interview where it stands. */
export function pause(state: CaseState): Decision {
  const press = { case: state.id, revision: state.revision, act: "resume" };
  const message = {
    lines: [line(phrase("paused"))],
    buttons: [button(phrase("answer-go-on"), press)],
  };
  return { happenings: [{ type: "interview.paused" }], effects: [say(state.operator, message)] };
}

/** The operator needs no more help; the case ends, and can be opened again. */
export function stopCase(state: CaseState, given: Given): Decision {
  const closed: CaseHappening = {
    type: "case.closed",
    end: "called-off",
    complaint: state.words[0] ?? "",
    cause: "",
    correction: "",
  };
  const after = advance(state, [closed], given.heard);
  const press = { case: state.id, revision: state.revision, act: "reopen" };
  const message = {
    lines: [line(phrase("stopped", { number: state.id }))],
    buttons: [button(phrase("answer-open-again"), press)],
    endOffer: true,
  };
  const told = state.shopTold ? slipEffects(after, given.desk) : [];
  const effects = [...silenceOpen(state), say(state.operator, message), ...told];
  return { happenings: [closed], effects };
}

/** Opens a stopped case again and goes on. */
export function reopen(state: CaseState, given: Given): Decision {
  if (state.closed === null) return repeatOpen(state, phrase("here-we-are"), given);
  const happenings: CaseHappening[] = [{ type: "case.reopened" }];
  return together(proceed(state, { happenings, before: [line(phrase("here-we-are"))] }, given));
}
