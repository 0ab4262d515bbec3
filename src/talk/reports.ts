import type { Report, Said } from "../domain/evidence.ts";
import type { Knowledge, Observation } from "../domain/knowledge.ts";
import type { StateReading, Understood } from "../domain/reading.ts";
import type { Reporter } from "../domain/vocabulary.ts";
import { saidOf } from "./answer.ts";

/** Readings less sure than this are asked about, never entered. */
const SURE_ENOUGH = 0.5;
/**
 * A denial that leaves more states open than this says too little to stand as the answer: it would
 * keep the question from being asked.
 */
const MOST_LEFT_OPEN = 3;

/** Who told it, and since which act. */
export interface Telling {
  readonly knowledge: Knowledge;
  readonly reporter: Reporter;
  readonly epoch: number;
}

/**
 * The reports that free words come to, in a message and in a written-down case alike: each as sure
 * as it was said and read, one for each observation and person. Members of a list make one report;
 * of several states of one thing the surest stands. What was only denied says that one of the
 * other states holds, as long as few are left.
 *
 * @param items what the words state
 * @param denied states that the words say do not hold
 */
export function reportsFrom(
  items: readonly Understood[],
  denied: readonly StateReading[],
  telling: Telling,
): readonly Report[] {
  const stated = mergeReports(items.flatMap((item) => reportOf(item, telling) ?? []));
  const ruledOut = deniedReports(denied, telling).filter(
    ({ observation, said }) =>
      said.kind === "members" || !stated.some((one) => one.observation === observation),
  );
  return mergeReports([...stated, ...ruledOut]);
}

/** True where only a denial stands behind the report: several states are still open. */
export function leavesOpen(report: Report): boolean {
  return report.said.kind === "states" && Object.keys(report.said.weights).length > 1;
}

/** True where the report says more than these: a denial does not stand over what was told plainly. */
export function addsTo(told: readonly Report[], report: Report): boolean {
  if (report.said.kind !== "states" || !leavesOpen(report)) return true;
  const { weights } = report.said;
  return !told.some(
    ({ observation, reporter, said }) =>
      observation === report.observation &&
      reporter === report.reporter &&
      said.kind === "states" &&
      Object.keys(said.weights).every((state) => state in weights),
  );
}

/** Members of one list that one person named at one time are one report; other reports stay. */
export function joinLists(reports: readonly Report[]): readonly Report[] {
  const lists = mergeReports(reports.filter((report) => report.said.kind === "members"));
  const left = new Map(lists.map((list) => [keyOf(list), list] as const));
  return reports.flatMap((report) => {
    if (report.said.kind !== "members") return [report];
    const list = left.get(keyOf(report));
    left.delete(keyOf(report));
    return list === undefined ? [] : [list];
  });
}

function keyOf(report: Report): string {
  return `${report.observation} ${report.reporter} ${report.epoch}`;
}

/** One report for each observation, person and time: lists are joined, else the surest stands. */
function mergeReports(reports: readonly Report[]): readonly Report[] {
  const merged = new Map<string, Report>();
  for (const report of reports) {
    const old = merged.get(keyOf(report));
    merged.set(keyOf(report), old === undefined ? report : joined(old, report));
  }
  return [...merged.values()];
}

function joined(old: Report, report: Report): Report {
  if (old.said.kind !== "members" || report.said.kind !== "members") {
    return report.hedge < old.hedge ? report : old;
  }
  const present = [...new Set([...old.said.present, ...report.said.present])];
  const absent = [...new Set([...old.said.absent, ...report.said.absent])];
  const said: Said = {
    kind: "members",
    present,
    absent: absent.filter((member) => !present.includes(member)),
  };
  // A list is only as sure as the least sure of its members.
  return { ...old, said, hedge: Math.max(old.hedge, report.hedge) };
}

function reportOf(item: Understood, telling: Telling): Report | null {
  const observation = telling.knowledge.observations.get(item.observation);
  if (observation === undefined || item.probability < SURE_ENOUGH) return null;
  const said = saidBy(item, observation);
  return said === null ? null : { ...told(item, telling), said };
}

function saidBy(item: Understood, observation: Observation): Said | null {
  if ("value" in item) return { kind: "value", value: item.value };
  return hasState(observation, item.state) ? saidOf(observation, item.state) : null;
}

function told(item: Understood | StateReading, { reporter, epoch }: Telling): Omit<Report, "said"> {
  return {
    observation: item.observation,
    epoch,
    reporter: item.source === "other" && reporter === "operator" ? "second-hand" : reporter,
    hedge: 1 - (1 - item.hedge) * item.probability,
  };
}

function hasState(observation: Observation, state: string): boolean {
  return observation.states.some((one) => one.id === state);
}

function deniedReports(denied: readonly StateReading[], telling: Telling): readonly Report[] {
  const byObservation = new Map<string, StateReading[]>();
  for (const item of denied) {
    const observation = telling.knowledge.observations.get(item.observation);
    if (observation === undefined || item.probability < SURE_ENOUGH) continue;
    if (!hasState(observation, item.state)) continue;
    byObservation.set(item.observation, [...(byObservation.get(item.observation) ?? []), item]);
  }
  return [...byObservation].flatMap(([id, items]) => {
    const observation = telling.knowledge.observations.get(id);
    const [first] = items;
    if (observation === undefined || first === undefined) return [];
    const said = saidWithout(observation, new Set(items.map((item) => item.state)));
    return said === null ? [] : [{ ...told(first, telling), said }];
  });
}

function saidWithout(observation: Observation, out: ReadonlySet<string>): Said | null {
  if (observation.kind === "list") return { kind: "members", present: [], absent: [...out] };
  const left = observation.states.map((state) => state.id).filter((state) => !out.has(state));
  if (left.length === 0 || left.length > MOST_LEFT_OPEN) return null;
  const weights = Object.fromEntries(left.map((state) => [state, 1 / left.length]));
  return { kind: "states", weights };
}
