import type { CaseHappening } from "../domain/case-events.ts";
import type { CaseState } from "../domain/case-state.ts";
import type { Arg, Line } from "../domain/effects.ts";
import type { MachineFacts, Report, Said } from "../domain/evidence.ts";
import type { Knowledge, Observation } from "../domain/knowledge.ts";
import { wordKey } from "../domain/knowledge.ts";
import type { ReadingResult, Understood } from "../domain/reading.ts";
import type { Reporter } from "../domain/vocabulary.ts";
import { reportNow, saidOf } from "./answer.ts";
import { line, phrase } from "./decision.ts";

/** Readings less sure than this are asked about, never entered. */
const SURE_ENOUGH = 0.5;
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

function saidBy(item: Understood, observation: Observation): Said | null {
  if ("value" in item) return { kind: "value", value: item.value };
  return observation.states.some((state) => state.id === item.state)
    ? saidOf(observation, item.state)
    : null;
}

/** Members of a list named in one message are one report. */
function mergeMembers(reports: readonly Report[]): Report[] {
  const merged: Report[] = [];
  for (const report of reports) {
    const earlier = merged.findIndex((other) => other.observation === report.observation);
    const old = merged[earlier];
    if (old === undefined) merged.push(report);
    else if (old.said.kind === "members" && report.said.kind === "members") {
      const present = [...new Set([...old.said.present, ...report.said.present])];
      merged[earlier] = { ...old, said: { ...old.said, present } };
    }
  }
  return merged;
}

/** What was denied still says something: one of the other states holds. */
function deniedReports(reading: ReadingResult, knowledge: Knowledge): Map<string, Said> {
  const said = new Map<string, Said>();
  const observations = new Set(reading.denied.map((item) => item.observation));
  for (const id of observations) {
    const observation = knowledge.observations.get(id);
    if (observation === undefined) continue;
    const out = reading.denied.filter((item) => item.observation === id).map((item) => item.state);
    if (observation.kind === "list") {
      said.set(id, { kind: "members", present: [], absent: out });
      continue;
    }
    const left = observation.states
      .map((state) => state.id)
      .filter((state) => !out.includes(state));
    if (left.length === 0) continue;
    const weights = Object.fromEntries(left.map((state) => [state, 1 / left.length]));
    said.set(id, { kind: "states", weights });
  }
  return said;
}

/** The reports that free words come to, each as sure as it was said. */
export function reportsIn(
  reading: ReadingResult,
  given: { state: CaseState; knowledge: Knowledge; reporter: Reporter },
): Report[] {
  const reports: Report[] = [];
  for (const item of reading.understood) {
    const observation = given.knowledge.observations.get(item.observation);
    if (observation === undefined || item.probability < SURE_ENOUGH) continue;
    const said = saidBy(item, observation);
    if (said === null) continue;
    const hedge = 1 - (1 - item.hedge) * item.probability;
    const technician = given.reporter === "technician";
    const reporter = item.source === "other" && !technician ? "second-hand" : given.reporter;
    reports.push(reportNow(given.state, { observation: observation.id, said, reporter, hedge }));
  }
  const positive = mergeMembers(reports);
  for (const [id, said] of deniedReports(reading, given.knowledge)) {
    if (positive.some((report) => report.observation === id)) continue;
    positive.push(reportNow(given.state, { observation: id, said, reporter: given.reporter }));
  }
  return positive;
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

/** "Noted: one click, lights bright." — or nothing where no words were understood. */
export function notedLines(happenings: readonly CaseHappening[], knowledge: Knowledge): Line[] {
  const what = happenings.flatMap((happening): Arg[] => {
    if (happening.type === "answer.given") return reportWords(happening.report, knowledge);
    if (happening.type !== "machine.described") return [];
    const { kind, fuel } = happening.facts;
    return [
      ...(kind === undefined ? [] : [{ know: wordKey("machine", kind) }]),
      ...(fuel === undefined ? [] : [{ phrase: phrase(`fuel-${fuel}`) }]),
    ];
  });
  return what.length === 0 ? [] : [line(phrase("noted", { what: { list: what } }))];
}
