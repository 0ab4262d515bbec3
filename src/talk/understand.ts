import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Arg, Line } from "../domain/effects.ts";
import type { MachineFacts, Report } from "../domain/evidence.ts";
import type { Knowledge } from "../domain/knowledge.ts";
import { wordKey } from "../domain/knowledge.ts";
import type { ReadingResult } from "../domain/reading.ts";
import { ON_START, type Reporter } from "../domain/vocabulary.ts";
import { line, phrase } from "./decision.ts";
import { AT_MACHINE } from "./place.ts";
import { addsTo, reportsFrom } from "./reports.ts";

/** A machine named less surely than this is asked for. */
const KIND_SURE_ENOUGH = 0.6;

function machineFacts(reading: ReadingResult, state: CaseState): CaseHappening[] {
  const { kind, certainty, fuel, volts, hours, ageYears, cylinders } = reading.machine;
  const known = state.machine;
  const facts: Partial<MachineFacts> = {
    ...(kind !== undefined && certainty >= KIND_SURE_ENOUGH && known.kind === undefined
      ? { kind }
      : {}),
    ...(fuel !== undefined && known.fuel === undefined ? { fuel } : {}),
    ...(volts !== undefined ? { volts } : {}),
    ...(hours !== undefined ? { hours } : {}),
    ...(ageYears !== undefined ? { ageYears } : {}),
    ...(cylinders !== undefined ? { cylinders } : {}),
  };
  return Object.keys(facts).length === 0 ? [] : [{ type: "machine.described", facts }];
}

/** The reports that free words come to, each as sure as it was said. */
export function reportsIn(
  reading: ReadingResult,
  given: { state: CaseState; knowledge: Knowledge; reporter: Reporter },
): readonly Report[] {
  const { state, knowledge, reporter } = given;
  const telling = { knowledge, reporter, epoch: state.epoch };
  const told = state.answers.map((answer) => answer.report);
  const asked = askedFor(state, knowledge);
  return reportsFrom(reading.understood, reading.denied, telling)
    .filter((report) => addsTo(told, report))
    .map((report) => (asked.has(report.observation) ? report : { ...report, unasked: true }));
}

/** What the open questions are about: an answer to them is not told unasked. */
function askedFor(state: CaseState, knowledge: Knowledge): ReadonlySet<string> {
  const open = [state.open.operator, state.open.technician].flatMap((one) =>
    one?.asking.about === "check" ? (knowledge.checks.get(one.asking.check)?.yields ?? []) : [],
  );
  return new Set(open);
}

/** Dangers that the words name and that do not stand already. */
export function dangers(reading: ReadingResult, state: CaseState, knowledge: Knowledge): string[] {
  const standing = state.safety === "not-clear" ? state.flags.map((flag) => flag.flag) : [];
  return [...new Set(reading.redFlags.map((flag) => flag.id))].filter(
    (flag) => knowledge.redFlags.has(flag) && !standing.includes(flag),
  );
}

/** Everything a message in free words tells about the case. */
export function factsIn(
  reading: ReadingResult,
  given: { state: CaseState; knowledge: Knowledge; reporter: Reporter },
): CaseHappening[] {
  const flags = dangers(reading, given.state, given.knowledge).map(
    (flag): CaseHappening => ({ type: "flag.raised", flag }),
  );
  const urgency: CaseHappening[] =
    reading.urgency !== null && given.state.urgency === null
      ? [{ type: "urgency.told", urgency: reading.urgency }]
      : [];
  const answers = reportsIn(reading, given).map(
    (report): CaseHappening => ({ type: "answer.given", report }),
  );
  return [...machineFacts(reading, given.state), ...flags, ...urgency, ...answers];
}

/** A report in words, for people. */
export function reportWords(report: Report, knowledge: Knowledge): Arg[] {
  const { said, observation } = report;
  const state = (id: string): Arg => ({ know: wordKey("state", `${observation}.${id}`) });
  if (said.kind === "value") {
    const unit = knowledge.observations.get(observation)?.unit;
    const value: Arg = unit === undefined ? said.value : { quantity: said.value, unit };
    return [
      {
        phrase: phrase("named-value", {
          name: { know: wordKey("observation", observation) },
          value,
        }),
      },
    ];
  }
  if (said.kind === "members") return said.present.map(state);
  if (said.kind === "unknown") return [];
  const entries = Object.entries(said.weights);
  const plain = entries.filter(([, weight]) => weight > 0.5).map(([id]) => state(id));
  return plain;
}

/** What these are about is plain from their words. */
const speakForThemselves: ReadonlySet<string> = new Set([ON_START, AT_MACHINE]);

/** A report as it is said back: what it is about stands before words that do not say it. */
function notedWords(report: Report, knowledge: Knowledge): Arg[] {
  const words = reportWords(report, knowledge);
  const isPlain = report.said.kind !== "states" || speakForThemselves.has(report.observation);
  if (isPlain || words.length === 0) return words;
  const name = { know: wordKey("observation", report.observation) };
  return [{ phrase: phrase("answer-in-list", { name, value: { list: words } }) }];
}

/** "Noted: one click, lights bright." — or nothing where no words were understood. */
export function notedLines(happenings: readonly CaseHappening[], knowledge: Knowledge): Line[] {
  const what = happenings.flatMap((happening): Arg[] => {
    if (happening.type === "answer.given") return notedWords(happening.report, knowledge);
    if (happening.type !== "machine.described") return [];
    const { kind, fuel } = happening.facts;
    return [
      ...(kind === undefined ? [] : [{ know: wordKey("machine", kind) }]),
      ...(fuel === undefined ? [] : [{ phrase: phrase(`fuel-${fuel}`) }]),
    ];
  });
  return what.length === 0 ? [] : [line(phrase("noted", { what: { list: what, parted: true } }))];
}
