import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Line } from "../domain/effects.ts";
import type { Command, ReadingResult } from "../domain/reading.ts";
import { advance } from "./advance.ts";
import { standingFlag } from "./alarm.ts";
import { operatorReporter } from "./answer.ts";
import { type Decision, line, nothingToDo, phrase, together } from "./decision.ts";
import type { Desk } from "./desk.ts";
import { badlySpelt, leftOut, missed, passOpen } from "./missed.ts";
import { isSafetyAsked, meaningQuestion } from "./next-question.ts";
import { answer, type Given, goOn, menuAct, resume } from "./operator-press.ts";
import { ask, proceed } from "./proceed.ts";
import { isWritten } from "./spoken-answer.ts";
import { matchTyped, unclearIn } from "./typed.ts";
import { typedWay } from "./typed-way.ts";
import { dangers, factsIn, notedLines, reportWords } from "./understand.ts";

const commandActs: Partial<Readonly<Record<Command, string>>> = {
  back: "back",
  stop: "stop",
  person: "person",
  more: "more",
};

/** Longer than the number on any plate. */
const MOST_SERIAL = 40;

/** A number among words: seven digits or more, parted as people part them. */
const NUMBER_TO_RING = /\+?\d(?:[\s/().-]*\d){6,19}/;

/** A fact that only an open question makes sense of: the place in words, the phone number. */
function typedFact(state: CaseState, text: string): CaseHappening[] {
  const asking = state.open.operator?.asking;
  const about = asking?.about;
  if (asking?.about === "plate" && /\d/.test(text)) {
    const serial = text.replace(/\s+/g, " ").trim().slice(0, MOST_SERIAL);
    return [
      { type: "machine.described", facts: { serial } },
      { type: "question.passed", asking, why: "skipped" },
    ];
  }
  if (asking?.about === "story") return [{ type: "question.passed", asking, why: "skipped" }];
  if (about === "where") {
    const [phone] = (asking?.about === "where" && asking.phone && NUMBER_TO_RING.exec(text)) || [];
    const where: CaseHappening = { type: "where.told", words: text };
    return phone === undefined ? [where] : [where, { type: "phone.told", phone: phone.trim() }];
  }
  if (about === "phone" && /\d{3}/.test(text.replace(/[\s/()-]/g, ""))) {
    return [{ type: "phone.told", phone: text.trim().slice(0, 40) }];
  }
  return [];
}

function byCommand(state: CaseState, command: Command, given: Given): Decision | null {
  const act = commandActs[command];
  // Before anything was asked there is nothing to go back to: the greeting comes first.
  const isEarly = state.askedEver.length === 0 && (act === "back" || act === "more");
  if (isEarly) return null;
  if (act !== undefined) return menuAct(act, state, given);
  return command === "dont-know" ? passOpen(state, given) : null;
}

function implausibleLines(reading: ReadingResult): Line[] {
  return reading.implausible.map((one) =>
    line(
      phrase("implausible", {
        value: `${one.value} ${one.unit}`,
        low: one.range[0],
        high: one.range[1],
        unit: one.unit,
      }),
    ),
  );
}

/** Everything that words tell, the words themselves first. */
function heardIn(
  state: CaseState,
  text: string,
  { heard, desk }: Given,
): [CaseHappening, ...CaseHappening[]] {
  const { knowledge } = desk;
  const { what } = heard.incoming;
  const isPassedOn = what.kind === "text" && what.forwarded === true;
  const reporter = isPassedOn ? "second-hand" : operatorReporter(state);
  const facts =
    heard.reading === null ? [] : factsIn(heard.reading, { state, knowledge, reporter });
  const isEarly = heard.reading !== null && !isSafetyAsked(state);
  const unclear = isEarly ? unclearIn(heard.reading, state) : null;
  const said = { type: "words.said", text, ...(unclear === null ? {} : { unclear }) } as const;
  return [said, ...typedFact(state, text), ...facts];
}

/** While a red flag stands: the danger is over, a person is wanted, or it is only kept. */
function wordsWhileStopped(state: CaseState, text: string, given: Given): Decision {
  const { desk, heard } = given;
  const isOver = ["answer-safe-now", "word-safe-now"].some((key) =>
    isWritten(text, key, { state, desk }),
  );
  if (isOver) return menuAct("safe-now", state, given) ?? nothingToDo;
  const command = heard.reading?.command ?? "back";
  const way = typedWay(text, state, desk) ?? commandActs[command];
  if (way === "person" || way === "stop") return menuAct(way, state, given) ?? nothingToDo;
  return goOn(state, { happenings: heardIn(state, text, given), before: [] }, given);
}

/** Words that name something: a command, an answer on offer, a way out of the question. */
function byName(state: CaseState, text: string, given: Given): Decision | null {
  const { desk, heard } = given;
  const command = heard.reading?.command ?? null;
  const decided = command === null ? null : byCommand(state, command, given);
  if (decided !== null) return decided;
  const open = state.open.operator;
  const typed = open === null ? null : matchTyped(open.asking, text, { state, desk });
  if (typed !== null) return answer(state, typed, given);
  const left = leftOut(state, text, given);
  if (left !== null) return left;
  const way = state.askedEver.length === 0 ? null : typedWay(text, state, desk);
  return way === null ? null : menuAct(way, state, given);
}

/** Free words: a command, an answer to the open question, or facts of any kind. */
export function words(state: CaseState, text: string, given: Given): Decision {
  const { heard, desk } = given;
  const reading = heard.reading;
  const open = state.open.operator;
  if (reading !== null && dangers(reading, state, desk.knowledge).length > 0) {
    // An answer on offer that is itself the danger is as sure written as pressed.
    const offered = byName(state, text, given);
    if (offered?.happenings.some(({ type }) => type === "flag.raised") === true) return offered;
    const [said, ...facts] = heardIn(state, text, given);
    const answered = answeredBy(facts, state, desk);
    return goOn(state, { happenings: [said, ...facts], before: [], ...answered }, given);
  }
  if (standingFlag(state) !== null) return wordsWhileStopped(state, text, given);
  if (state.interview === "paused") return wordsAfterPause(state, text, given);
  const named = byName(state, text, given);
  if (named !== null) return named;
  const [said, ...facts] = heardIn(state, text, given);
  const odd = reading === null ? [] : implausibleLines(reading);
  const before = [...openingLines(state, desk), ...notedLines(facts, desk.knowledge), ...odd];
  const unclear = reading === null ? null : unclearIn(reading, state);
  if (unclear !== null && isSafetyAsked(state)) {
    const after = advance(state, [said, ...facts], heard);
    const asking = meaningQuestion(unclear, after, desk.knowledge);
    const asked = ask(after, { asking, before, aboutMore: null }, desk);
    return together({ happenings: [said, ...facts], effects: [] }, asked);
  }
  const nothing = facts.length === 0 && odd.length === 0;
  const meant = nothing ? badlySpelt(state, text, given) : null;
  if (meant !== null) return meant;
  if (nothing && open !== null && state.words.length > 0) return missed(state, said, given);
  if (nothing && state.interview === "ended") return passOn(state, text, given);
  return goOn(
    state,
    { happenings: [said, ...facts], before, ...answeredBy(facts, state, desk) },
    given,
  );
}

/** Any word ends a pause; what it says counts, and who wants a person or an end gets that. */
function wordsAfterPause(state: CaseState, text: string, given: Given): Decision {
  const { heard, desk } = given;
  const [, ...facts] = heardIn(state, text, given);
  const command = heard.reading?.command ?? null;
  const typed =
    state.open.operator === null
      ? null
      : matchTyped(state.open.operator.asking, text, { state, desk });
  if (facts.length === 0 && command === null && typed === null) return resume(state, given);
  const woken: CaseHappening[] = [{ type: "interview.resumed" }];
  const after = advance(state, woken, heard);
  return together({ happenings: woken, effects: [] }, words(after, text, given));
}

/** A question whose answer came among free words shows it. */
function answeredBy(facts: readonly CaseHappening[], state: CaseState, desk: Desk) {
  const open = state.open.operator;
  if (open === null) return {};
  const { asking } = open;
  const [fact] = facts.flatMap((one) =>
    one.type === "where.told" ? [one.words] : one.type === "phone.told" ? [one.phone] : [],
  );
  if (fact !== undefined) return { answered: { question: open, label: { raw: fact } } };
  if (asking.about === "story") {
    return { answered: { question: open, label: phrase("answer-noted") } };
  }
  const yields = asking.about === "check" ? desk.knowledge.checks.get(asking.check)?.yields : null;
  const given = facts.find(
    (fact) => fact.type === "answer.given" && fact.report.observation === yields,
  );
  if (given?.type !== "answer.given") return {};
  const label = phrase("named-answer", {
    what: { list: reportWords(given.report, desk.knowledge) },
  });
  return { answered: { question: open, label } };
}

/** What was asked for with the last message; without a phone number, digits alone may be that. */
function platedNumber(state: CaseState, text: string): CaseHappening[] {
  const serial = text.replace(/\s+/g, " ").trim();
  const isNumber = /^(?=(?:.*\d){3})\S+( \S+){0,2}$/.test(serial) && serial.length <= MOST_SERIAL;
  const isPlain = state.phone !== null || /\p{L}/u.test(serial);
  if (!isNumber || !isPlain || state.machine.serial !== undefined) return [];
  return state.passed.includes("plate") ? [{ type: "machine.described", facts: { serial } }] : [];
}

/** After the interview, words go to the shop with the case. */
function passOn(state: CaseState, text: string, given: Given): Decision {
  const happenings: CaseHappening[] = [
    { type: "words.said", text },
    { type: "note.added", text, from: "operator" },
    ...platedNumber(state, text),
  ];
  const before = [line(phrase("passed-on"))];
  return proceed(state, { happenings, before }, given);
}

/** The first message is answered first: a greeting and what will happen with what is said. */
export function openingLines(state: CaseState, desk: Desk): Line[] {
  if (state.safety !== "unasked" || state.askedEver.length > 0) return [];
  const link = desk.shop.privacyLink;
  const consent = link === undefined ? phrase("consent") : phrase("consent-link", { link });
  return [line(phrase("hello", { shop: desk.shop.name })), line(consent)];
}
